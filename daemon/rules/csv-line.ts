/** What a cell can hold; null is an empty one. */
export type CsvValue = string | number | boolean | null | object;

/**
 * How a text begins that spreadsheets take for a formula.
 *
 * **Source:** OWASP, "CSV Injection" (community page, from memory).
 */
const startsFormula = /^[=+\-@\t\r\n＝＋－＠]/;
/** **Source:** RFC 4180 (2005), section 2, points 5 to 7. */
const wantsQuotes = /[",\r\n]|^\s|\s$/;

/**
 * One line of a CSV file with its line end, as RFC 4180 has it. A text that a spreadsheet would take
 * for a formula gets an apostrophe before it; numbers stay as they are.
 *
 * @param values - texts, numbers, yes or no, null for an empty cell; anything else becomes JSON
 */
export function csvLine(values: readonly CsvValue[]): string {
  return `${values.map(csvCell).join(',')}\r\n`;
}

function csvCell(value: CsvValue): string {
  if (value === null) return '';
  if (typeof value === 'number' || typeof value === 'boolean') return String(value);
  const text = typeof value === 'string' ? value : JSON.stringify(value);
  const tame = startsFormula.test(text) ? `'${text}` : text;
  return wantsQuotes.test(tame) ? `"${tame.replaceAll('"', '""')}"` : tame;
}
