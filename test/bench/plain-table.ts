/** Rows of cells under a head, the first column to the left, all others to the right. */
export function plainTable(head: readonly string[], lines: readonly (readonly string[])[]): string {
  const all = [head, ...lines];
  const widths = head.map((_, column) =>
    all.reduce((widest, line) => Math.max(widest, line[column]?.length ?? 0), 0),
  );
  const padded = (cell: string, column: number) =>
    column === 0 ? cell.padEnd(widths[0] ?? 0) : cell.padStart(widths[column] ?? 0);
  return all.map((line) => line.map(padded).join('  ').trimEnd()).join('\n');
}
