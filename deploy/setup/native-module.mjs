import { spawnSync } from 'node:child_process';

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
  if (trial.status === 0) return null;
  const words = /Error: (.*?)\n\s+at /s.exec(trial.stderr)?.[1];
  return (words ?? trial.error?.message ?? 'better-sqlite3 does not load').replaceAll('\n', ' ');
}
