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
  const column = () => new Float64Array(starts.length + 1).fill(Number.NaN);
  const [lows, lowAts, highs, highAts] = [column(), column(), column(), column()];

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

  function addLow(at: number, raw: number): void {
    const place = begunBy(at);
    const [low, lowAt] = [lows[place] as number, lowAts[place] as number];
    // Nothing is above or at what is not there yet.
    if (raw > low || (raw === low && at >= lowAt)) return;
    lows[place] = raw;
    lowAts[place] = at;
  }

  function addHigh(at: number, raw: number): void {
    const place = begunBy(at);
    const [high, highAt] = [highs[place] as number, highAts[place] as number];
    if (raw < high || (raw === high && at >= highAt)) return;
    highs[place] = raw;
    highAts[place] = at;
  }

  return {
    addLow,
    addHigh,
    add({ lowAt, low, highAt, high }: Extremes): void {
      addLow(lowAt, low);
      addHigh(highAt, high);
    },
    /** Two points a stretch, ascending; one where the same reading is lowest and highest. */
    points(): OutlinePoint[] {
      const points: OutlinePoint[] = [];
      for (let i = 0; i <= starts.length; i++) {
        const [lowAt, highAt] = [lowAts[i] as number, highAts[i] as number];
        const low = { at: lowAt, raw: lows[i] as number };
        const high = { at: highAt, raw: highs[i] as number };
        const both = lowAt < highAt ? [low, high] : lowAt > highAt ? [high, low] : [high];
        // Of a day with both in other stretches one alone may be known here, and of a silence none.
        for (const point of both) if (!Number.isNaN(point.at)) points.push(point);
      }
      return points;
    },
  };
}

/**
 * Parts a time into stretches of whole days or hours, as even as whole ones allow.
 *
 * @param first - the first and the last day or hour that are parted, numbered from 1970 on, both included
 * @param stretches - how many; as many as there are days or hours at most
 * @param unitMs - length of a day or an hour, ms
 * @param also - moments that part a stretch, epoch ms
 * @returns when each begins, ascending; the last is the end of the last day or hour
 */
export function stretchStarts(
  first: number,
  last: number,
  stretches: number,
  unitMs: number,
  also: readonly number[] = [],
): number[] {
  const units = last - first + 1;
  const parts = Math.min(units, stretches);
  const starts = new Set(also);
  for (let i = 0; i <= parts; i++) {
    starts.add((first + Math.floor((i * units) / parts)) * unitMs);
  }
  return [...starts].sort((a, b) => a - b);
}
