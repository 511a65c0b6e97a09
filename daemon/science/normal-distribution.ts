/**
 * Rational approximations of the error function.
 *
 * **Source:** Cody 1969, "Rational Chebyshev approximations for the error function", Mathematics of
 * Computation 23, 631–637; coefficients from memory, checked against printed tables and a series.
 */
const SMALL_TOP = [
  3209.3775891384694, 377.485237685302, 113.86415415105016, 3.1611237438705655, 0.18577770618460315,
];
const SMALL_BOTTOM = [
  2844.236833439171, 1282.6165260773723, 244.02463793444417, 23.601290952344122, 1,
];
const MIDDLE_TOP = [
  1230.3393547979972, 2051.0783778260716, 1712.0476126340707, 881.952221241769, 298.6351381974001,
  66.11919063714163, 8.883149794388377, 0.5641884969886701, 2.1531153547440383e-8,
];
const MIDDLE_BOTTOM = [
  1230.3393548037495, 3439.3676741437216, 4362.619090143247, 3290.7992357334597, 1621.3895745666903,
  537.1811018620099, 117.6939508913125, 15.744926110709835, 1,
];
const LARGE_TOP = [
  -0.0006587491615298378, -0.016083785148742275, -0.12578172611122926, -0.36034489994980445,
  -0.30532663496123236, -0.016315387137302097,
];
const LARGE_BOTTOM = [
  0.0023352049762686918, 0.06051834131244132, 0.5279051029514285, 1.8729528499234604,
  2.568520192289822, 1,
];
const INVERSE_ROOT_PI = 0.5641895835477563;
const LN_2 = Math.LN2;
const LN_ROOT_2PI = 0.9189385332046727;

/** Polynomial with ascending coefficients. */
function polynomial(coefficients: readonly number[], x: number): number {
  let value = 0;
  for (let power = coefficients.length - 1; power >= 0; power--) {
    value = value * x + (coefficients[power] as number);
  }
  return value;
}

/** exp(x²)·erfc(x) for x ≥ 0.46875. */
function scaledErfc(x: number): number {
  if (x <= 4) return polynomial(MIDDLE_TOP, x) / polynomial(MIDDLE_BOTTOM, x);
  const inverseSquare = 1 / (x * x);
  const correction =
    (inverseSquare * polynomial(LARGE_TOP, inverseSquare)) /
    polynomial(LARGE_BOTTOM, inverseSquare);
  return (INVERSE_ROOT_PI + correction) / x;
}

/** erf(x) for |x| < 0.46875. */
function smallErf(x: number): number {
  const square = x * x;
  return (x * polynomial(SMALL_TOP, square)) / polynomial(SMALL_BOTTOM, square);
}

/**
 * Probability that a standard normal number lies below a value.
 *
 * @param z - any number, infinities included
 * @returns 0 to 1; relative error below 1e-14 also far out on the left
 */
export function normalCdf(z: number): number {
  const x = Math.abs(z) * Math.SQRT1_2;
  if (x < 0.46875) return 0.5 + 0.5 * smallErf(z * Math.SQRT1_2);
  const tail = 0.5 * scaledErfc(x) * Math.exp(-x * x);
  return z < 0 ? tail : 1 - tail;
}

/**
 * Natural logarithm of {@link normalCdf}, without underflow.
 *
 * @param z - any number
 * @returns 0 or less; −Infinity only at −Infinity
 */
export function logNormalCdf(z: number): number {
  if (z === Number.NEGATIVE_INFINITY) return Number.NEGATIVE_INFINITY;
  if (z > -1) return Math.log1p(-normalCdf(-z));
  const x = -z * Math.SQRT1_2;
  return Math.log(scaledErfc(x)) - LN_2 - x * x;
}

/**
 * Natural logarithm of the probability that a standard normal number lies between two values.
 *
 * @param low - lower end, may be −Infinity
 * @param high - upper end, above `low`, may be Infinity
 * @returns 0 or less, without underflow in either tail
 */
export function logNormalBetween(low: number, high: number): number {
  if (low === Number.NEGATIVE_INFINITY) return logNormalCdf(high);
  if (high === Number.POSITIVE_INFINITY) return logNormalCdf(-low);
  // both ends in one tail: subtract there, where the two probabilities are small and exact
  if (low > 0) return logNormalBetween(-high, -low);
  if (high > 0) return Math.log1p(-normalCdf(low) - normalCdf(-high));
  const outer = logNormalCdf(high);
  return outer + Math.log1p(-Math.exp(logNormalCdf(low) - outer));
}

/**
 * Natural logarithm of the standard normal density.
 *
 * @param z - any number
 * @returns ln of the density
 */
export function logNormalDensity(z: number): number {
  return -LN_ROOT_2PI - 0.5 * z * z;
}
