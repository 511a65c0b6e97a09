import type { OutlinePoint } from './reading-outline.ts';

/** The extremes of some readings that lie within one stretch, and when the first of each was. */
export interface Extremes {
  lowAt: number;
  low: number;
  highAt: number;
  high: number;
}

/**
 * Gathers the lowest and the highest reading of each stretch of time, whatever order they come in.
 *
 * @param starts - when each stretch begins, epoch ms, ascending; what lies before the first belongs
 *   to one of its own
 */
export function gatherStretches(starts: readonly number[]) {
  const stretches: (Extremes | null)[] = starts.map(() => null);
  stretches.push(null);

  /** How many stretches begin by then. */
  function begunBy(at: number): number {
    let [from, to] = [0, starts.length];
    while (from < to) {
      const middle = (from + to) >> 1;
      if ((starts[middle] as number) <= at) from = middle + 1;
      else to = middle;
    }
    return from;
  }

  return {
    /** @param one - both its moments lie in one stretch */
    add({ lowAt, low, highAt, high }: Extremes): void {
      const place = begunBy(lowAt);
      const all = stretches[place];
      if (!all) {
        stretches[place] = { lowAt, low, highAt, high };
        return;
      }
      if (low < all.low || (low === all.low && lowAt < all.lowAt))
        [all.low, all.lowAt] = [low, lowAt];
      if (high > all.high || (high === all.high && highAt < all.highAt)) {
        [all.high, all.highAt] = [high, highAt];
      }
    },
    /** Two points a stretch, ascending; one where the same reading is lowest and highest. */
    points(): OutlinePoint[] {
      const points: OutlinePoint[] = [];
      for (const one of stretches) {
        if (!one) continue;
        const { lowAt, low, highAt, high } = one;
        if (lowAt < highAt) points.push({ at: lowAt, raw: low });
        points.push({ at: highAt, raw: high });
        if (lowAt > highAt) points.push({ at: lowAt, raw: low });
      }
      return points;
    },
  };
}

/**
 * Parts a time into stretches of whole days, as even as whole days allow.
 *
 * @param firstDay - the first and the last day that are parted, numbered from 1970 on, both included
 * @param stretches - how many; as many as there are days at most
 * @param dayMs - length of a day, ms
 * @param also - moments that part a stretch, epoch ms
 * @returns when each begins, ascending; the last is the end of the last day
 */
export function stretchStarts(
  firstDay: number,
  lastDay: number,
  stretches: number,
  dayMs: number,
  also: readonly number[] = [],
): number[] {
  const days = lastDay - firstDay + 1;
  const parts = Math.min(days, stretches);
  const starts = new Set(also);
  for (let i = 0; i <= parts; i++) {
    starts.add((firstDay + Math.floor((i * days) / parts)) * dayMs);
  }
  return [...starts].sort((a, b) => a - b);
}
