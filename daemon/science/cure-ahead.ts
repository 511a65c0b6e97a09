import { within } from './argument-range.ts';
import type { CureModel } from './cure.ts';
import { factorAt } from './cure-factor.ts';
import { rateAt } from './cure-rate.ts';
import type { TemperatureOutlook } from './temperature-outlook.ts';
import { expectedDegreeHoursPerHour } from './uncertain-rate.ts';

/** How a coming sum is reckoned. */
export type CureAheadOptions = {
  /** warmth above it does not count, °C; default none */
  readonly capC?: number | undefined;
};

/** Degree-hours to come, plain data: one path for each of several degrees of a warmer or colder future. */
export type CureAhead = {
  /** UTC epoch, ms */
  readonly fromAt: number;
  /** how many standard deviations of the sum each path lies above the expected one, ascending */
  readonly deviations: readonly number[];
  /** °C·h gained from `fromAt` to the end of each hour, the first entry 0; one list a path */
  readonly paths: readonly (readonly number[])[];
};

/** Between these the sum runs nearly straight; further out than ±2.4 lie 1.6 % of futures. */
const DEVIATIONS = [-2.4, -1.8, -1.2, -0.6, 0, 0.6, 1.2, 1.8, 2.4];

/**
 * Sums of cure that lie ahead at a place, from its temperature outlook: once for all its coats.
 *
 * On a path the temperature keeps off its expectation by what gives the sum its standard deviation;
 * what is left of each hour's error is averaged over, so that cold air around the datum still earns
 * what its warm hours give.
 *
 * @param outlook - the coming hours
 * @param model - rate, and factors of humidity and film; the factor of air changes is not known ahead
 * @param options - cap
 * @returns the paths
 * @throws RangeError on a model or cap outside its range
 */
export function cureAhead(
  outlook: TemperatureOutlook,
  model: CureModel,
  options: CureAheadOptions = {},
): CureAhead {
  const capC = options.capC ?? Number.POSITIVE_INFINITY;
  if (capC !== Number.POSITIVE_INFINITY) within('capC', capC, -90, 150);
  rateAt(model, 20);
  const film = within('film', model.film ?? 1, 0, 1e6);
  const { tempC, errorK, sumErrorKh, rhPercent } = outlook;
  const paths = DEVIATIONS.map(() => [0]);
  const sums = DEVIATIONS.map(() => 0);
  for (let hour = 0; hour < tempC.length; hour++) {
    const factor =
      model.humidity === undefined || rhPercent === null
        ? film
        : film * factorAt(model.humidity, rhPercent[hour] as number);
    const error = errorK[hour] as number;
    const before = hour === 0 ? 0 : (sumErrorKh[hour - 1] as number);
    const shared = Math.min(error, Math.max(0, (sumErrorKh[hour] as number) - before));
    const own = Math.sqrt(Math.max(0, error * error - shared * shared));
    for (let path = 0; path < DEVIATIONS.length; path++) {
      const expected = (tempC[hour] as number) + (DEVIATIONS[path] as number) * shared;
      sums[path] =
        (sums[path] as number) + factor * expectedDegreeHoursPerHour(model, expected, own, capC);
      (paths[path] as number[]).push(sums[path] as number);
    }
  }
  return { fromAt: outlook.fromAt, deviations: DEVIATIONS, paths };
}
