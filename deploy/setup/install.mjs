import { copyFileSync, existsSync } from 'node:fs';
import { join } from 'node:path';
import { SetupFault } from './fault.mjs';
import {
  carriesStamp,
  isJustWhatTheLockAsksFor,
  wantedStamp,
  writeStamp,
} from './modules-stamp.mjs';
import {
  mendSwap,
  modulesFolders,
  newStaging,
  removeStaging,
  swapIn,
  tidySwap,
} from './modules-swap.mjs';
import { whyNativeModuleFails } from './native-module.mjs';
import { npmCi } from './npm-ci.mjs';
import { say as sayOnStandardError } from './say.mjs';
import { syncDisk } from './sync-disk.mjs';
import { withWriterLock } from './writer-lock.mjs';

/**
 * @typedef {object} InstallPorts
 * @property {(folder: string) => Promise<string | null>} install fills the folder's node_modules;
 *   null, or what went wrong
 * @property {(folder: string) => string | null} whyUnusable null when what is in the folder's
 *   node_modules runs under this Node, or what went wrong
 * @property {(line: string) => void} say
 */

/** @type {InstallPorts} */
const REAL_PORTS = {
  install: npmCi,
  whyUnusable: whyNativeModuleFails,
  say: sayOnStandardError,
};

/**
 * Makes node_modules what the lock file asks for on this machine; does nothing when its stamp says
 * so already. What was there before stays whole until the new is.
 *
 * @param {string} root the project's folder
 * @param {Partial<InstallPorts>} [ports]
 * @returns {Promise<'already' | 'completed' | 'adopted' | 'installed'>} what was done
 * @throws {SetupFault} when the modules cannot be had; what was there before is untouched
 */
export async function ensureInstalled(root, ports = {}) {
  const { install, whyUnusable, say } = { ...REAL_PORTS, ...ports };
  const wanted = wantedStamp(root);
  const { inUse } = modulesFolders(root);
  if (carriesStamp(inUse, wanted)) {
    tidySwap(root);
    return 'already';
  }
  return withWriterLock(root, say, async () => {
    const mended = mendSwap(root, wanted);
    if (mended === 'completed') say('completed the installation that was cut short');
    if (mended === 'brought-back') say('brought back the npm modules of before');
    if (carriesStamp(inUse, wanted)) return mended === 'completed' ? 'completed' : 'already';

    if (isJustWhatTheLockAsksFor(root) && whyUnusable(root) === null) {
      say('npm modules are installed already and fit: stamped');
      writeStamp(inUse, wanted);
      return 'adopted';
    }

    say(`installing npm modules (Node ${process.version}, ${wanted.platform}); a few minutes`);
    const staging = newStaging(root);
    const staged = join(staging, 'node_modules');
    for (const name of ['package.json', 'package-lock.json', '.npmrc']) {
      if (existsSync(join(root, name))) copyFileSync(join(root, name), join(staging, name));
    }
    const failure = await install(staging);
    const unusable = failure === null ? whyUnusable(staging) : null;
    if (failure !== null || unusable !== null) removeStaging(staging);
    if (failure !== null) throw installFault(root, failure, whyUnusable);
    if (unusable !== null) throw nativeFault(root, unusable);

    syncDisk(staged);
    writeStamp(staged, wanted);
    syncDisk(staged);
    swapIn(root, staging);
    say('npm modules installed');
    return 'installed';
  });
}

/**
 * @param {string} root
 * @param {string} failure
 * @param {InstallPorts['whyUnusable']} whyUnusable
 */
function installFault(root, failure, whyUnusable) {
  return new SetupFault(
    `installing npm modules failed (${failure})${stateOfOldModules(root, whyUnusable)}`,
    {
      where: `${join(root, 'package-lock.json')}; npm's own words are above`,
      doThis:
        'see that this computer reaches the npm registry (or bring its npm cache along) and that the disk has about 1 GB free, then run the same command again',
    },
  );
}

/**
 * @param {string} root
 * @param {InstallPorts['whyUnusable']} whyUnusable
 */
function stateOfOldModules(root, whyUnusable) {
  const { inUse } = modulesFolders(root);
  if (!existsSync(inUse)) return '';
  return whyUnusable(root) === null
    ? `; those of before are untouched in ${inUse} and load under this Node, but belong to another package-lock.json: with the sources of before they start without a network`
    : `; those of before are untouched in ${inUse}, but do not load under Node ${process.version}`;
}

/**
 * @param {string} root
 * @param {string} unusable
 */
function nativeFault(root, unusable) {
  return new SetupFault(
    `npm modules were installed, but the database module does not load: ${unusable}`,
    {
      where: `better-sqlite3 in ${root}; npm's own words are above`,
      doThis:
        'where no ready-made binary can be had it is compiled: install python3, make and g++ (Debian: apt-get install python3 make g++), then run the same command again',
    },
  );
}
