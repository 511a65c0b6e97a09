import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { ensureBuilt } from './build.mjs';
import { endWithFault } from './fault.mjs';
import { ensureInstalled } from './install.mjs';
import { PROJECT_ROOT } from './project-root.mjs';

/**
 * Makes the project ready to run, then runs the command in this very process, so that signals and
 * the exit code are its own.
 *
 * @param {string[]} args the command's arguments
 * @param {string[]} [program] the built file that runs them, below .build
 */
export async function start(args, program = ['bundle', 'cli.js']) {
  const file = join(PROJECT_ROOT, '.build', ...program);
  try {
    // A package from `npm pack` was built before, and whoever installed it brought its modules.
    const isPacked = !existsSync(join(PROJECT_ROOT, 'package-lock.json')) && existsSync(file);
    if (!isPacked) {
      await ensureInstalled(PROJECT_ROOT);
      await ensureBuilt(PROJECT_ROOT);
    }
  } catch (error) {
    endWithFault(error);
    return;
  }
  const { run } = await import(pathToFileURL(file).href);
  await run(args);
}
