import { type Measure, toReaders, type UnitSystem, unitOf } from './units.ts';

/** What stands where a figure is missing. */
export const MISSING = '–';

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
    unit: (what) => unitOf(what, units).unit,
    share: (share) => percent(share === null ? null : share * 100),
    percent,
    number: (value, decimals = 3, atLeast = 0) => format(value, atLeast, decimals),
  };
}
