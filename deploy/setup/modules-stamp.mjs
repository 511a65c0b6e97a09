import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { SetupFault } from './fault.mjs';
import { readJson } from './read-json.mjs';

const STAMP = '.boardcure-stamp.json';

/**
 * @typedef {object} ModulesStamp
 * @property {string} lock SHA-256 of package-lock.json
 * @property {string} abi version of Node's interface for native modules
 * @property {string} platform operating system and processor
 */

/**
 * The stamp that installed modules must carry to fit this lock file, Node and machine.
 *
 * @param {string} root the project's folder
 * @returns {ModulesStamp}
 * @throws {SetupFault} when there is no lock file
 */
export function wantedStamp(root) {
  const lock = join(root, 'package-lock.json');
  if (!existsSync(lock)) {
    throw new SetupFault('package-lock.json is missing', {
      where: root,
      doThis: 'fetch the project again: that file says which npm modules it runs on',
    });
  }
  return {
    lock: createHash('sha256').update(readFileSync(lock)).digest('hex'),
    abi: process.versions.modules,
    platform: `${process.platform}-${process.arch}`,
  };
}

/**
 * @param {string} modules a node_modules folder
 * @returns {ModulesStamp | null} null when it has none that can be read
 */
export function readStamp(modules) {
  return readJson(join(modules, STAMP));
}

/**
 * @param {string} modules a node_modules folder
 * @param {ModulesStamp} stamp
 */
export function writeStamp(modules, stamp) {
  writeFileSync(join(modules, STAMP), `${JSON.stringify(stamp, null, 2)}\n`);
}

/**
 * @param {string} modules a node_modules folder
 * @param {ModulesStamp} wanted
 */
export function carriesStamp(modules, wanted) {
  const found = readStamp(modules);
  return (
    found !== null &&
    found.lock === wanted.lock &&
    found.abi === wanted.abi &&
    found.platform === wanted.platform
  );
}

/**
 * Whether modules that npm installed without us are just what the lock file asks for on this
 * machine: nothing missing, nothing left over, each of the right version.
 *
 * @param {string} root the project's folder
 */
export function isJustWhatTheLockAsksFor(root) {
  const wanted = readJson(join(root, 'package-lock.json'))?.packages;
  const found = readJson(join(root, 'node_modules', '.package-lock.json'))?.packages;
  if (wanted === undefined || found === undefined) return false;
  const noneLeftOver = Object.keys(found).every((path) => path in wanted);
  const noneMissing = Object.entries(wanted).every(([path, entry]) => {
    if (path === '') return true;
    if (!(path in found)) return mayBeAbsent(entry);
    return found[path].version === entry.version && existsSync(join(root, path, 'package.json'));
  });
  return noneLeftOver && noneMissing;
}

/**
 * @typedef {object} LockEntry
 * @property {string} version
 * @property {boolean} [optional]
 * @property {boolean} [devOptional]
 * @property {string[]} [os]
 * @property {string[]} [cpu]
 * @property {string[]} [libc]
 */

/**
 * Optional packages are one binary for each kind of machine and what those need; only the one for
 * this machine must be there.
 *
 * @param {LockEntry} entry
 */
function mayBeAbsent({ optional, devOptional, os, cpu, libc }) {
  if (!optional && !devOptional) return false;
  if (os === undefined && cpu === undefined) return true;
  return !(
    fits(os, process.platform) &&
    fits(cpu, process.arch) &&
    (libc === undefined || fits(libc, libcOfThisMachine()))
  );
}

/**
 * @param {string[] | undefined} list names, or names to keep away from as `!name`
 * @param {string} name
 */
function fits(list, name) {
  if (list === undefined || list.includes(name)) return true;
  return list.every((entry) => entry.startsWith('!')) && !list.includes(`!${name}`);
}

function libcOfThisMachine() {
  const report = /** @type {{ header: { glibcVersionRuntime?: string } }} */ (
    process.report.getReport()
  );
  return report.header.glibcVersionRuntime === undefined ? 'musl' : 'glibc';
}
