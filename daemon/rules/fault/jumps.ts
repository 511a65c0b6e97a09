import type { Quantity } from '../../contract/quantity.ts';
import { sentence } from '../../wording/english.ts';
import { end, type Finding, hourMs, minuteMs, raise } from './finding.ts';

/** A step that is a jump where it is also far more than the usual, in the unit. Assumptions. */
const jumpBy: Partial<Record<Quantity, number>> = {
  'air-temperature': 4,
  'surface-temperature': 6,
  'relative-humidity': 15,
};
const usualSteps = 12;
/** Readings further apart than this may differ by any amount. Assumption. */
const nearMs = 20 * minuteMs;
/** Steps that the usual one is averaged over, and how many must have been seen. */
const averagedOver = 64;
const leastSeen = 50;
/** So many jumps, there and back, within so long: no air does that. Assumption. */
const leastJumps = 3;
const withinMs = 90 * minuteMs;
/** Calm for so long, it is believed again. Assumption. */
const calmMs = hourMs;

export interface Jump {
  at: number;
  by: number;
}

/** The steps of a series. */
export interface Steps {
  lastAt: number | null;
  last: number;
  usual: number;
  seen: number;
  /** Jumps of the last while, ascending. */
  jumps: Jump[];
}

export const newSteps = (): Steps => ({ lastAt: null, last: 0, usual: 0, seen: 0, jumps: [] });

/** Takes in a reading, and looks whether the series jumps to and fro. */
export function lookForJumps(
  finding: Finding,
  steps: Steps,
  quantity: Quantity,
  at: number,
  value: number,
): void {
  const by = value - steps.last;
  const isNear = steps.lastAt !== null && at - steps.lastAt <= nearMs;
  steps.lastAt = at;
  steps.last = value;
  if (!isNear) return;
  const least = jumpBy[quantity];
  const isJump =
    least !== undefined &&
    steps.seen >= leastSeen &&
    Math.abs(by) >= Math.max(least, usualSteps * steps.usual);
  if (isJump) steps.jumps.push({ at, by });
  else {
    steps.seen++;
    steps.usual += (Math.abs(by) - steps.usual) / Math.min(averagedOver, steps.seen);
  }
  if (steps.jumps.length === 0) {
    end(finding, at);
    return;
  }
  steps.jumps = steps.jumps.filter((jump) => at - jump.at <= withinMs);
  const [first] = steps.jumps;
  const last = steps.jumps.at(-1);
  const isToAndFro =
    steps.jumps.some((jump) => jump.by > 0) && steps.jumps.some((jump) => jump.by < 0);
  if (first && steps.jumps.length >= leastJumps && isToAndFro) {
    const minutes = Math.round((at - first.at) / minuteMs);
    raise(finding, first.at, sentence('seen-jumps', { times: steps.jumps.length, minutes }));
  }
  if (finding.standing !== null && (last === undefined || at - last.at >= calmMs)) {
    end(finding, last?.at ?? at);
  }
}
