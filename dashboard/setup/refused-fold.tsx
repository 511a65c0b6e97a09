import { useCallback } from 'preact/hooks';
import type { Refused } from '../../daemon/contract/health.ts';
import { type Told, useReader } from '../reader.ts';
import { Said } from '../said.tsx';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';

/** The last messages that could not be taken as readings, for whoever set up the sensor. */
export function RefusedFold() {
  const { api, live } = useShed();
  const { words, figures, calendar } = useReader();
  const { refused: said } = words.setup;
  const { replied, again } = useReply(useCallback(() => api.call('listRefused', {}), [api]));
  const count = live.overview.value?.intake.refused ?? 0;
  return (
    <details
      class="more refused"
      onToggle={(event) => {
        if (event.currentTarget.open) again();
      }}
    >
      <summary>{said.title(figures.number(count))}</summary>
      {replied.kind === 'there' && replied.reply.length === 0 && <p class="quiet">{said.none}</p>}
      {replied.kind === 'there' && replied.reply.length > 0 && (
        <table class="figures figures-wide">
          <thead>
            <tr>
              <th scope="col">{said.when}</th>
              <th scope="col">{said.topic}</th>
              <th scope="col">{said.why}</th>
              <th scope="col">{said.beganWith}</th>
            </tr>
          </thead>
          <tbody>
            {replied.reply.map((refused, index) => (
              <tr key={`${refused.at} ${index}`}>
                <th scope="row">{calendar.exact(Date.parse(refused.at))}</th>
                <td>{refused.topic}</td>
                <td>
                  <Said sentence={refusedSaid(refused)} /> <code>{refused.code}</code>
                </td>
                <td>{said.bytes(<code>{refused.payloadStart}</code>, refused.payloadBytes)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </details>
  );
}

/** Of what was refused before sentences were kept, the English text is all there is. */
const refusedSaid = ({ code, detail, detailSaid }: Refused): Told =>
  detailSaid ?? { code, text: detail };
