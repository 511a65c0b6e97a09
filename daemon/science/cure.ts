import { within } from './argument-range.ts';
import { cornerShares, type FactorCurve, factorAt } from './cure-factor.ts';
import {
  degreeHoursPerEquivalentHour,
  hoursBetween,
  meanRate,
  type RateModel,
  rateAt,
} from './cure-rate.ts';
import { meanOver } from './gauss-legendre.ts';
import { arrheniusPanels } from './mean-rate.ts';
import { oneAtATime } from './one-at-a-time.ts';

/** A rate model with the longest believed gap and the optional factors; without factors the sum is of temperature alone. */
export type CureModel = RateModel & {
  /** longest stretch between readings that still counts, h */
  readonly maxGapHours: number;
  /** factor over relative humidity, % */
  readonly humidity?: FactorCurve | undefined;
  /** factor over air changes per hour */
  readonly air?: FactorCurve | undefined;
  /** constant factor for the film */
  readonly film?: number | undefined;
};

/** One reading at the coat's place. */
export type CureSample = {
  /** UTC epoch, ms */
  readonly at: number;
  readonly tempC: number;
  readonly rhPercent?: number | undefined;
  readonly airChangesPerHour?: number | undefined;
};

/** What a run of readings adds up to. */
export type CureSum = {
  /** °C·h above the datum; the low sum */
  readonly degreeHours: number;
  /** °C·h, gaps adding nothing */
  readonly degreeHoursLow: number;
  /** °C·h, gaps adding what the straight line across them would */
  readonly degreeHoursHigh: number;
  /** hours at the reference temperature, gaps adding nothing */
  readonly equivalentHours: number;
  /** hours between readings that count */
  readonly coveredHours: number;
  /** hours in gaps longer than the model believes */
  readonly gapHours: number;
};

/** The sum before any reading. */
export const EMPTY_CURE: CureSum = {
  degreeHours: 0,
  degreeHoursLow: 0,
  degreeHoursHigh: 0,
  equivalentHours: 0,
  coveredHours: 0,
  gapHours: 0,
};

/** A factor that varies along a segment, with the value of its quantity at both ends. */
type Varying = { readonly curve: FactorCurve; readonly from: number; readonly to: number };

function varying(curve: FactorCurve | undefined, from?: number, to?: number): Varying[] {
  const start = from ?? to;
  const end = to ?? from;
  // a quantity nobody measured leaves the sum as it is
  if (curve === undefined || start === undefined || end === undefined) return [];
  return [{ curve, from: start, to: end }];
}

/** Mean of rate × factors along a segment; split at every corner, so that each piece is smooth. */
function meanFactoredRate(model: CureModel, from: CureSample, to: CureSample): number {
  const film = within('film', model.film ?? 1, 0, 1e6);
  const factors = [
    ...varying(model.humidity, from.rhPercent, to.rhPercent),
    ...varying(model.air, from.airChangesPerHour, to.airChangesPerHour),
  ];
  if (factors.length === 0) return film * meanRate(model, from.tempC, to.tempC);
  const tempAt = (share: number) => from.tempC + share * (to.tempC - from.tempC);
  const value = (share: number) =>
    factors.reduce(
      (product, { curve, from: a, to: b }) => product * factorAt(curve, a + share * (b - a)),
      rateAt(model, tempAt(share)),
    );
  const corners = factors.flatMap(({ curve, from: a, to: b }) => cornerShares(curve, a, b));
  if (model.rate === 'nurse-saul') {
    corners.push(...cornerShares([{ at: model.datumC, factor: 1 }], from.tempC, to.tempC));
  }
  const shares = [0, ...corners.sort((a, b) => a - b), 1];
  let mean = 0;
  for (let piece = 1; piece < shares.length; piece++) {
    const start = shares[piece - 1] as number;
    const end = shares[piece] as number;
    const panels =
      model.rate === 'arrhenius'
        ? arrheniusPanels(model.activationEnergyJPerMol, tempAt(start), tempAt(end))
        : 1;
    mean += (end - start) * meanOver(value, start, end, panels);
  }
  return film * mean;
}

/**
 * Adds the stretch between two neighbouring readings to a sum: the streaming form of {@link integrateCure}.
 *
 * @param sum - the sum up to `from`
 * @param model - rate, longest believed gap, optional factors
 * @param from - the earlier reading
 * @param to - the later reading, not before the earlier
 * @returns the sum up to `to`; a stretch longer than `maxGapHours` adds only to the high sum and to
 *   the gap hours
 * @throws RangeError outside the range
 */
export function addCure(sum: CureSum, model: CureModel, from: CureSample, to: CureSample): CureSum {
  const maxGapHours = within('maxGapHours', model.maxGapHours, 0, 1e6);
  const hours = hoursBetween(from.at, to.at);
  const equivalent = hours * meanFactoredRate(model, from, to);
  const degreeHours = equivalent * degreeHoursPerEquivalentHour(model);
  const degreeHoursHigh = sum.degreeHoursHigh + degreeHours;
  if (hours > maxGapHours) return { ...sum, degreeHoursHigh, gapHours: sum.gapHours + hours };
  const degreeHoursLow = sum.degreeHoursLow + degreeHours;
  return {
    degreeHours: degreeHoursLow,
    degreeHoursLow,
    degreeHoursHigh,
    equivalentHours: sum.equivalentHours + equivalent,
    coveredHours: sum.coveredHours + hours,
    gapHours: sum.gapHours,
  };
}

/**
 * Cure from a set of readings, the temperature running straight from each to the next.
 *
 * @param samples - readings in any order, with any gaps; those of equal time are averaged
 * @param model - rate, longest believed gap, optional factors
 * @returns the sums; all 0 for fewer than two different times
 * @throws RangeError on a reading or a model outside its range
 *
 * **Source:** maturity as the time integral of a rate: Carino 1984, Cement, Concrete, and Aggregates
 * 6(2), 61–73 (abstract).
 */
export function integrateCure(samples: readonly CureSample[], model: CureModel): CureSum {
  let sum = EMPTY_CURE;
  let before: CureSample | null = null;
  for (const sample of oneAtATime(samples)) {
    if (before === null) rateAt(model, sample.tempC);
    else sum = addCure(sum, model, before, sample);
    before = sample;
  }
  return sum;
}
