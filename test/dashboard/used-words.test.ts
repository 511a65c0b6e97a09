import { describe, expect, it } from 'vitest';
import { first } from '../../dashboard/words/en/first.ts';
import { rest } from '../../dashboard/words/en/rest.ts';
import { dashboardSources, type SyntaxNode, walkSource } from './source-words.ts';

/** Names of members that any page reads, and objects of which one reads a member by a computed name. */
interface Reads {
  readonly members: Set<string>;
  readonly computed: Set<string>;
}

function readsOf(sources: readonly string[]): Reads {
  const reads: Reads = { members: new Set(), computed: new Set() };
  for (const source of sources) {
    walkSource(source, (node) => {
      if (node.type === 'MemberExpression' || node.type === 'OptionalChainingExpression') {
        const property = (node.property ??
          (node.base as SyntaxNode | undefined)?.property) as SyntaxNode;
        if (property?.type === 'Identifier') reads.members.add(String(property.value));
        if (property?.type === 'Computed') reads.computed.add(lastName(node.object as SyntaxNode));
      }
      // const { wall, times: { ago } } = words
      if (node.type === 'AssignmentPatternProperty' || node.type === 'KeyValuePatternProperty') {
        const key = node.key as SyntaxNode;
        reads.members.add(String(key.value));
      }
      // Passed on whole: for each of its members some other place answers.
      if (node.type === 'CallExpression') {
        for (const argument of node.arguments as { expression: SyntaxNode }[]) {
          const callee = node.callee as SyntaxNode;
          const isWhole = lastName(callee.object as SyntaxNode) === 'Object';
          if (isWhole || lastName(callee) === 'optionsOf') {
            reads.computed.add(lastName(argument.expression));
          }
        }
      }
    });
  }
  return reads;
}

function lastName(node: SyntaxNode | undefined): string {
  if (node === undefined) return '';
  if (node.type === 'Identifier') return String(node.value);
  const property = node.property as SyntaxNode | undefined;
  return property?.type === 'Identifier' ? String(property.value) : '';
}

/** Keys of a catalogue that no page reads. */
function unread(words: object, reads: Reads, path: string, isComputed = false): string[] {
  return Object.entries(words).flatMap(([key, value]) => {
    const here = `${path}.${key}`;
    const isRead = isComputed || reads.members.has(key);
    if (!isRead) return [here];
    return typeof value === 'object' && value !== null && !Array.isArray(value)
      ? unread(value, reads, here, reads.computed.has(key))
      : [];
  });
}

describe('the catalogue', () => {
  const pages = dashboardSources().filter((path) => !/^words\/(en|sv|de|nb|fi)\//.test(path));

  it('has no key that no page reads', () => {
    const reads = readsOf(pages);
    expect(unread({ ...first, ...rest }, reads, 'words')).toEqual([]);
  });

  it('would be found out by a key that is not read', () => {
    const reads = readsOf(['const { wall } = words;\nwall.bare(words.signs[sign]);\n']);
    const words = { wall: { bare: 'x', old: 'y' }, signs: { wait: 'z' }, gone: { a: 'b' } };
    expect(unread(words, reads, 'words')).toEqual(['words.wall.old', 'words.gone']);
  });
});
