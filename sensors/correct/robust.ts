/** Factor that makes the median of absolute deviations a standard deviation of normal values. **Source:** 1/Φ⁻¹(3/4), any statistics handbook. */
const madToDeviation = 1.4826;

/** @param values - at least one */
export function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** @param values - at least one, in any order */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  const upper = sorted[middle] as number;
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] as number) + upper) / 2;
}

/** Robust standard deviation about a centre: from the median of the absolute deviations. */
export function spreadAbout(values: readonly number[], centre: number): number {
  return madToDeviation * median(values.map((value) => Math.abs(value - centre)));
}
