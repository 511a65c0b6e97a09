import { degreeHoursPerEquivalentHour, type RateModel, rateAt } from './cure-rate.ts';
import { logNormalDensity, normalCdf } from './normal-distribution.ts';

const LOWEST_C = -90;
const HIGHEST_C = 150;
/** Beyond so many standard deviations from a corner, the corner does not matter. */
const FAR = 6;
/** Three-point Gauss–Hermite rule for a standard normal: node and weight. **Source:** Abramowitz and Stegun 1964, table 25.10, n = 3. */
const NORMAL_NODES = [
  [-Math.sqrt(3), 1 / 6],
  [0, 2 / 3],
  [Math.sqrt(3), 1 / 6],
] as const;

/**
 * Mean of max(0, x) over a normal x.
 *
 * @param mean - mean of x
 * @param spread - standard deviation of x, 0 or more
 * @returns the mean, never below max(0, mean)
 *
 * **Source:** mean of the rectified normal, m·Φ(m/s) + s·φ(m/s): own integration.
 */
export function meanExcess(mean: number, spread: number): number {
  if (!(Math.abs(mean) < FAR * spread)) return Math.max(0, mean);
  const z = mean / spread;
  return mean * normalCdf(z) + spread * Math.exp(logNormalDensity(z));
}

/**
 * Expected rate where the temperature is only known to within a normal error.
 *
 * @param model - the rate model
 * @param tempC - expected temperature, °C
 * @param spreadK - standard deviation of its error, K, 0 or more
 * @param capC - warmth above it does not count, °C; Infinity for none
 * @returns °C·h an hour; with no error the rate itself
 * @throws RangeError on a model or cap outside its range
 */
export function expectedDegreeHoursPerHour(
  model: RateModel,
  tempC: number,
  spreadK: number,
  capC: number,
): number {
  if (model.rate === 'nurse-saul') {
    const gained = meanExcess(tempC - model.datumC, spreadK);
    return capC === Number.POSITIVE_INFINITY ? gained : gained - meanExcess(tempC - capC, spreadK);
  }
  const at = (value: number) => rateAt(model, Math.min(capC, HIGHEST_C, Math.max(LOWEST_C, value)));
  const rate =
    spreadK === 0
      ? at(tempC)
      : NORMAL_NODES.reduce((sum, [node, weight]) => sum + weight * at(tempC + node * spreadK), 0);
  return rate * degreeHoursPerEquivalentHour(model);
}
