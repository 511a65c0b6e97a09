import {
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { CRUISED_FOLDERS, cruise } from './cruise.mjs';

const SOURCE = /(?<!\.d)\.(ts|tsx|mjs)$/;

/**
 * Checks the directions of all imports, and that the check itself sees: that it read every source
 * file, and that it refuses a bad import planted in a small tree of its own.
 *
 * @param {string} root the project's folder
 * @returns {string[]} what is wrong, one line each
 */
export function directionFaults(root) {
  const { files, violations } = cruise(root);
  const read = new Set(files);
  const unread = CRUISED_FOLDERS.flatMap((folder) => sourcesIn(root, folder)).filter(
    (file) => !read.has(file),
  );
  return [
    ...(read.size === 0 ? ['no file was read: the check is blind'] : []),
    ...unread.map((file) => `${file} was not read: the check is blind there`),
    ...violations.map(({ rule, from, to }) => `${rule}: ${from}${from === to ? '' : ` → ${to}`}`),
    ...(seesPlantedImport(root)
      ? []
      : ['a bad import was planted and not seen: the check is blind']),
  ];
}

/** @param {string} root */
function seesPlantedImport(root) {
  const tree = mkdtempSync(join(tmpdir(), 'boardcure-planted-'));
  try {
    copyFileSync(join(root, '.dependency-cruiser.cjs'), join(tree, '.dependency-cruiser.cjs'));
    plant(tree, 'daemon/store/planted.ts', 'export const planted = 1;\n');
    plant(tree, 'daemon/science/planted.ts', "export { planted } from '../store/planted.ts';\n");
    return cruise(tree).violations.some(
      ({ rule, from }) =>
        rule === 'only-what-science-may-import' && from === 'daemon/science/planted.ts',
    );
  } finally {
    rmSync(tree, { recursive: true, force: true });
  }
}

/**
 * @param {string} tree
 * @param {string} path
 * @param {string} text
 */
function plant(tree, path, text) {
  mkdirSync(dirname(join(tree, path)), { recursive: true });
  writeFileSync(join(tree, path), text);
}

/**
 * @param {string} root
 * @param {string} folder
 * @returns {string[]} source files below a folder, relative to root
 */
function sourcesIn(root, folder) {
  if (!existsSync(join(root, folder))) return [];
  return readdirSync(join(root, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = `${folder}/${entry.name}`;
    if (entry.isDirectory()) return sourcesIn(root, path);
    return SOURCE.test(entry.name) ? [path] : [];
  });
}
