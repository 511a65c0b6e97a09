import { within } from './argument-range.ts';
import { cornerShares, type FactorCurve, factorAt } from './cure-factor.ts';
import { meanOver } from './gauss-legendre.ts';
import { arrheniusFactor, arrheniusPanels, meanAboveZero, meanArrhenius } from './mean-rate.ts';
import { oneAtATime } from './one-at-a-time.ts';

/** How fast a coat cures at a temperature, relative to its reference (20 °C for Nurse–Saul). */
export type RateModel =
  | { readonly rate: 'nurse-saul'; readonly datumC: number }
  | {
      readonly rate: 'arrhenius';
      readonly activationEnergyJPerMol: number;
      readonly referenceC: number;
    };

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

/** Reference of the Nurse–Saul rate, °C. */
const NURSE_SAUL_REFERENCE_C = 20;
/** °C·h shown for an hour at the reference of an Arrhenius model, so that both sums read alike (20 °C over a datum of 5 °C). */
const ARRHENIUS_DEGREES = 15;
const LOWEST_C = -90;
const HIGHEST_C = 150;
const MS_PER_HOUR = 3_600_000;

/** The sum before any reading. */
export const EMPTY_CURE: CureSum = {
  degreeHours: 0,
  degreeHoursLow: 0,
  degreeHoursHigh: 0,
  equivalentHours: 0,
  coveredHours: 0,
  gapHours: 0,
};

function checkDatum(datumC: number): void {
  within('datumC', datumC, LOWEST_C, NURSE_SAUL_REFERENCE_C - 0.1);
}

function checkArrhenius(activationEnergyJPerMol: number, referenceC: number): void {
  within('activationEnergyJPerMol', activationEnergyJPerMol, 1000, 200_000);
  within('referenceC', referenceC, -50, 100);
}

/**
 * Cure rate by the Nurse–Saul rule, relative to 20 °C.
 *
 * @param tempC - temperature, −90 to 150 °C
 * @param model - `datumC`: temperature at which cure stops, −90 to 19.9 °C
 * @returns 1 at 20 °C, 0 at and below the datum, never negative
 * @throws RangeError outside the range
 *
 * **Source:** Nurse–Saul maturity as in ASTM C1074 (scope read; equation from teaching pages).
 */
export function nurseSaulRate(tempC: number, { datumC }: { readonly datumC: number }): number {
  within('tempC', tempC, LOWEST_C, HIGHEST_C);
  checkDatum(datumC);
  return Math.max(0, tempC - datumC) / (NURSE_SAUL_REFERENCE_C - datumC);
}

/**
 * Cure rate by Arrhenius, relative to the reference temperature.
 *
 * @param tempC - temperature, −90 to 150 °C
 * @param model - `activationEnergyJPerMol` 1,000 to 200,000 J/mol; `referenceC` −50 to 100 °C
 * @returns 1 at the reference, always above 0
 * @throws RangeError outside the range
 *
 * **Source:** equivalent age as in ASTM C1074 (scope read; equation from teaching pages).
 */
export function arrheniusRate(
  tempC: number,
  model: { readonly activationEnergyJPerMol: number; readonly referenceC: number },
): number {
  within('tempC', tempC, LOWEST_C, HIGHEST_C);
  checkArrhenius(model.activationEnergyJPerMol, model.referenceC);
  return arrheniusFactor(tempC, model.activationEnergyJPerMol, model.referenceC);
}

/**
 * Cure rate by whichever model is given.
 *
 * @param model - the rate model
 * @param tempC - temperature, −90 to 150 °C
 * @returns relative rate, 0 or more
 * @throws RangeError outside the range
 */
export function rateAt(model: RateModel, tempC: number): number {
  return model.rate === 'nurse-saul' ? nurseSaulRate(tempC, model) : arrheniusRate(tempC, model);
}

/**
 * Degree-hours that one hour at the reference temperature stands for.
 *
 * @param model - the rate model
 * @returns °C·h per equivalent hour: 20 − datum for Nurse–Saul, 15 for Arrhenius
 * @throws RangeError on a datum outside its range
 */
export function degreeHoursPerEquivalentHour(model: RateModel): number {
  if (model.rate !== 'nurse-saul') return ARRHENIUS_DEGREES;
  checkDatum(model.datumC);
  return NURSE_SAUL_REFERENCE_C - model.datumC;
}

/** Mean rate while the temperature runs straight from one value to another. */
function meanRate(model: RateModel, fromTempC: number, toTempC: number): number {
  within('tempC', fromTempC, LOWEST_C, HIGHEST_C);
  within('tempC', toTempC, LOWEST_C, HIGHEST_C);
  if (model.rate === 'nurse-saul') {
    checkDatum(model.datumC);
    const above = meanAboveZero(fromTempC - model.datumC, toTempC - model.datumC);
    return above / (NURSE_SAUL_REFERENCE_C - model.datumC);
  }
  const { activationEnergyJPerMol, referenceC } = model;
  checkArrhenius(activationEnergyJPerMol, referenceC);
  return meanArrhenius(activationEnergyJPerMol, referenceC, fromTempC, toTempC);
}

/** Hours from one time to a later one. */
function hoursBetween(fromAt: number, toAt: number): number {
  if (!(toAt >= fromAt) || !Number.isFinite(toAt - fromAt)) {
    throw new RangeError(`toAt is ${toAt}; allowed: finite and not before fromAt ${fromAt}`);
  }
  return (toAt - fromAt) / MS_PER_HOUR;
}

/**
 * Integral of the relative rate over one straight-line stretch of temperature.
 *
 * @param model - the rate model
 * @param fromAt - start, UTC epoch ms
 * @param fromTempC - temperature at the start, −90 to 150 °C
 * @param toAt - end, UTC epoch ms, not before the start
 * @param toTempC - temperature at the end, −90 to 150 °C
 * @returns hours at the reference temperature (20 °C for Nurse–Saul), 0 or more; Nurse–Saul is
 *   exact, also where the line crosses the datum; Arrhenius is good to 1e-8
 * @throws RangeError outside the range
 */
export function segmentEquivalentHours(
  model: RateModel,
  fromAt: number,
  fromTempC: number,
  toAt: number,
  toTempC: number,
): number {
  return hoursBetween(fromAt, toAt) * meanRate(model, fromTempC, toTempC);
}

/**
 * The same integral with the temperature held at a cap wherever the line runs above it.
 *
 * @param model - the rate model
 * @param capC - cap, −90 to 150 °C; the line is clipped exactly where it crosses
 * @param fromAt - start, UTC epoch ms
 * @param fromTempC - temperature at the start, −90 to 150 °C
 * @param toAt - end, UTC epoch ms, not before the start
 * @param toTempC - temperature at the end, −90 to 150 °C
 * @returns hours at the reference temperature, never more than without the cap
 * @throws RangeError outside the range
 */
export function cappedSegmentEquivalentHours(
  model: RateModel,
  capC: number,
  fromAt: number,
  fromTempC: number,
  toAt: number,
  toTempC: number,
): number {
  const whole = hoursBetween(fromAt, toAt);
  if (fromTempC <= capC && toTempC <= capC) return whole * meanRate(model, fromTempC, toTempC);
  const atCap = rateAt(model, capC);
  const coolest = Math.min(fromTempC, toTempC);
  const hottest = Math.max(fromTempC, toTempC);
  within('tempC', hottest, LOWEST_C, HIGHEST_C);
  if (coolest >= capC) return whole * atCap;
  const shareBelow = (capC - coolest) / (hottest - coolest);
  return whole * (shareBelow * meanRate(model, coolest, capC) + (1 - shareBelow) * atCap);
}

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
