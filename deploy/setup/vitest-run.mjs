import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readJson } from './read-json.mjs';
import { runProgram } from './run-program.mjs';

/**
 * @typedef {object} TestCount
 * @property {number} passed
 * @property {number} failed tests, and files that could not be loaded; at least 1 when the run failed
 * @property {number} skipped
 */

/**
 * Runs the tests and counts them.
 *
 * @param {string} root the project's folder
 * @param {string[]} args further arguments for vitest
 * @returns {Promise<TestCount>}
 */
export async function runVitest(root, args) {
  const folder = mkdtempSync(join(tmpdir(), 'boardcure-test-'));
  const report = join(folder, 'report.json');
  try {
    const vitest = join(root, 'node_modules', 'vitest', 'vitest.mjs');
    const failure = await runProgram(
      process.execPath,
      [
        vitest,
        'run',
        '--config',
        join(root, 'test', 'vitest.config.ts'),
        '--reporter=default',
        '--reporter=json',
        `--outputFile.json=${report}`,
        ...args,
      ],
      { cwd: root },
    );
    return countTests(readJson(report), failure !== null);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/**
 * @param {any} report what vitest's json reporter wrote, or null when it wrote nothing
 * @param {boolean} hasFailed whether vitest itself ended in failure
 * @returns {TestCount}
 */
export function countTests(report, hasFailed) {
  const unloaded = (report?.testResults ?? []).filter(
    (/** @type {any} */ file) => file.status === 'failed' && file.assertionResults.length === 0,
  ).length;
  const failed = (report?.numFailedTests ?? 0) + unloaded;
  return {
    passed: report?.numPassedTests ?? 0,
    failed: hasFailed ? Math.max(1, failed) : failed,
    skipped: (report?.numPendingTests ?? 0) + (report?.numTodoTests ?? 0),
  };
}
