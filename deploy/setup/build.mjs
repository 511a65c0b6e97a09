import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { bundleDaemon, bundleDashboard, compileLayers } from './compile.mjs';
import { readJson } from './read-json.mjs';
import { say as sayOnStandardError } from './say.mjs';
import { sourceHash } from './source-hash.mjs';
import { syncDisk } from './sync-disk.mjs';
import { withWriterLock } from './writer-lock.mjs';

/**
 * @typedef {object} BuildPorts
 * @property {(root: string) => Promise<void>} compile
 * @property {(root: string, say: (line: string) => void) => Promise<void>} bundle
 * @property {(line: string) => void} say
 */

/** @type {BuildPorts} */
const REAL_PORTS = {
  compile: compileLayers,
  async bundle(root, say) {
    await bundleDaemon(root);
    await bundleDashboard(root, say);
  },
  say: sayOnStandardError,
};

/**
 * Makes .build fit the sources; does nothing when its stamp says so already. The stamp goes first
 * and comes last, so that a build cut short is never taken for whole.
 *
 * @param {string} root the project's folder, with its npm modules installed
 * @param {Partial<BuildPorts>} [ports]
 * @returns {Promise<'already' | 'built'>} what was done
 * @throws {import('./fault.mjs').SetupFault} when compiler or bundler fail
 */
export async function ensureBuilt(root, ports = {}) {
  const { compile, bundle, say } = { ...REAL_PORTS, ...ports };
  const build = join(root, '.build');
  const stamp = join(build, 'stamp.json');
  const isBuilt = () => readJson(stamp)?.sources === sourceHash(root);
  if (isBuilt()) return 'already';
  return withWriterLock(root, say, async () => {
    if (isBuilt()) return 'already';
    say('building');
    // Of the sources as they are before: an edit during the build shows at the next start.
    const sources = sourceHash(root);
    rmSync(stamp, { force: true });
    rmSync(build, { recursive: true, force: true, maxRetries: 3 });
    mkdirSync(build, { recursive: true });
    await compile(root);
    await bundle(root, say);
    syncDisk(build);
    writeFileSync(stamp, `${JSON.stringify({ sources }, null, 2)}\n`);
    say('built');
    return 'built';
  });
}
