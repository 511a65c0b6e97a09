import type { Coat } from '../../daemon/contract/coat.ts';
import type { OverviewPlace } from '../../daemon/contract/overview.ts';
import { humidity, temperature } from '../format/figures.ts';
import { airflowWords } from '../words/thing-words.ts';

/** The air where the batch lies: figures, the word on it, what that word rests on, and the solvent of a fresh coat. */
export function AirHere({ place, cautions }: { place: OverviewPlace; cautions: Coat['cautions'] }) {
  const { air, airflow, airReasons } = place;
  return (
    <section class="air-here" aria-labelledby="air-title">
      <h2 id="air-title">The air at {place.name}</h2>
      <p>
        {temperature(air.tempC)}, {humidity(air.rhPercent)}, dew point {temperature(air.dewPointC)}.
        Air: <strong>{airflowWords[airflow]}</strong>.
      </p>
      {cautions.map((caution) => (
        <p key={caution.code} class="caution">
          {caution.text}
        </p>
      ))}
      {airReasons.map((reason) => (
        <p key={reason.code}>{reason.text}</p>
      ))}
    </section>
  );
}
