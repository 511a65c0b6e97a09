import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { SetupFault } from './fault.mjs';
import { runProgram } from './run-program.mjs';

/**
 * Compiles the layers that run (not the tests) into .build.
 *
 * @param {string} root the project's folder
 * @throws {SetupFault} when the compiler finds an error
 */
export function compileLayers(root) {
  return compile(root, ['daemon']);
}

/**
 * Checks the types of everything there is: layers, dashboard, tests and scripts.
 *
 * @param {string} root the project's folder
 * @throws {SetupFault} when the compiler finds an error
 */
export function checkTypes(root) {
  return compile(root, ['.', 'deploy']);
}

/**
 * @param {string} root
 * @param {string[]} projects
 */
async function compile(root, projects) {
  const tsc = join(root, 'node_modules', 'typescript', 'bin', 'tsc');
  const failure = await runProgram(process.execPath, [tsc, '-b', ...projects], { cwd: root });
  if (failure === null) return;
  throw new SetupFault(`the compiler found errors (${failure})`, {
    where: 'the lines above, each with file and place',
    doThis: 'mend them; if you changed nothing, fetch the project again',
  });
}

/**
 * Bundles what was compiled, daemon and attached sensors, into .build/bundle.
 *
 * @param {string} root the project's folder
 * @throws {SetupFault} when the bundler fails
 */
export async function bundleDaemon(root) {
  const bundler = join(root, 'deploy', 'setup', 'daemon-bundle.mjs');
  const failure = await runProgram(process.execPath, [bundler], { cwd: root });
  if (failure !== null) throw notBundled('the daemon', failure, bundler);
}

/**
 * Bundles the dashboard into .build/dashboard, if there is one.
 *
 * @param {string} root the project's folder
 * @param {(line: string) => void} say
 * @throws {SetupFault} when the bundler fails or leaves no page
 */
export async function bundleDashboard(root, say) {
  const config = join(root, 'dashboard', 'vite.config.ts');
  if (!existsSync(config)) {
    say('the dashboard has no vite.config.ts: left out');
    return;
  }
  const vite = join(root, 'node_modules', 'vite', 'bin', 'vite.js');
  const failure = await runProgram(
    process.execPath,
    [vite, 'build', join(root, 'dashboard'), '--config', config, '--logLevel', 'warn'],
    { cwd: root },
  );
  const page = join(root, '.build', 'dashboard', 'index.html');
  if (failure === null && existsSync(page)) return;
  throw notBundled('the dashboard', failure ?? `no ${page}`, config);
}

/**
 * @param {string} what
 * @param {string} failure
 * @param {string} where
 */
function notBundled(what, failure, where) {
  return new SetupFault(`bundling ${what} failed (${failure})`, {
    where,
    doThis: 'mend what is named above; if you changed nothing, fetch the project again',
  });
}
