import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const READ_TSX = fileURLToPath(new URL('./read-tsx.cjs', import.meta.url));
const CRUISER = fileURLToPath(
  new URL('../../node_modules/dependency-cruiser/bin/dependency-cruise.mjs', import.meta.url),
);

/** The folders whose imports are held to the table. */
export const CRUISED_FOLDERS = ['daemon', 'sensors', 'dashboard', 'deploy', 'test'];

/**
 * Follows every import in a tree and holds it to the tree's own `.dependency-cruiser.cjs`.
 *
 * @param {string} root the tree's top folder
 * @returns {{ files: string[], violations: { rule: string, from: string, to: string }[] }}
 *   the files that were read, and the imports that are refused
 * @throws {Error} when the tree cannot be followed at all
 */
export function cruise(root) {
  const folders = CRUISED_FOLDERS.filter((folder) => existsSync(join(root, folder)));
  const { stdout, stderr } = spawnSync(
    process.execPath,
    [
      '--require',
      READ_TSX,
      CRUISER,
      '--config',
      '.dependency-cruiser.cjs',
      '--output-type',
      'json',
      ...folders,
    ],
    { cwd: root, encoding: 'utf8', maxBuffer: 1 << 30 },
  );
  if (!stdout.startsWith('{')) throw new Error(`dependency-cruiser: ${stderr}${stdout}`);
  /** @type {{ modules: { source: string }[], summary: { violations: { rule: { name: string }, from: string, to: string }[] } }} */
  const { modules, summary } = JSON.parse(stdout);
  return {
    files: modules.map(({ source }) => source),
    violations: summary.violations.map(({ rule, from, to }) => ({ rule: rule.name, from, to })),
  };
}
