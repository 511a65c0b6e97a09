import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseSync } from '@swc/core';
import { describe, expect, it } from 'vitest';

const PROJECT = join(import.meta.dirname, '../..');
const FOLDERS = ['daemon/rules', 'daemon/monitor', 'sensors/correct', 'sensors/payload'];
/**
 * Prose that no page shows. The target of a webhook is judged while the settings are read: it is
 * said at the terminal, with the line of the file.
 */
const AT_THE_TERMINAL = ['daemon/rules/webhook-target.ts'];
/** Lists of words that devices name their values by. */
const WORDS_OF_DEVICES = ['sensors/payload/guess-quantity.ts', 'sensors/payload/suggest-rule.ts'];
const NO_PROSE = [...AT_THE_TERMINAL, ...WORDS_OF_DEVICES];

interface Node {
  type?: string;
  value?: unknown;
  callee?: { value?: unknown };
  quasis?: { raw: string }[];
}

/** A text in the source that somebody is meant to read: words with a space, a capital or a stop. */
const isProse = (text: string): boolean =>
  /\p{L}{2,} \p{L}+ \p{L}/u.test(text) ||
  /^\p{Lu}\p{Ll}+ .*\p{L}/u.test(text) ||
  /^\p{Lu}.*\p{Ll}\.$/u.test(text);

/** Texts of a source file but for messages of errors: those are for the log. */
function proseIn(source: string): string[] {
  const found: string[] = [];
  function walk(node: unknown): void {
    if (node === null || typeof node !== 'object') return;
    if (Array.isArray(node)) {
      for (const one of node) walk(one);
      return;
    }
    const { type, value, callee, quasis } = node as Node;
    if (type === 'ImportDeclaration') return;
    if (type === 'NewExpression' && /^(Range)?Error$/.test(String(callee?.value))) return;
    if (type === 'StringLiteral' && isProse(String(value))) found.push(String(value));
    if (type === 'TemplateLiteral' && quasis) {
      const text = quasis.map(({ raw }) => raw).join('x');
      if (isProse(text)) found.push(text);
    }
    for (const child of Object.values(node)) walk(child);
  }
  walk(parseSync(source, { syntax: 'typescript' }).body);
  return found;
}

const sourcesOf = (folder: string): string[] =>
  readdirSync(join(PROJECT, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => join(folder, name));

describe('a rule holds no prose: its sentences are those of daemon/wording', () => {
  it.each(FOLDERS)('in %s', (folder) => {
    const files = sourcesOf(folder).filter((file) => !NO_PROSE.includes(file));
    expect(files.length).toBeGreaterThan(2);
    const found = files.flatMap((file) =>
      proseIn(readFileSync(join(PROJECT, file), 'utf8')).map((text) => `${file}: ${text}`),
    );
    expect(found).toEqual([]);
  });

  it('is seen where it is: in a string, in a template, in a list, in a nested call', () => {
    expect(proseIn("export const a = 'The air here is poor.';")).toHaveLength(1);
    const template = ['`Only ', '{n} measured here`'].join('$');
    expect(proseIn(`export const a = (n: number) => ${template};`)).toHaveLength(1);
    expect(proseIn("f(g(['raw linseed oil', 'Primer.']));")).toHaveLength(2);
    expect(proseIn("throw new BoardcureError('BC_X', 'There is none.');")).toHaveLength(1);
    expect(proseIn("throw new RangeError('it lies outside of what can be');")).toEqual([]);
    expect(
      proseIn("import a from 'b c d'; f('air-cold', 'Europe/Stockholm', 'UTC', 'GET');"),
    ).toEqual([]);
  });
});
