/** Roots are found to this, in the unit of the argument. */
const TOLERANCE = 1e-9;

/**
 * Where a rising function passes 0, between two points that enclose it.
 *
 * @param value - never falling; its sign at the ends decides: where both agree, the nearer end is the answer
 * @param low - lower end
 * @param high - upper end
 * @returns the argument, good to 1e-9
 *
 * **Source:** Ridders 1979, IEEE Transactions on Circuits and Systems 26(11), 979–980, from memory;
 * halves the bracket at least every other call.
 */
export function risingRoot(value: (x: number) => number, low: number, high: number): number {
  let [below, above] = [low, high];
  let [atBelow, atAbove] = [value(low), value(high)];
  if (atBelow >= 0) return low;
  if (atAbove <= 0) return high;
  while (above - below > TOLERANCE) {
    const middle = (below + above) / 2;
    const atMiddle = value(middle);
    const root = Math.sqrt(atMiddle * atMiddle - atBelow * atAbove);
    const guess = middle - ((middle - below) * atMiddle) / root;
    const inside = Math.min(above, Math.max(below, guess));
    const atGuess = value(inside);
    if (atMiddle === 0) return middle;
    if (atGuess === 0) return inside;
    for (const [x, at] of [
      [middle, atMiddle],
      [inside, atGuess],
    ] as const) {
      if (at < 0 && x > below) [below, atBelow] = [x, at];
      if (at > 0 && x < above) [above, atAbove] = [x, at];
    }
    // once the guess sits on the root, only a step beside it closes the bracket
    const beside = inside + (atGuess < 0 ? TOLERANCE / 2 : -TOLERANCE / 2);
    if (beside > below && beside < above) {
      const atBeside = value(beside);
      if (atBeside < 0) [below, atBelow] = [beside, atBeside];
      else [above, atAbove] = [beside, atBeside];
    }
  }
  return (below + above) / 2;
}
