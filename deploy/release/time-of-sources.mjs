import { execFileSync } from 'node:child_process';

/**
 * When the sources were last committed; a fixed moment where that is not known.
 *
 * @param {string} root the project’s folder
 * @returns {number} epoch seconds
 */
export function timeOfSources(root) {
  const given = process.env.SOURCE_DATE_EPOCH;
  if (given && /^\d+$/.test(given)) return Number(given);
  try {
    const said = execFileSync('git', ['log', '-1', '--format=%ct'], {
      cwd: root,
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
    });
    return Number(said);
  } catch {
    return 0;
  }
}
