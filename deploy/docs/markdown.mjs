/**
 * A table, padded so that it reads in a plain editor too.
 *
 * @param {readonly string[]} head
 * @param {readonly (readonly string[])[]} rows
 */
export function table(head, rows) {
  const cells = [head, ...rows].map((row) => row.map((cell) => cell.replaceAll('|', '\\|')));
  const line = (/** @type {readonly string[]} */ row) => `| ${row.join(' | ')} |`;
  const [first = [], ...rest] = cells;
  return [line(first), line(head.map(() => '---')), ...rest.map(line)].join('\n');
}

/** @param {string} text */
export const code = (text) => `\`${text}\``;

/** The first line of every generated page: what to do instead of editing it. */
export const generated =
  '<!-- Made by `npm run docs` from the sources. What is changed here is lost. -->';
