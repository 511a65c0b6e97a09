import { join } from 'node:path';
import { checkTypes } from '../setup/compile.mjs';
import { SetupFault } from '../setup/fault.mjs';
import { runProgram } from '../setup/run-program.mjs';
import { say } from '../setup/say.mjs';
import { hasNoHoles } from './audit.mjs';
import { directionFaults } from './directions.mjs';
import { licenceFaultsIn } from './licences.mjs';

/**
 * Runs the nets one after the other, all of them also when one finds something.
 *
 * @param {string} root the project's folder, with its npm modules installed
 * @returns {Promise<string[]>} the nets that found something, by name; what they found is printed
 */
export async function runChecks(root) {
  /** @type {[string, () => Promise<boolean>][]} */
  const nets = [
    ['form and lint (Biome)', () => isFormed(root)],
    ['types (tsc)', () => isTyped(root)],
    ['directions of imports (dependency-cruiser)', async () => isDirected(root)],
    ['licences of packages', async () => isLicensed(root)],
    // Asked where it counts, and not at every turn of a day’s work.
    ...(process.env.CI ? [auditNet(root)] : []),
  ];
  const failed = [];
  for (const [name, passes] of nets) {
    say(`checking ${name}`);
    if (!(await passes())) failed.push(name);
  }
  say(failed.length === 0 ? 'all checks passed' : `failed: ${failed.join(', ')}`);
  return failed;
}

/** @param {string} root */
async function isFormed(root) {
  const biome = join(root, 'node_modules', '@biomejs', 'biome', 'bin', 'biome');
  const args = [biome, 'check', '--error-on-warnings', '.'];
  return (await runProgram(process.execPath, args, { cwd: root })) === null;
}

/** @param {string} root */
async function isTyped(root) {
  try {
    await checkTypes(root);
    return true;
  } catch (error) {
    if (error instanceof SetupFault) return false;
    throw error;
  }
}

/** @param {string} root */
function isDirected(root) {
  const faults = directionFaults(root);
  for (const fault of faults) process.stderr.write(`  ${fault}\n`);
  return faults.length === 0;
}

/** @param {string} root */
function isLicensed(root) {
  const faults = licenceFaultsIn(root);
  for (const fault of faults) process.stderr.write(`  ${fault}\n`);
  return faults.length === 0;
}

/**
 * @param {string} root
 * @returns {[string, () => Promise<boolean>]}
 */
const auditNet = (root) => ['known holes in packages (npm audit)', () => hasNoHoles(root)];
