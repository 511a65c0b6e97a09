import { basename, delimiter, dirname, join } from 'node:path';
import { fetchHeaders, ownHeadersAreUnsound } from './node-headers.mjs';
import { runProgram } from './run-program.mjs';

/**
 * Installs what the lock file in a folder asks for, with what the build needs.
 *
 * @param {string} folder holds package.json and package-lock.json
 * @returns {Promise<string | null>} null when all went well, otherwise how npm ended
 */
export async function npmCi(folder) {
  const args = ['ci', '--prefix', folder, '--include=dev', '--no-audit', '--no-fund'];
  // npm and the compilers it starts must run under this very Node, or native modules do not fit it.
  const path = `${dirname(process.execPath)}${delimiter}${process.env.PATH ?? ''}`;
  /** @type {NodeJS.ProcessEnv} */
  const env = { ...process.env, PATH: path };
  if (process.platform === 'linux' && ownHeadersAreUnsound()) {
    const headers = await fetchHeaders(join(folder, 'headers'), process.arch, '24');
    if (headers !== null) env.npm_config_nodedir = headers;
  }
  const options = { cwd: folder, env };
  // Under `npm start`, the npm that called is the one to use, wherever it is installed.
  const calledBy = process.env.npm_execpath;
  return calledBy !== undefined && basename(calledBy) === 'npm-cli.js'
    ? runProgram(process.execPath, [calledBy, ...args], options)
    : runProgram('npm', args, { ...options, shell: process.platform === 'win32' });
}
