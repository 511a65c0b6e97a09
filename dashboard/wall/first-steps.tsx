import type { Overview } from '../../daemon/contract/overview.ts';
import { useReader } from '../reader.ts';
import { firstRunAddress } from '../router.ts';
import { WallFoot } from './wall-foot.tsx';

/** What an empty wall says: the door to the guided set-up, and the caution that every wall has. */
export function FirstSteps({ overview }: { overview: Overview }) {
  const { firstSteps } = useReader().words;
  const isBegun = overview.places.length > 0 || overview.siteName !== null;
  return (
    <>
      <main class="page first-steps">
        <h1>{firstSteps.title}</h1>
        <p class="lead">{firstSteps.says}</p>
        {overview.unplacedSensors > 0 && <p>{firstSteps.waiting(overview.unplacedSensors)}</p>}
        <div class="action-row">
          <a class="button button-main" href={firstRunAddress()}>
            {isBegun ? firstSteps.goOn : firstSteps.begin}
          </a>
          <a class="button" href="#/setup">
            {firstSteps.allAtOnce}
          </a>
        </div>
      </main>
      <WallFoot overview={overview} />
    </>
  );
}
