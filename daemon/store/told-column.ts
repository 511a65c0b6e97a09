import type { Said, Told } from '../contract/sentence.ts';

/** A sentence as it stands in a column: code and values as JSON; null where the text is all there is. */
export const writtenTold = (told: Told | null | undefined): string | null =>
  told ? JSON.stringify({ code: told.code, values: told.values }) : null;

/** A sentence with its text, which stands in a column of its own; null where that is all there is. */
export const readSaid = (text: string, told: string | null): Said | null =>
  told === null ? null : { ...JSON.parse(told), text };

/** A row with its sentence read; without one where the text is all there is. */
export function withTold<Row extends { told: string | null }>(
  row: Row,
): Omit<Row, 'told'> & { told?: Told } {
  const { told, ...rest } = row;
  return told === null ? rest : { ...rest, told: JSON.parse(told) };
}
