const LOCALE = 'en-GB';

/** What stands where a figure is missing. */
export const MISSING = '–';

const tenths = new Intl.NumberFormat(LOCALE, {
  minimumFractionDigits: 1,
  maximumFractionDigits: 1,
});
const whole = new Intl.NumberFormat(LOCALE, { maximumFractionDigits: 0 });
const upToThree = new Intl.NumberFormat(LOCALE, { maximumFractionDigits: 3 });

/** A temperature with its unit, for example “14.2 °C”; a dash when missing. */
export function temperature(tempC: number | null): string {
  return tempC === null ? MISSING : `${withMinus(tenths.format(tempC))} °C`;
}

/** A relative humidity, for example “71 %”; a dash when missing. */
export function humidity(rhPercent: number | null): string {
  return rhPercent === null ? MISSING : `${whole.format(rhPercent)} %`;
}

/** Degree-hours, for example “612 °C·h”; a dash when missing. */
export function degreeHoursFigure(sum: number | null): string {
  return sum === null ? MISSING : `${whole.format(sum)} °C·h`;
}

/** Hours, for example “41 h”; tenths below ten hours; a dash when missing. */
export function hoursFigure(hours: number | null): string {
  if (hours === null) return MISSING;
  return `${(Math.abs(hours) < 9.95 ? tenths : whole).format(hours)} h`;
}

/** A probability in words that do not pretend to be exact: “7 in 10”. */
export function oddsWords(probability: number): string {
  if (probability >= 0.985) return 'almost surely';
  if (probability < 0.015) return 'next to none';
  const inTen = Math.round(probability * 10);
  if (inTen === 0) return 'less than 1 in 10';
  if (inTen === 10) return 'more than 9 in 10';
  return `${inTen} in 10`;
}

/** Any figure with at most three decimals. */
export function figure(value: number): string {
  return withMinus(upToThree.format(value));
}

/**
 * What a person typed as a number; a comma is a decimal point, and inches may have a fraction: 5 9/16.
 *
 * @returns NaN when it is no number: sent as null, the daemon names the field
 */
export function typedNumber(text: string): number {
  const [, whole = 0, over, under] = /^(?:(\d+)[\s-]+)?(\d+)\/([1-9]\d*)$/.exec(text.trim()) ?? [];
  if (over !== undefined) return Number(whole) + Number(over) / Number(under);
  const plain = text.trim().replace(/\s/g, '').replace(',', '.').replace('−', '-');
  return plain === '' ? Number.NaN : Number(plain);
}

function withMinus(text: string): string {
  return text.replace('-', '−');
}

/**
 * A number as it stands in a field before anything is typed: with the reader’s decimal sign, without
 * grouping. What is no number stays as it is.
 *
 * @param locale - BCP 47 tag
 */
export function shownNumber(text: string, locale: string): string {
  if (!/^-?\d+\.\d+$/.test(text)) return text;
  const parts = new Intl.NumberFormat(locale).formatToParts(0.5);
  return text.replace('.', parts.find(({ type }) => type === 'decimal')?.value ?? '.');
}
