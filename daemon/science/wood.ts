import { positive, within } from './argument-range.ts';
import { DOUGLAS_FIR_RESISTANCE } from './douglas-fir-resistance.ts';

/** Timbers with a resistance curve. */
export type ResistanceSpecies = 'scots-pine' | 'norway-spruce' | 'douglas-fir';

/** What a resistance is read against. */
export type ResistanceContext = {
  readonly species: ResistanceSpecies;
  /** temperature of the wood between the pins, °C */
  readonly woodTempC: number;
};

/** Moisture between which the published resistance curves hold, % of oven-dry mass; beyond is extrapolation. **Source:** US dry-kiln manual (7 to 28 %); James 1988, FPL-GTR-6 (below 30 %). */
export const RESISTANCE_TRUSTED_PERCENT = { lowest: 7, highest: 28 } as const;

/** Answers are limited to this, % of oven-dry mass: below some 0.2 MΩ the curves say only "wet". */
const HIGHEST_PERCENT = 40;
/** Moisture reading rises by this much per kelvin of warmer wood, %/K. **Source:** Forsén and Tarvainen 2000, VTT Publications 420 (0.10 to 0.15; the middle is taken; the direction from memory). */
const PERCENT_PER_KELVIN = 0.125;
/** ln(R/MΩ) = a·exp(−b·u) + c. **Source:** Swedish research institute for testing, recommended calibration curves for resistance meters; reference at 20 °C from memory. */
const NORDIC = {
  'scots-pine': { a: 26.13, b: 0.0921, c: -2.3 },
  'norway-spruce': { a: 27.18, b: 0.0852, c: -2.3 },
} as const;
/** Wood temperature of the Nordic curves, °C (from memory) and of the Douglas fir table, °C (80 °F). */
const REFERENCE_C = { 'scots-pine': 20, 'norway-spruce': 20, 'douglas-fir': 26.7 } as const;
const OHMS_PER_MEGOHM = 1e6;

/**
 * Moisture content wood settles at in air of steady temperature and humidity.
 *
 * @param tempC - air temperature, −40 to 130 °C (the printed table covers −1 to 54 °C here)
 * @param rhPercent - relative humidity, 0 to 100 %
 * @returns % of oven-dry mass; species and history move real boards by about ±1 %
 * @throws RangeError outside the range
 *
 * **Source:** Hailwood–Horrobin with the coefficients of Simpson 1998, FPL-RN-0268, in °C; the same
 * as Wood Handbook, FPL-GTR-282 (2021), ch. 4. Within 0.06 of every printed table cell, that is
 * the table's own rounding. Measured Norway spruce lies 0.3 to 0.8 lower.
 */
export function equilibriumMoistureContent(tempC: number, rhPercent: number): number {
  within('tempC', tempC, -40, 130);
  within('rhPercent', rhPercent, 0, 100);
  const h = rhPercent / 100;
  const w = 349 + 1.29 * tempC + 0.0135 * tempC * tempC;
  const k = 0.805 + 0.000736 * tempC - 0.00000273 * tempC * tempC;
  const k1 = 6.27 - 0.00938 * tempC - 0.000303 * tempC * tempC;
  const k2 = 1.91 + 0.0407 * tempC - 0.000293 * tempC * tempC;
  const kh = k * h;
  const first = k1 * kh;
  const second = k1 * k2 * kh * kh;
  return (1800 / w) * (kh / (1 - kh) + (first + 2 * second) / (1 + first + second));
}

/**
 * Moisture content from the electrical resistance between two pins.
 *
 * @param ohms - resistance, Ω, above 0
 * @param context - species, and wood temperature −40 to 100 °C
 * @returns % of oven-dry mass, limited to 0…40; trust it between 7 and 28 (see
 *   {@link RESISTANCE_TRUSTED_PERCENT}); about ±1.5 % for one pair of pins, more above 25 %
 * @throws RangeError on a resistance that is not above 0, a temperature outside the range or an
 *   unknown species
 *
 * **Source:** see the constants; Douglas fir from James 1988, FPL-GTR-6, Table 1 (from memory).
 */
export function moistureFromResistance(ohms: number, context: ResistanceContext): number {
  const megohms = positive('ohms', ohms) / OHMS_PER_MEGOHM;
  const reference = referenceTemperature(context);
  const indicated =
    context.species === 'douglas-fir' ? fromTable(megohms) : fromNordic(megohms, context.species);
  const corrected = indicated - PERCENT_PER_KELVIN * (context.woodTempC - reference);
  return Math.min(HIGHEST_PERCENT, Math.max(0, corrected));
}

/**
 * Resistance that wood of a given moisture shows: the inverse of {@link moistureFromResistance}.
 *
 * @param moisturePercent - % of oven-dry mass, 0 to 40
 * @param context - species, and wood temperature −40 to 100 °C
 * @returns resistance, Ω
 * @throws RangeError outside the range
 */
export function resistanceFromMoisture(
  moisturePercent: number,
  context: ResistanceContext,
): number {
  within('moisturePercent', moisturePercent, 0, HIGHEST_PERCENT);
  const reference = referenceTemperature(context);
  const indicated = moisturePercent + PERCENT_PER_KELVIN * (context.woodTempC - reference);
  if (context.species === 'douglas-fir') return toTable(indicated) * OHMS_PER_MEGOHM;
  const { a, b, c } = NORDIC[context.species];
  return Math.exp(a * Math.exp(-b * indicated) + c) * OHMS_PER_MEGOHM;
}

function referenceTemperature({ species, woodTempC }: ResistanceContext): number {
  within('woodTempC', woodTempC, -40, 100);
  if (!Object.hasOwn(REFERENCE_C, species)) {
    throw new RangeError(`species is ${species}; allowed: ${Object.keys(REFERENCE_C).join(', ')}`);
  }
  return REFERENCE_C[species];
}

function fromNordic(megohms: number, species: 'scots-pine' | 'norway-spruce'): number {
  const { a, b, c } = NORDIC[species];
  const aboveFloor = Math.log(megohms) - c;
  // under e^c megohm the curve has no answer: the wood is wetter than it can tell
  return aboveFloor > 0 ? -Math.log(aboveFloor / a) / b : Number.POSITIVE_INFINITY;
}

/** The two neighbouring table rows whose line the point lies on; the end rows carry on outwards. */
function tableRows(isBefore: (row: readonly [number, number]) => boolean) {
  const table = DOUGLAS_FIR_RESISTANCE;
  const found = table.findIndex((row) => !isBefore(row));
  const upper = Math.max(1, found === -1 ? table.length - 1 : found);
  const [lowPercent, lowMegohms] = table[upper - 1] as readonly [number, number];
  const [highPercent, highMegohms] = table[upper] as readonly [number, number];
  const lnLow = Math.log(lowMegohms);
  return {
    lowPercent,
    lnLow,
    lnPerPercent: (Math.log(highMegohms) - lnLow) / (highPercent - lowPercent),
  };
}

function fromTable(megohms: number): number {
  const { lowPercent, lnLow, lnPerPercent } = tableRows(([, r]) => r > megohms);
  return lowPercent + (Math.log(megohms) - lnLow) / lnPerPercent;
}

function toTable(percent: number): number {
  const { lowPercent, lnLow, lnPerPercent } = tableRows(([u]) => u < percent);
  return Math.exp(lnLow + (percent - lowPercent) * lnPerPercent);
}
