import type { Quantity } from '../../contract/quantity.ts';
import { addToBins, type Bins, newBins } from './bins.ts';
import { type Distance, newDistance } from './drift.ts';
import { type Finding, nothingFound } from './finding.ts';
import { lookForJumps, newSteps, type Steps } from './jumps.ts';
import { lookIfPossible, newPossible, type Possible } from './out-of-physics.ts';
import { newPinned, type Pinned } from './pinned-humidity.ts';
import { carryOn, newRun, type Run } from './run.ts';

/** All that is remembered of one quantity of one sensor; its size does not grow. */
export interface SensorSeries {
  quantity: Quantity;
  lastAt: number;
  last: number;
  run: Run;
  steps: Steps;
  possible: Possible;
  pinned: Pinned;
  bins: Bins;
  distance: Distance;
  /** The findings below, in one list. */
  findings: readonly Finding[];
  stuck: Finding;
  jumps: Finding;
  outOfPhysics: Finding;
  pinnedHumidity: Finding;
  drift: Finding;
  /** Whether what left the others began with a jump. */
  leftByJump: boolean;
}

export function newSeries(quantity: Quantity): SensorSeries {
  const stuck = nothingFound();
  const jumps = nothingFound();
  const outOfPhysics = nothingFound();
  const pinnedHumidity = nothingFound();
  const drift = nothingFound();
  return {
    findings: [stuck, jumps, outOfPhysics, pinnedHumidity, drift],
    quantity,
    lastAt: Number.NEGATIVE_INFINITY,
    last: Number.NaN,
    run: newRun(),
    steps: newSteps(),
    possible: newPossible(),
    pinned: newPinned(),
    bins: newBins(),
    distance: newDistance(),
    stuck,
    jumps,
    outOfPhysics,
    pinnedHumidity,
    drift,
    leftByJump: false,
  };
}

/**
 * Takes in what a series alone tells of a reading.
 *
 * @param raw - as sent; @param value - as it is reckoned with
 * @returns true when it closed a bin, so that the series can be held against others
 */
export function takeAlone(series: SensorSeries, at: number, raw: number, value: number): boolean {
  carryOn(series.run, at, raw, series.stuck.standing !== null);
  lookIfPossible(series.outOfPhysics, series.possible, series.quantity, at, raw);
  series.lastAt = at;
  if (series.outOfPhysics.standing !== null) return false;
  series.last = value;
  lookForJumps(series.jumps, series.steps, series.quantity, at, value);
  return addToBins(series.bins, at, value);
}

/** Every finding about a series. */
export function findingsIn(series: SensorSeries): readonly Finding[] {
  return series.findings;
}

/** Whether the series may speak for the air about it: no fault says otherwise. */
export function isTrusted({ findings }: SensorSeries): boolean {
  for (const finding of findings) if (finding.standing !== null) return false;
  return true;
}
