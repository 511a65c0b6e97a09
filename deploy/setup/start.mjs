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
 */
export async function start(args) {
  try {
    await ensureInstalled(PROJECT_ROOT);
    await ensureBuilt(PROJECT_ROOT);
  } catch (error) {
    endWithFault(error);
    return;
  }
  const cli = join(PROJECT_ROOT, '.build', 'daemon', 'command', 'cli.js');
  const { run } = await import(pathToFileURL(cli).href);
  await run(args);
}
