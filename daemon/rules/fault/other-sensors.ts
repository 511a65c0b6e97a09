import { binMean, binMs, binOf, middle } from './bins.ts';
import type { SensorSeries } from './sensor-series.ts';

/* What the sensors about one tell while it repeats itself. */

/** How far back the others are looked at while one repeats itself, bins. */
const mostBinsBack = 72;

/** How often the calmest of others changed since a moment; 0 without others. */
export function leastChanges(others: readonly SensorSeries[], sinceAt: number): number {
  let least = others.length === 0 ? 0 : Number.POSITIVE_INFINITY;
  for (const { run } of others) {
    least = Math.min(least, run.changedAt.filter((at) => at > sinceAt).length);
  }
  return least;
}

/** How far the middle of others moved between two moments; null where it is not known. */
export function moved(
  others: readonly SensorSeries[],
  sinceAt: number,
  toAt: number,
): number | null {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  const binsBetween = 1 + Math.floor((toAt - sinceAt) / binMs);
  for (let i = 0; i < Math.min(binsBetween, mostBinsBack); i++) {
    const bin = binOf(toAt) - 1 - i;
    const means = others
      .map((other) => binMean(other.bins, bin))
      .filter((mean) => !Number.isNaN(mean));
    if (means.length === 0) continue;
    low = Math.min(low, middle(means));
    high = Math.max(high, middle(means));
  }
  return high < low ? null : high - low;
}
