import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * Licences that packages may have: they ask for a notice, or for changes to their own files (MPL)
 * to be shown, and for nothing of ours. By their SPDX names.
 */
export const allowedLicences = new Set([
  '0BSD',
  'Apache-2.0',
  'BlueOak-1.0.0',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'CC0-1.0',
  'ISC',
  'MIT',
  'MIT-0',
  'MPL-2.0',
  'Unlicense',
]);

/**
 * Whether an SPDX licence expression can be met with allowed licences alone: one side of an OR is
 * enough, of an AND it takes both. **Source:** SPDX 2.3, annex D; AND binds more closely than OR.
 *
 * @param {string} expression
 */
export function isAllowed(expression) {
  const words = expression.match(/[()]|[^\s()]+/g) ?? [];
  let at = 0;
  /** @returns {boolean} */
  const either = () => {
    let met = both();
    while (words[at] === 'OR') {
      at++;
      met = both() || met;
    }
    return met;
  };
  /** @returns {boolean} */
  const both = () => {
    let met = one();
    while (words[at] === 'AND') {
      at++;
      met = one() && met;
    }
    return met;
  };
  /** @returns {boolean} */
  const one = () => {
    const word = words[at++];
    if (word !== '(') return word !== undefined && allowedLicences.has(word);
    const met = either();
    return words[at++] === ')' && met;
  };
  const met = either();
  return met && at === words.length;
}

/**
 * Packages whose licence does not fit or is not told.
 *
 * @param {Record<string, { license?: unknown, link?: boolean }>} packages of a lock file, by path
 * @param {(path: string) => unknown} ownLicence what a package itself says where the lock file does not
 * @returns {string[]} one sentence a package
 */
export function licenceFaults(packages, ownLicence) {
  return Object.entries(packages).flatMap(([path, { license, link }]) => {
    if (path === '' || link) return [];
    const name = path.replace(/^.*node_modules\//, '');
    const told = license ?? ownLicence(path);
    if (typeof told !== 'string') return [`${name} tells no licence.`];
    return isAllowed(told) ? [] : [`${name} has the licence ${told}, which is not on our list.`];
  });
}

/**
 * The same for a project on disk.
 *
 * @param {string} root
 */
export function licenceFaultsIn(root) {
  const { packages } = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8'));
  if (Object.keys(packages).length < 2) return ['The lock file lists no packages.'];
  return licenceFaults(packages, (path) => {
    const file = join(root, path, 'package.json');
    return existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')).license : undefined;
  });
}
