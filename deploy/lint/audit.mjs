import { execFile } from 'node:child_process';
import { say } from '../setup/say.mjs';

/**
 * @typedef {{ kind: 'asked', holes: string[] } | { kind: 'not-asked', because: string }} Audit
 */

/** Worse than this is a fault. */
const counted = ['high', 'critical'];
const patienceMs = 60_000;

/**
 * What `npm audit --json` said.
 *
 * @param {string} output its standard output
 * @returns {Audit}
 */
export function readAudit(output) {
  /** @type {{ vulnerabilities?: Record<string, { severity: string }>, metadata?: object, message?: string }} */
  let told;
  try {
    told = JSON.parse(output);
  } catch {
    return { kind: 'not-asked', because: 'npm answered nothing that could be read' };
  }
  if (told === null || typeof told !== 'object' || !told.vulnerabilities || !told.metadata) {
    // A whole address stands in some messages: what matters is that nobody answered.
    const because = String(told?.message ?? 'no answer came').replace(/https?:\/\/\S+/g, '…');
    return { kind: 'not-asked', because };
  }
  const holes = Object.entries(told.vulnerabilities)
    .filter(([, { severity }]) => counted.includes(severity))
    .map(([name, { severity }]) => `${name}: ${severity}`);
  return { kind: 'asked', holes };
}

/**
 * Asks for known holes in the packages that are shipped. Nobody to ask is said aloud and is no
 * fault: a test run must not hang on the network.
 *
 * @param {string} root
 * @returns {Promise<boolean>} false when there is a hole
 */
export async function hasNoHoles(root) {
  const args = ['audit', '--omit=dev', '--audit-level=high', '--json'];
  const output = await new Promise((resolve) => {
    execFile('npm', args, { cwd: root, timeout: patienceMs }, (_error, stdout) => resolve(stdout));
  });
  const audit = readAudit(String(output));
  if (audit.kind === 'not-asked') {
    say(`*** NOT CHECKED for known holes (npm audit): ${audit.because}`);
    return true;
  }
  for (const hole of audit.holes) process.stderr.write(`  ${hole}\n`);
  return audit.holes.length === 0;
}
