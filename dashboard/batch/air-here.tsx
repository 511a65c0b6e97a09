import type { Coat } from '../../daemon/contract/coat.ts';
import type { OverviewPlace } from '../../daemon/contract/overview.ts';
import { figure, humidity, temperature } from '../format/figures.ts';
import { airflowWords } from '../words/thing-words.ts';

/** Nearer than this two cheap sensors of one place agree; assumptions. */
const WORTH_A_WORD_K = 1.5;
const WORTH_A_WORD_RH = 8;

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
      {(air.apartK ?? 0) >= WORTH_A_WORD_K && (
        <p>
          The sensors here are {figure(Number(air.apartK?.toFixed(1)))} K apart; the coldest one
          counts.
        </p>
      )}
      {(air.apartRhPercent ?? 0) >= WORTH_A_WORD_RH && (
        <p>
          The sensors here are {humidity(air.apartRhPercent)} apart in humidity; the dampest one
          counts for dew.
        </p>
      )}
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
