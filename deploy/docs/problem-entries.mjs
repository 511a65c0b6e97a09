/**
 * The table of errors with the words of each.
 *
 * @param {Record<string, { status: number }>} problems
 * @param {Record<string, () => string>} sentences the English ones
 * @returns {Record<string, { status: number, title: string, doThis: string }>}
 */
export function problemEntries(problems, sentences) {
  const entries = Object.entries(problems).map(([code, { status }]) => [
    code,
    {
      status,
      title: sentences[`problem-title/${code}`]?.() ?? '',
      doThis: sentences[`problem-to-do/${code}`]?.() ?? '',
    },
  ]);
  return Object.fromEntries(entries);
}
