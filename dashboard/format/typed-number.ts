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
