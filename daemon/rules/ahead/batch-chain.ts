import { gateNeeds } from '../gate-need.ts';
import type { CureNeed, JobChain, Step } from './job-chain.ts';

/** What recoating needs, hours at 20 °C, by its 10 and 90 % points. */
export interface RecoatNeed {
  p10: number;
  p90: number;
}

/** A batch as far as its coming work goes. */
export interface BatchAhead {
  batchId: string;
  boards: number;
  rackM: number;
  /** Area of each coat of the plan, m². */
  areaM2: readonly number[];
  /** What recoating needs after each coat of the plan. */
  recoatNeeds: readonly RecoatNeed[];
  /** Index of the next coat; the number of coats when all are on. */
  nextCoat: number;
  /** What the coat that is on has gathered, hours at 20 °C; null before the first. */
  gathered: number | null;
  /** Where the boards lie, and whether that is a rack. */
  placeId: string;
  isOnRack: boolean;
  /** Where they are brushed while they are not up. */
  rackPlaceId: string;
  /** Where they go up; null where the site has no wall: then they are done on the rack. */
  wallPlaceId: string | null;
  isUp: boolean;
}

export interface WorkPace {
  brushM2PerHour: number;
  mountBoardsPerHour: number;
  goesUpAfter: 'primer' | 'last-coat';
}

const hourMs = 3_600_000;

/** All that is still to be done on a batch, in its order. */
export function batchChain(
  batch: BatchAhead,
  pace: WorkPace,
  now: number,
): Omit<JobChain, 'lot' | 'lots'> {
  const { nextCoat, placeId, rackPlaceId, wallPlaceId } = batch;
  const coatCount = batch.areaM2.length;
  const lastCoat = coatCount - 1;
  const planned = pace.goesUpAfter === 'primer' ? 0 : lastCoat;
  // Boards that stayed on the rack for later coats are finished there.
  const goesUpAfter =
    batch.isUp || wallPlaceId === null ? null : nextCoat - 1 > planned ? lastCoat : planned;
  const recoat = (coat: number, share: number, gathered: number): CureNeed => {
    const { p10, p90 } = batch.recoatNeeds[coat] as RecoatNeed;
    return { p10: p10 * share, p90: p90 * share, gathered };
  };
  const mounting = gateNeeds.mount.multiple;
  const steps: Step[] = [];
  let up = batch.isUp;
  const goUp = (coat: number) => {
    up = true;
    steps.push({
      kind: 'mount',
      coat,
      workMs: (batch.boards / pace.mountBoardsPerHour) * hourMs,
      // On the wall it goes on curing to what the next coat, or the end of the job, needs.
      cure: recoat(coat, 1 - mounting, 0),
      placeId: wallPlaceId as string,
      onRack: false,
    });
  };
  if (nextCoat > 0 && goesUpAfter === nextCoat - 1) goUp(nextCoat - 1);
  for (let coat = nextCoat; coat < coatCount; coat++) {
    const goesUp = goesUpAfter === coat;
    steps.push({
      kind: 'coat',
      coat,
      workMs: ((batch.areaM2[coat] as number) / pace.brushM2PerHour) * hourMs,
      cure: recoat(coat, goesUp ? mounting : 1, 0),
      placeId: up ? (batch.isUp ? placeId : (wallPlaceId as string)) : rackPlaceId,
      onRack: !up,
    });
    if (goesUp) goUp(coat);
  }
  const share = steps[0]?.kind === 'mount' ? mounting : 1;
  return {
    batchId: batch.batchId,
    boards: batch.boards,
    rackM: batch.rackM,
    steps,
    isOnRack: batch.isOnRack,
    curing:
      batch.gathered === null
        ? null
        : { ...recoat(nextCoat - 1, share, batch.gathered), placeId, fromAt: now },
    fromAt: now,
  };
}
