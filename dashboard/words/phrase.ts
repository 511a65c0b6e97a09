import type { Node } from './node.ts';

/**
 * A sentence with links, bold parts or moments in it, written as one line: phrase`Seen to, ${moment}`.
 *
 * @returns its parts in order; what is text stays text
 */
export function phrase(texts: TemplateStringsArray, ...nodes: readonly Node[]): Node[] {
  return texts.flatMap((text, i): Node[] => {
    const said = text === '' ? [] : [text];
    return i < nodes.length ? [...said, nodes[i]] : said;
  });
}

/** Parts of a sentence that stand one after the other: “turn, stack”. */
export function inARow(nodes: readonly Node[], between: string): Node[] {
  return nodes.flatMap((node, i): Node[] => (i === 0 ? [node] : [between, node]));
}
