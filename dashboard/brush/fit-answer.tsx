import type { FitToBrush } from '../../daemon/contract/fit-to-brush.ts';
import { plainList } from '../format/lists.ts';
import { useReader } from '../reader.ts';
import { Said } from '../said.tsx';
import { useShed } from '../shed-context.ts';

/** How the board is painted that the word stands on. */
const fitSigns: Readonly<Record<FitToBrush['word'], string>> = {
  good: 'sign-ready',
  poor: 'sign-test',
  no: 'sign-hold',
  'cannot-tell': 'sign-no-data',
};

/** The heaviest first. */
const weights: readonly FitToBrush['reasons'][number]['weight'][] = [
  'no',
  'unknown',
  'poor',
  'fine',
  'note',
];

/** The word, when to put the brush down, and every reason. */
export function FitAnswer({ fit }: { fit: FitToBrush }) {
  const { live } = useShed();
  const { words, calendar } = useReader();
  const { brush } = words;
  const reasons = [...fit.reasons].sort(
    (a, b) => weights.indexOf(a.weight) - weights.indexOf(b.weight),
  );
  return (
    <>
      <section class={`fit-word ${fitSigns[fit.word]}`} aria-label={brush.now} aria-live="polite">
        <p class="fit-large">{brush.words[fit.word]}</p>
        <p>
          <Said sentence={fit.wordsSaid} />
        </p>
        <p class="fit-stop">
          {fit.stopBy === null ? null : (
            <strong>
              {Date.parse(fit.stopBy) <= live.now.value
                ? brush.stopNow
                : brush.stopBy(calendar.exact(Date.parse(fit.stopBy)))}{' '}
            </strong>
          )}
          <Said sentence={fit.stopBecauseSaid} />
        </p>
      </section>
      <section class="fit-reasons" aria-labelledby="reasons-title">
        <h2 id="reasons-title">{brush.why}</h2>
        <ul>
          {reasons.map((reason) => (
            <li key={reason.code + reason.text} class={`fit-${reason.weight}`}>
              <span class="fit-weight">{brush.weights[reason.weight]}</span>
              <span>
                <Said sentence={reason} />
              </span>
            </li>
          ))}
        </ul>
      </section>
    </>
  );
}

/** So many hours are shown; a working day and its night. */
const shownHours = 24;

/** Hour by hour: what the air lets one do. */
export function HoursAhead({ fit }: { fit: FitToBrush }) {
  const { words, calendar, figures } = useReader();
  const { hours } = words.brush;
  const against: Readonly<Record<string, string>> = hours.against;
  const knowsRain = fit.hours.some(({ rainMm }) => rainMm !== null && rainMm > 0);
  return (
    <section class="fit-hours" aria-labelledby="hours-title">
      <h2 id="hours-title">{hours.title}</h2>
      <p class="footnote">{fit.fromForecast ? hours.byForecast : hours.carriedOn}</p>
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">{hours.from}</th>
            <th scope="col">{hours.brush}</th>
            <th scope="col">{hours.air}</th>
            <th scope="col">{hours.humidity}</th>
            <th scope="col">{hours.aboveDew}</th>
            {knowsRain && <th scope="col">{hours.rain}</th>}
          </tr>
        </thead>
        <tbody>
          {fit.hours.slice(0, shownHours).map((hour) => (
            <tr key={hour.at} class={`hour-${hour.word}`}>
              <th scope="row">{calendar.clock(Date.parse(hour.at))}</th>
              <td>
                <span class={`hour-mark ${fitSigns[hour.word]}`}>{hours.words[hour.word]}</span>{' '}
                {plainList(hour.because.map((code) => against[code] ?? code))}
              </td>
              <td>{figures.temperature(hour.tempC)}</td>
              <td>{figures.humidity(hour.rhPercent)}</td>
              <td>{figures.temperatureDifference(hour.dewMarginK)}</td>
              {knowsRain && <td>{figures.measure('rainMm', hour.rainMm)}</td>}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
