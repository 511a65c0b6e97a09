import type { Entry, Recordable } from './entry.ts';

interface Line {
  readonly at: string | null;
}

/**
 * Ticks as they are with what was ticked here and is not sent yet.
 *
 * @param key - the member of an entry’s body that names the line, as `step`
 * @param part - what the lines belong to, as the route’s `part`
 */
export function withPendingTicks<L extends Line>(
  lines: readonly (L & Readonly<Record<string, unknown>>)[],
  entries: readonly Entry[],
  name: Recordable,
  part: string,
  key: keyof L & string,
): L[] {
  return lines.map((line) => {
    const last = entries
      .filter((entry) => entry.name === name && entry.given.params?.part === part)
      .filter(({ given }) => given.body[key] === line[key])
      .at(-1);
    if (last === undefined) return line;
    const { done, at } = last.given.body;
    return { ...line, at: done === false ? null : String(at) };
  });
}
