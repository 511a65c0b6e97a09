import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const TRIAL = "new (require('better-sqlite3'))(':memory:').close()";

/**
 * Whether the one native module loads under this Node; in a process of its own, so that this one
 * does not hold on to a copy that is about to be replaced.
 *
 * @param {string} folder the folder that holds node_modules
 * @returns {string | null} null when it does, otherwise what it said
 */
export function whyNativeModuleFails(folder) {
  const trial = spawnSync(process.execPath, ['-e', TRIAL], { cwd: folder, encoding: 'utf8' });
  if (trial.status === 0) return isUnsound(folder) ? UNSOUND : null;
  const words = /Error: (.*?)\n\s+at /s.exec(trial.stderr)?.[1];
  return (words ?? trial.error?.message ?? 'better-sqlite3 does not load').replaceAll('\n', ' ');
}

const UNSOUND =
  'it was compiled with headers of Node 24.19 or later, which make it end the process now and then (nodejs/node, issue 65446)';

/**
 * Whether the module asks for what only those headers bring in.
 *
 * @param {string} folder
 */
function isUnsound(folder) {
  const file = join(folder, 'node_modules/better-sqlite3/build/Release/better_sqlite3.node');
  return existsSync(file) && readFileSync(file).includes('RemoveEnvironmentCleanupHook');
}
