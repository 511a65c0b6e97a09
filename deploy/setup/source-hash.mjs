import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const SOURCES = [
  'daemon',
  'sensors',
  'dashboard',
  'tsconfig.json',
  'package-lock.json',
  'deploy/setup/build.mjs',
  'deploy/setup/compile.mjs',
  'deploy/setup/daemon-bundle.mjs',
];

/**
 * A hash of all that the build is made from: names and contents, in a fixed order.
 *
 * @param {string} root the project's folder
 */
export function sourceHash(root) {
  const hash = createHash('sha256');
  for (const source of SOURCES) addTo(hash, root, source);
  return hash.digest('hex');
}

/**
 * @param {import('node:crypto').Hash} hash
 * @param {string} root
 * @param {string} path relative to root, with forward slashes
 */
function addTo(hash, root, path) {
  const full = join(root, path);
  if (!existsSync(full)) return;
  let entries;
  try {
    entries = readdirSync(full);
  } catch {
    const content = readFileSync(full);
    hash.update(`${path}\0${content.length}\0`).update(content);
    return;
  }
  for (const name of entries.sort()) addTo(hash, root, `${path}/${name}`);
}
