/** How much of a straight run of the input, by its start and its end, a first-order lag has taken on. */
export type LagWeights = {
  /** share of the old output that is left, e^(−x) */
  readonly kept: number;
  /** weight of the input at the start of the step */
  readonly start: number;
  /** weight of the input at the end of the step */
  readonly end: number;
};

/**
 * Weights of one step of dy/dt = (u − y)/τ while u runs straight from one value to another: exact.
 *
 * @param x - step length over τ, 0 or more
 * @returns weights that add to 1: y(end) = kept·y + start·u₀ + end·u₁
 *
 * **Source:** variation of constants, own algebra.
 */
export function lagWeights(x: number): LagWeights {
  const kept = Math.exp(-x);
  // mean of the decay over the step; its series where the quotient would cancel
  const mean = x < 1e-5 ? 1 - x / 2 + (x * x) / 6 : -Math.expm1(-x) / x;
  return { kept, start: mean - kept, end: 1 - mean };
}
