import { within } from './argument-range.ts';
import { arrheniusFactor, meanAboveZero, meanArrhenius } from './mean-rate.ts';

/** How fast a coat cures at a temperature, relative to its reference (20 °C for Nurse–Saul). */
export type RateModel =
  | { readonly rate: 'nurse-saul'; readonly datumC: number }
  | {
      readonly rate: 'arrhenius';
      readonly activationEnergyJPerMol: number;
      readonly referenceC: number;
    };

/** Reference of the Nurse–Saul rate, °C. */
const NURSE_SAUL_REFERENCE_C = 20;
/** °C·h shown for an hour at the reference of an Arrhenius model, so that both sums read alike (20 °C over a datum of 5 °C). */
const ARRHENIUS_DEGREES = 15;
const LOWEST_C = -90;
const HIGHEST_C = 150;
const MS_PER_HOUR = 3_600_000;

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

/**
 * Mean rate while the temperature runs straight from one value to another.
 *
 * @param model - the rate model
 * @param fromTempC - temperature at the start, −90 to 150 °C
 * @param toTempC - temperature at the end, −90 to 150 °C
 * @returns relative rate, 0 or more
 * @throws RangeError outside the range
 */
export function meanRate(model: RateModel, fromTempC: number, toTempC: number): number {
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

/**
 * Hours from one time to a later one.
 *
 * @param fromAt - UTC epoch ms
 * @param toAt - UTC epoch ms, not before `fromAt`
 * @throws RangeError where it is before, or either is not finite
 */
export function hoursBetween(fromAt: number, toAt: number): number {
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
