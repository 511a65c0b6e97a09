import { within } from './argument-range.ts';

/** Surface the vapour pressure is taken over: `water` also below 0 °C, or `phase`: water from 0 °C up, ice below. */
export type SaturationOver = 'phase' | 'water';

/** Which saturation curve a humidity refers to. */
export type HumidityOptions = {
  /** `water` for capacitive sensors, which report over water also below 0 °C; default `phase` */
  readonly over?: SaturationOver | undefined;
};

/** Molar gas constant, J/(mol·K). **Source:** CODATA 2018, exact by the 2019 SI. */
export const GAS_CONSTANT = 8.314462618;
/** 0 °C in kelvin. **Source:** SI. */
export const ZERO_C_K = 273.15;
/** Standard atmosphere, Pa. **Source:** ISO 2533:1975. */
export const STANDARD_PRESSURE_PA = 101325;

/** Molar mass of water, g/mol. **Source:** ASHRAE Fundamentals 2017, ch. 1 (18.015268). */
const WATER_G_PER_MOL = 18.015268;
/** Ratio of the molar masses of water and dry air. **Source:** ASHRAE Fundamentals 2017, ch. 1. */
const WATER_TO_AIR = 0.621945;
const LOWEST_C = -100;
const HIGHEST_C = 200;

/** Hyland and Wexler 1983 over liquid water; ln Pa from kelvin. Range 0 to 200 °C, extended below by the same curve. */
function lnOverWater(k: number): number {
  return (
    -5.8002206e3 / k +
    1.3914993 +
    k * (-4.8640239e-2 + k * (4.1764768e-5 - 1.4452093e-8 * k)) +
    6.5459673 * Math.log(k)
  );
}

/** Hyland and Wexler 1983 over ice; ln Pa from kelvin. Range −100 to 0 °C. */
function lnOverIce(k: number): number {
  return (
    -5.6745359e3 / k +
    6.3925247 +
    k * (-9.677843e-3 + k * (6.2215701e-7 + k * (2.0747825e-9 - 9.484024e-13 * k))) +
    4.1635019 * Math.log(k)
  );
}

/** d(ln p)/dT of {@link lnOverWater}, 1/K. */
function slopeOverWater(k: number): number {
  return (
    5.8002206e3 / (k * k) -
    4.8640239e-2 +
    k * (2 * 4.1764768e-5 - 3 * 1.4452093e-8 * k) +
    6.5459673 / k
  );
}

/** d(ln p)/dT of {@link lnOverIce}, 1/K. */
function slopeOverIce(k: number): number {
  return (
    5.6745359e3 / (k * k) -
    9.677843e-3 +
    k * (2 * 6.2215701e-7 + k * (3 * 2.0747825e-9 - 4 * 9.484024e-13 * k)) +
    4.1635019 / k
  );
}

const LN_WATER_AT_0C = lnOverWater(ZERO_C_K);
const LN_ICE_AT_0C = lnOverIce(ZERO_C_K);

function lnSaturation(tempC: number, over: SaturationOver): number {
  const k = tempC + ZERO_C_K;
  return tempC >= 0 || over === 'water' ? lnOverWater(k) : lnOverIce(k);
}

/** Temperature at which ln of the saturation pressure has the given value, °C; Newton on ln p, which is nearly a line in 1/T. */
function saturationTemperature(lnPa: number, over: SaturationOver): number {
  const ice = over === 'phase' && lnPa < LN_WATER_AT_0C;
  // the two published curves miss each other by 0.01 % at 0 °C: inside that step the answer is 0
  if (ice && lnPa > LN_ICE_AT_0C) return 0;
  const ln = ice ? lnOverIce : lnOverWater;
  const slope = ice ? slopeOverIce : slopeOverWater;
  // Clausius–Clapeyron start in 1/T, then Newton in 1/T
  let k = 1 / (1 / ZERO_C_K - (lnPa - LN_WATER_AT_0C) / 5400);
  for (let step = 0; step < 50; step++) {
    const change = (ln(k) - lnPa) / (slope(k) * k * k);
    k = 1 / (1 / k + change);
    if (Math.abs(change) * k < 1e-15) break;
  }
  return k - ZERO_C_K;
}

/**
 * Saturation pressure of water vapour, over water from 0 °C up and over ice below.
 *
 * @param tempC - temperature, −100 to 200 °C
 * @param options - `over: 'water'` stays on the water curve below 0 °C (supercooled water)
 * @returns pressure, Pa; about 0.03 % from printed handbook values between 0 and 40 °C
 * @throws RangeError outside the formulas' range
 *
 * **Source:** Hyland and Wexler 1983, as in ASHRAE Fundamentals 2017, ch. 1, eq. 5 and 6
 * (coefficients from memory, checked against an independent library). The water curve below 0 °C
 * is the same formula carried on; it stays within 0.5 % of the WMO Magnus form down to −30 °C.
 */
export function saturationVapourPressure(tempC: number, options: HumidityOptions = {}): number {
  within('tempC', tempC, LOWEST_C, HIGHEST_C);
  return Math.exp(lnSaturation(tempC, options.over ?? 'phase'));
}

/**
 * Dew point of moist air: the temperature at which it would be saturated (the frost point below 0 °C).
 *
 * @param tempC - air temperature, −100 to 200 °C
 * @param rhPercent - relative humidity, above 0 up to 100 %
 * @param options - `over: 'water'` when the sensor reports over water also below 0 °C; the answer is
 *   then the dew point over (supercooled) water
 * @returns dew point, °C, never above the air temperature by more than rounding
 * @throws RangeError outside the range, and for air so dry that its dew point lies below −100 °C
 *
 * **Source:** exact inverse of {@link saturationVapourPressure}.
 */
export function dewPoint(tempC: number, rhPercent: number, options: HumidityOptions = {}): number {
  within('tempC', tempC, LOWEST_C, HIGHEST_C);
  within('rhPercent', rhPercent, 0, 100);
  const over = options.over ?? 'phase';
  const lnSat = lnSaturation(tempC, over);
  const lnLowest = lnSaturation(LOWEST_C, over);
  const lnPa = lnSat + Math.log(rhPercent / 100);
  if (!(lnPa >= lnLowest - 1e-12)) {
    const lowest = 100 * Math.exp(lnLowest - lnSat);
    throw new RangeError(
      `rhPercent is ${rhPercent} at tempC ${tempC}; allowed: ${lowest.toPrecision(3)} to 100 (dew point not below ${LOWEST_C} °C)`,
    );
  }
  return saturationTemperature(lnPa, over);
}

/**
 * Mass of water vapour in a volume of air.
 *
 * @param tempC - air temperature, −100 to 200 °C
 * @param rhPercent - relative humidity, 0 to 100 %
 * @param options - `over: 'water'` when the humidity is over water also below 0 °C
 * @returns g of water per m³ of moist air
 * @throws RangeError outside the range
 *
 * **Source:** ideal gas law with the CODATA gas constant; the neglected non-ideality is below 0.5 %.
 */
export function absoluteHumidity(
  tempC: number,
  rhPercent: number,
  options: HumidityOptions = {},
): number {
  within('rhPercent', rhPercent, 0, 100);
  const vapourPa = (rhPercent / 100) * saturationVapourPressure(tempC, options);
  return (vapourPa * WATER_G_PER_MOL) / (GAS_CONSTANT * (tempC + ZERO_C_K));
}

/**
 * Mass of water vapour per mass of dry air.
 *
 * @param tempC - air temperature, −100 to 200 °C
 * @param rhPercent - relative humidity, 0 to 100 %
 * @param pressurePa - barometric pressure, Pa; must exceed the vapour's own pressure
 * @returns kg of water per kg of dry air
 * @throws RangeError outside the range
 *
 * **Source:** ASHRAE Fundamentals 2017, ch. 1, eq. 20.
 */
export function humidityRatio(
  tempC: number,
  rhPercent: number,
  pressurePa: number = STANDARD_PRESSURE_PA,
): number {
  within('rhPercent', rhPercent, 0, 100);
  const vapourPa = (rhPercent / 100) * saturationVapourPressure(tempC);
  if (!(pressurePa > vapourPa) || !Number.isFinite(pressurePa)) {
    throw new RangeError(
      `pressurePa is ${pressurePa}; allowed: above the vapour pressure of ${vapourPa.toFixed(1)} Pa`,
    );
  }
  return (WATER_TO_AIR * vapourPa) / (pressurePa - vapourPa);
}

/**
 * Relative humidity of air that holds a given mass of vapour.
 *
 * @param tempC - air temperature, −100 to 200 °C
 * @param absoluteHumidityGM3 - g of water per m³, 0 or more
 * @param options - `over: 'water'` for humidity over water also below 0 °C
 * @returns %; above 100 means more vapour than the air can hold: water would condense
 * @throws RangeError outside the range
 *
 * **Source:** exact inverse of {@link absoluteHumidity}.
 */
export function relativeHumidity(
  tempC: number,
  absoluteHumidityGM3: number,
  options: HumidityOptions = {},
): number {
  within('absoluteHumidityGM3', absoluteHumidityGM3, 0, Number.MAX_VALUE);
  return (100 * absoluteHumidityGM3) / absoluteHumidity(tempC, 100, options);
}
