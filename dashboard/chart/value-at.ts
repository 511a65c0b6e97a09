import type { Column } from './panel.ts';

/** The figure of the stretch that is nearest to a moment; null in a gap. */
export function valueAt(at: readonly number[], values: Column, moment: number): number | null {
  let [low, high] = [0, at.length - 1];
  if (high < 0) return null;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((at[middle] ?? 0) < moment) low = middle;
    else high = middle;
  }
  const nearest =
    Math.abs((at[low] ?? 0) - moment) <= Math.abs((at[high] ?? 0) - moment) ? low : high;
  return values[nearest] ?? null;
}
