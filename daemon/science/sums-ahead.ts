import type { CureAhead } from './cure-ahead.ts';
import type { CureSoFar } from './forecast.ts';
import { normalCdf } from './normal-distribution.ts';
import { risingRoot } from './rising-root.ts';

/** Sums of a coat some hours on, °C·h. */
export type SumsAhead = {
  /** UTC epoch, ms */
  readonly at: readonly number[];
  /** reached or passed with a probability of 10 % */
  readonly early: readonly number[];
  /** along the expected temperature */
  readonly likely: readonly number[];
  /** reached or passed with a probability of 90 % */
  readonly late: readonly number[];
};

const LATE = 0.9;
/** Equal shares of what gaps may have given, as for the times of `readyFrom`. */
const GAP_SHARES = 4;
const MS_PER_HOUR = 3_600_000;
/** Standard deviations that leave 90 % below; by symmetry 10 % lie below its negative. */
const Z_90 = risingRoot((z) => normalCdf(z) - LATE, 0, 3);

/**
 * What a coat will have gathered some hours on: the weather’s share of the doubt about when it is
 * there. The futures are those of `readyFrom`; what the stage needs is the other share.
 *
 * @param ahead - sums to come at the place
 * @param cureSoFar - sums up to `ahead.fromAt`; what gaps gave is anything between low and high
 * @param hours - whole hours from `ahead.fromAt` on, ascending; those beyond the outlook are left out
 * @returns sums that never fall
 */
export function sumsAhead(
  ahead: CureAhead,
  cureSoFar: CureSoFar,
  hours: readonly number[],
): SumsAhead {
  const { degreeHoursLow: low, degreeHoursHigh: high } = cureSoFar;
  const middle = ahead.deviations.indexOf(0);
  const known = hours.filter((hour) => hour < (ahead.paths[0]?.length ?? 0));
  const starts =
    high > low
      ? Array.from(
          { length: GAP_SHARES },
          (_, share) => low + ((share + 0.5) * (high - low)) / GAP_SHARES,
        )
      : [low];
  const mean = starts.reduce((sum, start) => sum + start, 0) / starts.length;
  const at = (z: number, hour: number) => sumOn(ahead, z, hour);

  /** Chance that the sum at the end of an hour is below a figure. */
  const below = (sum: number, hour: number) =>
    starts.reduce((total, start) => total + normalCdf(deviationOf(ahead, sum - start, hour)), 0) /
    starts.length;

  const sumBelow = (z: number, hour: number) => {
    const [least, most] = [(starts[0] ?? low) + at(z, hour), (starts.at(-1) ?? low) + at(z, hour)];
    if (most <= least) return least;
    return risingRoot((sum) => below(sum, hour) - normalCdf(z), least, most);
  };
  return {
    at: known.map((hour) => ahead.fromAt + hour * MS_PER_HOUR),
    early: known.map((hour) => sumBelow(Z_90, hour)),
    likely: known.map((hour) => mean + (ahead.paths[middle]?.[hour] ?? 0)),
    late: known.map((hour) => sumBelow(-Z_90, hour)),
  };
}

/** The sum to come on a future so many standard deviations off; straight between the paths. */
function sumOn({ deviations, paths }: CureAhead, z: number, hour: number): number {
  const found = deviations.findIndex((deviation) => deviation >= z);
  const path = Math.max(1, found === -1 ? deviations.length - 1 : found);
  const from = deviations[path - 1] as number;
  const share = (z - from) / ((deviations[path] as number) - from);
  const lower = paths[path - 1]?.[hour] ?? 0;
  const upper = paths[path]?.[hour] ?? 0;
  return Math.max(0, lower + share * (upper - lower));
}

/** How far off the expected future a sum to come lies: the inverse of `sumOn`. */
function deviationOf({ deviations, paths }: CureAhead, sum: number, hour: number): number {
  const found = paths.findIndex((path) => (path[hour] ?? 0) >= sum);
  const path = Math.max(1, found === -1 ? paths.length - 1 : found);
  const lower = paths[path - 1]?.[hour] ?? 0;
  const upper = paths[path]?.[hour] ?? 0;
  if (upper <= lower) return sum <= lower ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY;
  const from = deviations[path - 1] as number;
  return from + ((sum - lower) / (upper - lower)) * ((deviations[path] as number) - from);
}
