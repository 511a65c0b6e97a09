import { useCallback } from 'preact/hooks';
import { ProblemNote } from '../forms/problem-note.tsx';
import { useReader } from '../reader.ts';
import { InEnglish } from '../said.tsx';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { type ListedRoute, listRoutes } from './route-listing.ts';

const DOCUMENT = '/api/v1/openapi.json';

/** The daemon’s routes, read from its own description of them. */
export function ApiPage() {
  const { api } = useShed();
  const { apiPage } = useReader().words;
  const { replied } = useReply(useCallback(() => api.document(DOCUMENT), [api]));
  return (
    <main class="page api">
      <h1>{apiPage.title}</h1>
      <p class="lead">
        {apiPage.about(<code>/api/v1/stream</code>, <a href={DOCUMENT}>{DOCUMENT}</a>)}
      </p>
      {replied.kind === 'failed' && <ProblemNote problem={replied.problem} />}
      {replied.kind === 'there' && (
        <ul class="route-list">
          {listRoutes(replied.reply, apiPage).map((route) => (
            <RouteEntry key={`${route.method} ${route.path}`} route={route} />
          ))}
        </ul>
      )}
    </main>
  );
}

function RouteEntry({ route }: { route: ListedRoute }) {
  const { apiPage } = useReader().words;
  const line = (
    <>
      <span class={`method method-${route.method.toLowerCase()}`}>{route.method}</span>{' '}
      <code>{route.path}</code>{' '}
      <span class="route-summary">
        <InEnglish text={route.summary} />
      </span>
    </>
  );
  if (route.takes.length === 0) return <li class="route route-plain">{line}</li>;
  return (
    <li class="route">
      <details>
        <summary>{line}</summary>
        <table class="figures figures-wide">
          <thead>
            <tr>
              <th scope="col">{apiPage.field}</th>
              <th scope="col">{apiPage.type}</th>
              <th scope="col">{apiPage.aboutField}</th>
            </tr>
          </thead>
          <tbody>
            {route.takes.map((field) => (
              <tr key={field.name}>
                <th scope="row">
                  {field.must ? (
                    <code>{field.name}</code>
                  ) : (
                    apiPage.optional(<code>{field.name}</code>)
                  )}
                </th>
                <td>{field.type}</td>
                <td>
                  <InEnglish text={field.about} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </li>
  );
}
