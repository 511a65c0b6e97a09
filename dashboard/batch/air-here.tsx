import type { Coat } from '../../daemon/contract/coat.ts';
import type { OverviewPlace } from '../../daemon/contract/overview.ts';
import { useReader } from '../reader.ts';
import { Said } from '../said.tsx';

/** Nearer than this two cheap sensors of one place agree; assumptions. */
const WORTH_A_WORD_K = 1.5;
const WORTH_A_WORD_RH = 8;

/** The air where the batch lies: figures, the word on it, what that word rests on, and the solvent of a fresh coat. */
export function AirHere({ place, cautions }: { place: OverviewPlace; cautions: Coat['cautions'] }) {
  const { air, airflow, airReasons } = place;
  const { words, figures } = useReader();
  const said = words.batch.air;
  return (
    <section class="air-here" aria-labelledby="air-title">
      <h2 id="air-title">{said.title(place.name)}</h2>
      <p>
        {said.now(
          figures.temperature(air.tempC),
          figures.humidity(air.rhPercent),
          figures.temperature(air.dewPointC),
          <strong>{words.air.flows[airflow]}</strong>,
        )}
      </p>
      {(air.apartK ?? 0) >= WORTH_A_WORD_K && (
        <p>{said.apart(figures.temperatureDifference(air.apartK ?? null))}</p>
      )}
      {(air.apartRhPercent ?? 0) >= WORTH_A_WORD_RH && (
        <p>{said.apartInHumidity(figures.humidity(air.apartRhPercent ?? null))}</p>
      )}
      {cautions.map((caution) => (
        <p key={caution.code} class="caution">
          <Said sentence={caution} />
        </p>
      ))}
      {airReasons.map((reason) => (
        <p key={reason.code}>
          <Said sentence={reason} />
        </p>
      ))}
    </section>
  );
}
