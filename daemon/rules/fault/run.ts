import { hourMs, minuteMs } from './finding.ts';

/** How fast what was seen of a series is forgotten. Assumption. */
const forgetMs = 4 * 24 * hourMs;
/** What a series must have shown of itself before a long run means anything. Assumptions. */
const leastSeenMs = 12 * hourMs;
const leastChanges = 20;
/** So much of a run that was taken for stuck counts as a run of its own. Assumption. */
const learnedFromStuckMs = 3 * hourMs;
/** Intervals are averaged over about so many. */
const averagedOver = 32;
const restlessOver = 300;
const rememberedChanges = 12;

/** Readings of one and the same value in a row, and how long such runs usually are. */
export interface Run {
  firstAt: number | null;
  value: number;
  fromAt: number;
  lastAt: number;
  count: number;
  /** The longest run so far, fading, ms. */
  longestMs: number;
  changes: number;
  /** The smallest step between two readings: how finely the sensor tells. */
  step: number;
  intervalMs: number;
  /** Share of readings that differ from the one before, over the last few hundred. */
  restless: number;
  /** Times of the last changes, ascending. */
  changedAt: number[];
}

export const newRun = (): Run => ({
  firstAt: null,
  value: Number.NaN,
  fromAt: 0,
  lastAt: 0,
  count: 0,
  longestMs: 0,
  changes: 0,
  step: Number.POSITIVE_INFINITY,
  intervalMs: 0,
  restless: 0,
  changedAt: [],
});

/** Takes in a reading. @param isStuck - the run that ends was a fault and teaches nothing */
export function carryOn(run: Run, at: number, value: number, isStuck: boolean): void {
  if (run.firstAt === null) {
    Object.assign(run, { firstAt: at, value, fromAt: at, lastAt: at, count: 1 });
    return;
  }
  const passedMs = at - run.lastAt;
  const weight = 1 / Math.min(averagedOver, run.count + run.changes);
  run.intervalMs += (Math.min(passedMs, hourMs) - run.intervalMs) * weight;
  run.longestMs *= Math.exp(-passedMs / forgetMs);
  run.lastAt = at;
  if (value === run.value) {
    run.count++;
    return;
  }
  if (!isStuck) {
    // The readings of the run that ends, and the one that ends it.
    run.restless += (1 / run.count - run.restless) * Math.min(1, run.count / restlessOver);
  }
  // What was taken for stuck and moves again teaches a little: it may have been a steady room.
  const ranMs = at - passedMs - run.fromAt;
  run.longestMs = Math.max(run.longestMs, isStuck ? Math.min(ranMs, learnedFromStuckMs) : ranMs);
  run.changedAt = [...run.changedAt, at].slice(-rememberedChanges);
  run.step = Math.min(run.step, Math.abs(value - run.value));
  Object.assign(run, { value, fromAt: at, count: 1, changes: run.changes + 1 });
}

/** How long a run of this series may be expected to last, ms; null while too little was seen. */
export function expectedRunMs(run: Run): number | null {
  if (run.firstAt === null || run.changes < leastChanges) return null;
  if (run.fromAt - run.firstAt < leastSeenMs) return null;
  return Math.max(run.longestMs, 1.5 * run.intervalMs, minuteMs);
}
