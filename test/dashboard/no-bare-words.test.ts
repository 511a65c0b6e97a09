import { describe, expect, it } from 'vitest';
import { dashboardSources, type SyntaxNode, walkSource } from './source-words.ts';

/** Attributes that a person reads or hears. */
const spokenAttributes =
  /^(label|title|alt|placeholder|hint|legend|how|name|words|says|spoken|aria-label|aria-description|aria-roledescription|aria-valuetext|data-label)$/;
/** `name` is read only where it is ours and not that of a form's field. */
const isProse = (text: string) => /\p{L}{2,}/u.test(text);
const isSentence = (text: string) => /^\p{Lu}\p{L}+( |$)/u.test(text) && / /.test(text.trim());

/** Figures' units and names that are the same in every language. */
const sameEverywhere =
  /^(°C|K|%|mm|cm|m|m²|m³|L|kg|g|h|ppm|API|MQTT|HTTP|PIN|CSV|PNG|JSON|SenML|TLS|QoS|Boardcure)$/;

/** What a person would read that does not come from the catalogue. */
function bareWords(source: string): string[] {
  const found: string[] = [];
  walkSource(source, (node, around) => {
    // What stands in <code> is typed as it stands, in every language.
    if (node.type === 'JSXText' && !isCode(around)) note(String(node.value));
    if (node.type === 'JSXAttribute' && isSpoken(node) && isString(node.value)) {
      const text = String((node.value as SyntaxNode).value);
      if (attribute(node) !== 'name' || isSentence(text)) note(text);
    }
    if (
      node.type === 'StringLiteral' &&
      around?.type !== 'JSXAttribute' &&
      isSentence(String(node.value))
    ) {
      if (around?.type !== 'ImportDeclaration') note(String(node.value));
    }
    if (node.type === 'TemplateLiteral') {
      const quasis = (node.quasis as SyntaxNode[]).map((quasi) => String(quasi.raw)).join('…');
      if (isSentence(quasis)) note(quasis);
    }
  });
  return found;

  function note(text: string): void {
    const words = text.trim();
    if (isProse(words) && !sameEverywhere.test(words)) found.push(words);
  }
}

const attribute = (node: SyntaxNode) => String((node.name as SyntaxNode).value ?? '');
const isCode = (around: SyntaxNode | null) =>
  ((around?.opening as SyntaxNode | undefined)?.name as SyntaxNode | undefined)?.value === 'code';
const isSpoken = (node: SyntaxNode) => spokenAttributes.test(attribute(node));
const isString = (value: unknown) => (value as SyntaxNode | null)?.type === 'StringLiteral';

describe('the source of the pages', () => {
  it('has no words of its own: they stand in the catalogue', () => {
    const bare = dashboardSources()
      .filter((path) => !/^words\/(en|sv|de|nb|fi)\/|^words\/language\.ts$|vite\.config/.test(path))
      .flatMap((path) => bareWords(path).map((words) => `${path}: ${words}`));
    expect(bare).toEqual([]);
  });

  it('would be found out by these', () => {
    expect(bareWords('const a = <p>Not\n yet</p>;\n')).toEqual(['Not\n yet']);
    expect(bareWords('const a = <p><code>open</code> it</p>;\n')).toEqual(['it']);
    expect(bareWords('const a = <a aria-label="Close it">{x}</a>;\n')).toEqual(['Close it']);
    expect(bareWords("const a = 'The wall is bare';\n")).toEqual(['The wall is bare']);
    expect(bareWords(['const a = `The wall of $', '{name}`;\n'].join(''))).toEqual([
      'The wall of …',
    ]);
    expect(bareWords('const a = <p class="Two words">{b.c}</p>;\n')).toEqual([]);
  });
});
