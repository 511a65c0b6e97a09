import { useCallback } from 'preact/hooks';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';

/** The last messages that could not be taken as readings, for whoever set up the sensor. */
export function RefusedFold() {
  const { api, live, calendar } = useShed();
  const { replied, again } = useReply(useCallback(() => api.call('listRefused', {}), [api]));
  const count = live.overview.value?.intake.refused ?? 0;
  return (
    <details
      class="more refused"
      onToggle={(event) => {
        if (event.currentTarget.open) again();
      }}
    >
      <summary>Messages that could not be taken: {count}</summary>
      {replied.kind === 'there' && replied.reply.length === 0 && <p class="quiet">None.</p>}
      {replied.kind === 'there' && replied.reply.length > 0 && (
        <table class="figures figures-wide">
          <thead>
            <tr>
              <th scope="col">When</th>
              <th scope="col">Topic</th>
              <th scope="col">Why</th>
              <th scope="col">It began with</th>
            </tr>
          </thead>
          <tbody>
            {replied.reply.map((refused, index) => (
              <tr key={`${refused.at} ${index}`}>
                <th scope="row">{calendar.exact(Date.parse(refused.at))}</th>
                <td>{refused.topic}</td>
                <td>
                  {refused.detail} <code>{refused.code}</code>
                </td>
                <td>
                  <code>{refused.payloadStart}</code> ({refused.payloadBytes} bytes)
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </details>
  );
}
