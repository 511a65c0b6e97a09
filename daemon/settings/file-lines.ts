import { type AST, parseTOML } from 'toml-eslint-parser';

/** The line of a setting by its path; where it does not stand, that of the part it is missing in. */
export type LineOf = (path: readonly PropertyKey[]) => number | null;

/**
 * Tells on which line of a settings file each setting stands.
 *
 * @param text - a file that is TOML
 */
export function linesOf(text: string): LineOf {
  const lines = new Map<string, number>();
  const note = (path: readonly PropertyKey[], node: AST.TOMLNode): void => {
    // The parts of a dotted key or header stand on its line too, unless they have one of their own.
    for (let length = 1; length <= path.length; length++) {
      const key = keyOf(path.slice(0, length));
      if (!lines.has(key)) lines.set(key, node.loc.start.line);
    }
  };
  function lookAtValue(path: readonly PropertyKey[], value: AST.TOMLContentNode): void {
    if (value.type === 'TOMLInlineTable') for (const pair of value.body) lookAtPair(path, pair);
    if (value.type !== 'TOMLArray') return;
    value.elements.forEach((element, index) => {
      note([...path, index], element);
      lookAtValue([...path, index], element);
    });
  }
  function lookAtPair(within: readonly PropertyKey[], { key, value }: AST.TOMLKeyValue): void {
    const names = key.keys.map((part) => (part.type === 'TOMLBare' ? part.name : part.value));
    const path = [...within, ...names];
    note(path, key);
    lookAtValue(path, value);
  }
  for (const node of parseTOML(text).body[0].body) {
    if (node.type === 'TOMLKeyValue') {
      lookAtPair([], node);
      continue;
    }
    note(node.resolvedKey, node);
    for (const pair of node.body) lookAtPair(node.resolvedKey, pair);
  }
  return (path) => {
    for (let length = path.length; length > 0; length--) {
      const line = lines.get(keyOf(path.slice(0, length)));
      if (line !== undefined) return line;
    }
    return null;
  };
}

const keyOf = (path: readonly PropertyKey[]): string => JSON.stringify(path.map(String));
