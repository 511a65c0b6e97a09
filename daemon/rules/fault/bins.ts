import { minuteMs } from './finding.ts';

/** Readings are compared with those of others by means over so long. */
export const binMs = 10 * minuteMs;
export const binsPerHour = 6;
/** How far back means are remembered: a day and a half and a little. */
export const rememberedBins = 240;
/** Across a longer pause the line between two readings says nothing. Assumption. */
const longestPauseBins = 18;

/** Means of a series over equal stretches; a ring, so that it does not grow. */
export interface Bins {
  means: Float64Array;
  /** The bin that is still being filled, and what is in it. */
  open: number;
  sum: number;
  count: number;
}

export const newBins = (): Bins => ({
  means: new Float64Array(rememberedBins).fill(Number.NaN),
  open: Number.NEGATIVE_INFINITY,
  sum: 0,
  count: 0,
});

export const binOf = (at: number): number => Math.floor(at / binMs);
const slot = (bin: number) => ((bin % rememberedBins) + rememberedBins) % rememberedBins;

/** Mean of a closed bin; NaN where nothing is known of it. */
export function binMean({ means, open }: Bins, bin: number): number {
  return bin >= open || bin < open - rememberedBins ? Number.NaN : (means[slot(bin)] as number);
}

/**
 * Takes in a reading.
 *
 * @returns true when it closed a bin; bins that were passed over lie on the line between
 */
export function addToBins(bins: Bins, at: number, value: number): boolean {
  const bin = binOf(at);
  if (bin < bins.open) return false;
  if (bin === bins.open) {
    bins.sum += value;
    bins.count++;
    return false;
  }
  const before = bins.count > 0 ? bins.sum / bins.count : Number.NaN;
  const passed = bin - bins.open;
  if (Number.isFinite(bins.open)) {
    bins.means[slot(bins.open)] = before;
    for (let i = 1; i < Math.min(passed, rememberedBins); i++) {
      bins.means[slot(bins.open + i)] =
        passed <= longestPauseBins ? before + ((value - before) * i) / passed : Number.NaN;
    }
    if (passed >= rememberedBins) bins.means.fill(Number.NaN);
  }
  Object.assign(bins, { open: bin, sum: value, count: 1 });
  return true;
}

/** Middle of numbers; NaN where there are none. */
export function middle(values: readonly number[]): number {
  if (values.length === 0) return Number.NaN;
  const sorted = [...values].sort((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  const upper = sorted[half] as number;
  return sorted.length % 2 === 1 ? upper : ((sorted[half - 1] as number) + upper) / 2;
}

/** Robust standard deviation: from the median of the absolute deviations. **Source:** 1/Φ⁻¹(3/4). */
export function scatter(values: readonly number[], centre: number): number {
  return 1.4826 * middle(values.map((value) => Math.abs(value - centre)));
}
