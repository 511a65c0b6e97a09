import { type Measure, toReaders, type UnitSystem, unitOf } from './units.ts';
import { inchesAndFraction, type Part, usPoured, usVolume, usWeighed } from './us-amounts.ts';

/** What stands where a figure is missing. */
export const MISSING = '–';
const ROUGH_DIGITS = 3;

/** Figures as one reader wants them: by Intl, in metric or US units. A missing one is a dash. */
export interface Figures {
  /** “14.2 °C” */
  temperature(tempC: number | null): string;
  /** “0.6 K”: how far apart two temperatures are. */
  temperatureDifference(differenceK: number | null): string;
  /** Relative humidity: “71 %”. */
  humidity(rhPercent: number | null): string;
  /** “612 °C·h” */
  degreeHours(sum: number | null): string;
  /** “41 h”; tenths below ten hours. */
  hours(hours: number | null): string;
  /** Any metric figure with its unit, in the reader’s. `decimals` are of the figure shown. */
  measure(measure: Measure, value: number | null, decimals?: number): string;
  /** The same without its unit. */
  bare(measure: Measure, value: number | null, decimals?: number): string;
  /** With no more decimals than it needs, as somebody set it: “1.5 kg/L”. `most` are metric ones (3). */
  asSet(measure: Measure, value: number | null, most?: number): string;
  /** A volume in the unit that suits its size: “2.50 L”; “1.25 gal”, “3 qt”, “12.5 fl oz”. */
  volume(litres: number | null, litreDecimals?: number): string;
  /** The size of a tin: “2.5 L”; “1 gal”, “1 qt”. */
  tin(litres: number): string;
  /** As it is poured by a measuring cup: “450 mL”; “1 gal 2 qt 5 fl oz”. */
  poured(litres: number): string;
  /** As a kitchen scale shows it: “1,220 g”; “2 lb 11 oz”. */
  weighed(grams: number): string;
  /** A mark on a stick, as a tape is read: “14.2”; “5 9/16”. Its unit is that of `lengthCm`. */
  mark(lengthCm: number): string;
  /** To three digits, without its unit: more are not known. */
  roughly(measure: Measure, value: number | null): string;
  /** Sizes side by side, with no more decimals than they need: “4,200 × 145 × 22 mm”. */
  sizes(measure: Measure, ...values: readonly number[]): string;
  /** The unit alone, for a heading or beside a field. */
  unit(measure: Measure): string;
  /** A share as a percentage: “68 %” for 0.68. */
  share(share: number | null): string;
  /** A percentage: “12.5 %”. */
  percent(percent: number | null, decimals?: number): string;
  /** A figure without a unit, with at most so many decimals (3), and at least so many (none). */
  number(value: number, decimals?: number, atLeast?: number): string;
}

/**
 * @param locale - BCP 47 tag whose digits, decimal sign and grouping are used
 */
export function createFigures(locale: string, units: UnitSystem): Figures {
  const isUs = units === 'us';
  const formats = new Map<string, Intl.NumberFormat>();
  const format = (value: number, least: number, most: number) => {
    const key = `${least} ${most}`;
    let known = formats.get(key);
    if (known === undefined) {
      known = new Intl.NumberFormat(locale, {
        minimumFractionDigits: least,
        maximumFractionDigits: most,
      });
      formats.set(key, known);
    }
    // Minus zero is zero to a reader, and a hyphen is no minus.
    return known
      .format(value)
      .replace(/^-(?=[0.,]*$)/, '')
      .replace('-', '−');
  };
  const bare = (measure: Measure, value: number | null, decimals?: number) => {
    if (value === null) return MISSING;
    const places = decimals ?? unitOf(measure, units).decimals;
    return format(toReaders(measure, value, units), places, places);
  };
  const measure = (what: Measure, value: number | null, decimals?: number) =>
    value === null ? MISSING : `${bare(what, value, decimals)} ${unitOf(what, units).unit}`;
  const asSet = (what: Measure, value: number | null, most = 3) => {
    if (value === null) return MISSING;
    const { unit, decimals } = unitOf(what, units);
    return `${format(toReaders(what, value, units), 0, isUs ? decimals : most)} ${unit}`;
  };
  const joined = (...parts: readonly Part[]) =>
    parts.map(({ value, unit, decimals }) => `${format(value, 0, decimals)} ${unit}`).join(' ');
  const percent = (value: number | null, decimals = 0) =>
    value === null ? MISSING : `${format(value, 0, decimals)} %`;
  return {
    temperature: (tempC) => measure('tempC', tempC),
    temperatureDifference: (differenceK) => measure('differenceK', differenceK),
    humidity: (rhPercent) => percent(rhPercent),
    degreeHours: (sum) => measure('degreeHours', sum),
    hours(hours) {
      if (hours === null) return MISSING;
      const places = Math.abs(hours) < 9.95 ? 1 : 0;
      return `${format(hours, places, places)} h`;
    },
    measure,
    bare,
    asSet,
    volume(litres, litreDecimals) {
      if (litres === null) return MISSING;
      return isUs ? joined(usVolume(litres)) : measure('litres', litres, litreDecimals);
    },
    tin: (litres) => (isUs ? joined(usVolume(litres)) : asSet('litres', litres)),
    poured: (litres) => (isUs ? joined(...usPoured(litres)) : `${format(litres * 1_000, 0, 0)} mL`),
    weighed: (grams) => (isUs ? joined(...usWeighed(grams)) : measure('massG', grams)),
    roughly: (what, value) =>
      value === null
        ? MISSING
        : format(Number(toReaders(what, value, units).toPrecision(ROUGH_DIGITS)), 0, 3),
    sizes(what, ...values) {
      const most = isUs ? unitOf(what, units).decimals : 3;
      const all = values.map((value) => format(toReaders(what, value, units), 0, most));
      return `${all.join(' × ')} ${unitOf(what, units).unit}`;
    },
    mark: (lengthCm) => (isUs ? inchesAndFraction(lengthCm) : bare('lengthCm', lengthCm)),
    unit: (what) => unitOf(what, units).unit,
    share: (share) => percent(share === null ? null : share * 100),
    percent,
    number: (value, decimals = 3, atLeast = 0) => format(value, atLeast, decimals),
  };
}
