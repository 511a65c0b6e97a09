/** The next round figure of 1, 2 or 5 times a power of ten. */
function roundStep(rough: number): number {
  const power = 10 ** Math.floor(Math.log10(rough));
  const share = rough / power;
  const nice = share <= 1 ? 1 : share <= 2 ? 2 : share <= 5 ? 5 : 10;
  return nice * power;
}

/**
 * Round figures of a scale, lowest first, within its ends.
 *
 * @param most - about how many have room
 */
export function valueTicks(low: number, high: number, most: number): number[] {
  const step = roundStep((high - low) / Math.max(1, most));
  const first = Math.ceil(low / step - 1e-9);
  const ticks: number[] = [];
  for (let i = first; i * step <= high + step * 1e-9; i++) {
    // 3 × 0.1 is to be 0.3.
    ticks.push(Number((i * step).toPrecision(12)));
  }
  return ticks;
}

/** How many decimals tell ticks apart. */
export function tickDecimals(ticks: readonly number[]): number {
  const step = (ticks[1] ?? 1) - (ticks[0] ?? 0);
  return Math.max(0, -Math.floor(Math.log10(Math.abs(step)) + 1e-9));
}
