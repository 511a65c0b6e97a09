import { type SumsAhead, sumsAhead } from '../science/sums-ahead.ts';
import type { CoatProgress } from './coat-progress.ts';
import type { TwoOutlooks } from './ready-times.ts';

type Progress = Pick<CoatProgress, 'degreeHours' | 'degreeHoursHigh' | 'otherDegreeHours'>;

/** Hours ahead up to which each is told, and from there on every third; then every sixth. */
const finelyHours = 72;
const coarselyHours = 240;
const coarseHours = 3;
const coarsestHours = 6;

/**
 * The sums of a coat to come, as `readyTimes` goes by them: likely by the ruling model and the sum
 * without gaps; early and late by whichever model is faster and slower, early also by what gaps may
 * have given.
 *
 * @param hours - whole hours from the newest reading, ascending
 * @param shiftMs - how long ago the newest reading was, where that is too long: nothing is counted
 *   for the time since
 */
export function joinedSums(
  { ruling, beside }: TwoOutlooks,
  { degreeHours, degreeHoursHigh, otherDegreeHours }: Progress,
  hours: readonly number[],
  shiftMs: number,
): SumsAhead {
  const from = (low: number, high: number) => ({ degreeHoursLow: low, degreeHoursHigh: high });
  const byRuling = sumsAhead(ruling, from(degreeHours, degreeHours), hours);
  const byOther = sumsAhead(beside, from(otherDegreeHours, otherDegreeHours), hours);
  const bridged =
    degreeHoursHigh > degreeHours
      ? sumsAhead(ruling, from(degreeHours, degreeHoursHigh), hours)
      : byRuling;
  const most = (i: number, ...of: (readonly number[])[]) =>
    Math.max(...of.map((sums) => sums[i] ?? 0));
  return {
    at: byRuling.at.map((at) => at + shiftMs),
    early: byRuling.early.map((_, i) => most(i, byRuling.early, byOther.early, bridged.early)),
    likely: byRuling.likely,
    late: byRuling.late.map((sum, i) => Math.min(sum, byOther.late[i] ?? sum)),
  };
}

/** The hours that are told: until the slowest future has what is asked for, closer together at first. */
export function outlookHours(
  outlooks: TwoOutlooks,
  progress: Progress,
  untilDegreeHours: number,
): number[] {
  const all: number[] = [];
  const end = (outlooks.ruling.paths[0]?.length ?? 1) - 1;
  for (let hour = 0; hour <= end; ) {
    all.push(hour);
    hour += hour < finelyHours ? 1 : hour < coarselyHours ? coarseHours : coarsestHours;
  }
  const { late } = joinedSums(outlooks, progress, all, 0);
  const reached = late.findIndex((sum) => sum >= untilDegreeHours);
  return reached === -1 ? all : all.slice(0, reached + 2);
}
