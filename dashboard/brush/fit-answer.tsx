import type { FitToBrush } from '../../daemon/contract/fit-to-brush.ts';
import { humidity, MISSING, temperature } from '../format/figures.ts';
import { useShed } from '../shed-context.ts';
import { againstWords, fitHourWords, fitSigns, fitWords, weightWords } from '../words/fit-words.ts';

/** The heaviest first. */
const weights: readonly FitToBrush['reasons'][number]['weight'][] = [
  'no',
  'unknown',
  'poor',
  'fine',
  'note',
];

/** The word, when to put the brush down, every reason, and the hours ahead. */
export function FitAnswer({ fit }: { fit: FitToBrush }) {
  const { calendar, live } = useShed();
  const reasons = [...fit.reasons].sort(
    (a, b) => weights.indexOf(a.weight) - weights.indexOf(b.weight),
  );
  return (
    <>
      <section class={`fit-word ${fitSigns[fit.word]}`} aria-label="Now" aria-live="polite">
        <p class="fit-large">{fitWords[fit.word]}</p>
        <p>{fit.words}</p>
        <p class="fit-stop">
          {fit.stopBy === null ? null : (
            <strong>
              {Date.parse(fit.stopBy) <= live.now.value
                ? 'Put the brush down now.'
                : `Stop by ${calendar.exact(Date.parse(fit.stopBy))}.`}{' '}
            </strong>
          )}
          {fit.stopBecause}
        </p>
      </section>
      <section class="fit-reasons" aria-labelledby="reasons-title">
        <h2 id="reasons-title">Why</h2>
        <ul>
          {reasons.map((reason) => (
            <li key={reason.code + reason.text} class={`fit-${reason.weight}`}>
              <span class="fit-weight">{weightWords[reason.weight]}</span>
              <span>{reason.text}</span>
            </li>
          ))}
        </ul>
      </section>
      {fit.hours.length > 0 && <HoursAhead fit={fit} />}
    </>
  );
}

/** So many hours are shown; a working day and its night. */
const shownHours = 24;

function HoursAhead({ fit }: { fit: FitToBrush }) {
  const { calendar } = useShed();
  const knowsRain = fit.hours.some(({ rainMm }) => rainMm !== null && rainMm > 0);
  return (
    <section class="fit-hours" aria-labelledby="hours-title">
      <h2 id="hours-title">The hours ahead</h2>
      <p class="footnote">
        {fit.fromForecast
          ? 'By the weather forecast that was sent, and the recorded days.'
          : 'Carried on from the recorded days: no weather forecast was sent.'}
      </p>
      <table class="figures">
        <thead>
          <tr>
            <th scope="col">From</th>
            <th scope="col">Brush?</th>
            <th scope="col">Air</th>
            <th scope="col">Humidity</th>
            <th scope="col">Above dew</th>
            {knowsRain && <th scope="col">Rain</th>}
          </tr>
        </thead>
        <tbody>
          {fit.hours.slice(0, shownHours).map((hour) => (
            <tr key={hour.at} class={`hour-${hour.word}`}>
              <th scope="row">{calendar.clock(Date.parse(hour.at))}</th>
              <td>
                <span class={`hour-mark ${fitSigns[hour.word]}`}>{fitHourWords[hour.word]}</span>{' '}
                {hour.because.map((code) => againstWords[code] ?? code).join(', ')}
              </td>
              <td>{temperature(hour.tempC)}</td>
              <td>{humidity(hour.rhPercent)}</td>
              <td>{hour.dewMarginK === null ? MISSING : `${hour.dewMarginK.toFixed(1)} K`}</td>
              {knowsRain && (
                <td>{hour.rainMm === null ? MISSING : `${hour.rainMm.toFixed(1)} mm`}</td>
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
