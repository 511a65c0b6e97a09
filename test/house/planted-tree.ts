import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll } from 'vitest';

/** The project's folder. */
export const ROOT = fileURLToPath(new URL('../..', import.meta.url));

// The rules themselves, and none of the sources: what is planted is judged alone.
const RULES = [
  '.biome.json',
  '.dependency-cruiser.cjs',
  '.gitignore',
  'deploy/lint/contract-types-only.grit',
  'deploy/lint/no-clock-or-chance.grit',
  'package.json',
  'tsconfig.json',
  'daemon/tsconfig.json',
  'daemon/contract/tsconfig.json',
  'daemon/rules/tsconfig.json',
  'daemon/science/tsconfig.json',
  'daemon/wording/tsconfig.json',
  'dashboard/tsconfig.json',
  'sensors/attached/tsconfig.json',
  'sensors/correct/tsconfig.json',
  'sensors/payload/tsconfig.json',
  'sensors/publish/tsconfig.json',
  'sensors/shed/tsconfig.json',
];

const trees: string[] = [];
afterAll(() => {
  for (const tree of trees) rmSync(tree, { recursive: true, force: true });
});

/**
 * Makes a tree outside the project that has the project's rules and just the files given; it goes
 * when the test file ends.
 *
 * @param files texts by path
 * @returns the tree's folder
 */
export const plantTree = (files: Record<string, string>): string => {
  const tree = mkdtempSync(join(tmpdir(), 'boardcure-house-'));
  trees.push(tree);
  for (const rule of RULES) cpSync(join(ROOT, rule), join(tree, rule), { recursive: true });
  symlinkSync(join(ROOT, 'node_modules'), join(tree, 'node_modules'));
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(tree, path)), { recursive: true });
    writeFileSync(join(tree, path), text);
  }
  return tree;
};

/**
 * Runs one of the installed tools in a tree.
 *
 * @param tree the folder to run in
 * @param tool the tool's script, below node_modules
 * @param args its arguments
 * @returns its exit code and all that it printed
 */
export const runTool = (
  tree: string,
  tool: string,
  ...args: string[]
): { code: number | null; output: string } => {
  const script = join(ROOT, 'node_modules', tool);
  const { status, stdout, stderr } = spawnSync(process.execPath, [script, ...args], {
    cwd: tree,
    encoding: 'utf8',
  });
  return { code: status, output: `${stdout}${stderr}` };
};
