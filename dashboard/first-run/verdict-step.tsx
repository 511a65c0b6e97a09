import type { Overview } from '../../daemon/contract/overview.ts';
import { BatchHero } from '../batch/batch-hero.tsx';
import { useBatch } from '../batch/use-batch.ts';
import { useReader } from '../reader.ts';
import { batchAddress, printAddress } from '../router.ts';
import { useShed } from '../shed-context.ts';
import { Screen } from './screen.tsx';
import type { StepProps } from './step-props.ts';

/** The board as it stands on the wall from now on. */
export function VerdictStep({ overview }: StepProps) {
  const said = useReader().words.firstRun.verdict;
  const lying = coated(overview);
  return (
    <Screen
      step="verdict"
      says={lying === null ? said.noBatch : said.says(lying.batch.name)}
      isDone
    >
      {lying !== null && <FirstVerdict key={lying.batch.id} {...lying} />}
      <h2>{said.next}</h2>
      <ul class="first-run-next">
        <li>
          <a href="#/">{said.toTheWall}</a>
        </li>
        {lying !== null && (
          <>
            <li>
              <a href={batchAddress(lying.batch.id)}>{said.toTheBatch}</a>
            </li>
            <li>
              <a href={printAddress('rack', { batchId: lying.batch.id })}>{said.toTheCard}</a>
            </li>
          </>
        )}
        <li>
          <a href="#/setup">{said.toTheRest}</a>
        </li>
      </ul>
    </Screen>
  );
}

type Place = Overview['places'][number];
interface Lying {
  place: Place;
  batch: Place['batches'][number];
}

/** The newest batch with a coat, and where it lies. */
function coated({ places }: Overview): Lying | null {
  const all = places.flatMap((place) => place.batches.map((batch) => ({ place, batch })));
  const done = all.filter(({ batch }) => batch.coat !== null);
  return done[done.length - 1] ?? null;
}

function FirstVerdict({ place, batch }: Lying) {
  const { live } = useShed();
  const said = useReader().words.firstRun.verdict;
  const { loaded } = useBatch(batch.id);
  if (loaded.kind !== 'there') return null;
  const coat = loaded.batch.coats.find(({ curedUntil }) => curedUntil === null) ?? null;
  const hasAir = place.air.at !== null;
  return (
    <>
      <BatchHero
        batch={loaded.batch}
        coat={coat}
        waitedFor={batch.nextGate}
        fresh={hasAir && live.connection.value.kind !== 'lost' && !place.air.stale}
      />
      {!hasAir && <p class="field-fault">{said.noAir}</p>}
    </>
  );
}
