import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseSync } from '@swc/core';

const dashboard = fileURLToPath(new URL('../../dashboard/', import.meta.url));

/** Every source of the pages, by its path below `dashboard/`. */
export function dashboardSources(): string[] {
  return readdirSync(dashboard, { recursive: true, encoding: 'utf8' })
    .filter((path) => /\.tsx?$/.test(path))
    .sort();
}

/** A node of the syntax tree, as plain data. */
export type SyntaxNode = { readonly type?: string } & Readonly<Record<string, unknown>>;

/** Calls back with every node of a source of the pages, and the node around it. */
export function walkSource(
  source: string,
  visit: (node: SyntaxNode, around: SyntaxNode | null) => void,
): void {
  const text = source.includes('\n') ? source : readFileSync(`${dashboard}${source}`, 'utf8');
  const walk = (value: unknown, around: SyntaxNode | null): void => {
    if (Array.isArray(value)) for (const item of value) walk(item, around);
    else if (typeof value === 'object' && value !== null) {
      const node = value as SyntaxNode;
      const isNode = typeof node.type === 'string';
      if (isNode) visit(node, around);
      for (const inner of Object.values(node)) walk(inner, isNode ? node : around);
    }
  };
  walk(parseSync(text, { syntax: 'typescript', tsx: true, target: 'es2022' }), null);
}
