import { within } from './argument-range.ts';

/** A factor read off a broken line over some quantity: held constant outside its ends. */
export type FactorCurve = readonly { readonly at: number; readonly factor: number }[];

/**
 * Factor at a value of the quantity.
 *
 * @param curve - points ascending by `at`, at least one, factors 0 or more
 * @param value - the quantity, in the unit of `at`
 * @returns the factor on the broken line
 * @throws RangeError on an empty or descending curve
 */
export function factorAt(curve: FactorCurve, value: number): number {
  const first = curve[0];
  if (first === undefined) throw new RangeError('curve is empty; allowed: at least one point');
  let before = first;
  for (const point of curve) {
    within('factor', point.factor, 0, 1e6);
    if (point.at < before.at) {
      throw new RangeError(`curve.at is ${point.at} after ${before.at}; allowed: ascending`);
    }
    if (value < point.at) {
      if (point === first) return first.factor;
      const share = (value - before.at) / (point.at - before.at);
      return before.factor + share * (point.factor - before.factor);
    }
    before = point;
  }
  return before.factor;
}

/**
 * Where a straight run of the quantity crosses the corners of a curve, as shares of the run.
 *
 * @param curve - the broken line
 * @param from - the quantity at the start of the run
 * @param to - the quantity at its end
 * @returns shares strictly between 0 and 1, in the curve's order
 */
export function cornerShares(curve: FactorCurve, from: number, to: number): number[] {
  return curve
    .map((point) => (point.at - from) / (to - from))
    .filter((share) => share > 0 && share < 1);
}
