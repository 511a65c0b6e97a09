import type { Said } from '../contract/sentence.ts';

/** How a whole sentence begins in a column that held English text alone before; no such text does. */
const whole = '{"code":"';

/** A sentence as it stands in such a column. */
export function writtenSaid(text: string, said: Said | undefined): string {
  if (said === undefined) return text;
  const { code, values } = said;
  return JSON.stringify({ code, values, text });
}

/** The text in such a column, and its sentence where it is known: of older rows it is not. */
export function readSaid(column: string): { text: string; said: Said | null } {
  if (!column.startsWith(whole)) return { text: column, said: null };
  const said = JSON.parse(column) as Said;
  return { text: said.text, said };
}
