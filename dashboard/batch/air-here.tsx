import type { OverviewPlace } from '../../daemon/contract/overview.ts';
import { humidity, temperature } from '../format/figures.ts';
import { airflowWords } from '../words/thing-words.ts';

/** The air where the batch lies: figures, the word on it, and what that word rests on. */
export function AirHere({ place }: { place: OverviewPlace }) {
  const { air, airflow, airReasons } = place;
  return (
    <section class="air-here" aria-labelledby="air-title">
      <h2 id="air-title">The air at {place.name}</h2>
      <p>
        {temperature(air.tempC)}, {humidity(air.rhPercent)}, dew point {temperature(air.dewPointC)}.
        Air: <strong>{airflowWords[airflow]}</strong>.
      </p>
      {airReasons.map((reason) => (
        <p key={reason.code}>{reason.text}</p>
      ))}
    </section>
  );
}
