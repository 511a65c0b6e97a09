import { existsSync, rmSync, writeFileSync } from 'node:fs';
import { programPath } from './program-path.mjs';
import { runProgram } from './run-program.mjs';
import { say } from './say.mjs';

const POLICY = '/usr/sbin/policy-rc.d';
const NO_SERVICE_STARTS =
  '#!/bin/sh\n# boardcure: no service starts while its tests are prepared\nexit 101\n';

/**
 * A part of the machine that a suite of tests needs.
 *
 * @typedef {object} Part
 * @property {string[]} programs what must be on the machine
 * @property {string[]} [files] and files that must be there
 * @property {string[]} debian the Debian packages that bring it
 * @property {string} suites what is not tested without it
 */

/**
 * Installs the Debian packages of the parts that are missing, if this user may; otherwise says what
 * will be skipped and how to bring it. No service is started by that.
 *
 * @param {Record<string, Part>} parts
 */
export async function ensureParts(parts) {
  const missing = missingParts(parts);
  if (missing.length === 0) return;
  const packages = missing.flatMap(({ debian }) => debian);
  if (process.getuid?.() === 0 && programPath('apt-get') !== null) {
    say(`installing Debian packages: ${packages.join(' ')}`);
    await installQuietly(packages);
  }
  for (const part of missingParts(parts)) {
    say(
      `NOT TESTED: ${part.suites}; ${[...part.programs, ...(part.files ?? [])].join(', ')} is missing`,
    );
    say(`  what to do: sudo apt-get install ${part.debian.join(' ')}`);
  }
}

/** @param {Record<string, Part>} parts */
function missingParts(parts) {
  return Object.values(parts).filter(
    ({ programs, files = [] }) =>
      programs.some((program) => programPath(program) === null) ||
      files.some((file) => !existsSync(file)),
  );
}

/** @param {string[]} packages */
async function installQuietly(packages) {
  const ownsPolicy = !existsSync(POLICY);
  if (ownsPolicy) writeFileSync(POLICY, NO_SERVICE_STARTS, { mode: 0o755 });
  try {
    const updated = await aptGet(['update']);
    if (updated !== null) say(`apt-get update: ${updated}; going on with the lists there are`);
    const installed = await aptGet(['install', '-y', '--no-install-recommends', ...packages]);
    if (installed !== null) say(`apt-get install: ${installed}`);
  } finally {
    if (ownsPolicy) rmSync(POLICY, { force: true });
  }
  // Else it would hold port 1883 from the next boot on.
  if (packages.includes('mosquitto') && existsSync('/run/systemd/system')) {
    await runProgram('systemctl', ['disable', '--now', 'mosquitto'], { cwd: '/' });
  }
}

/** @param {string[]} args */
function aptGet(args) {
  return runProgram(
    'apt-get',
    ['-qq', '-o', 'Dpkg::Use-Pty=0', '-o', 'DPkg::Lock::Timeout=300', ...args],
    {
      cwd: '/',
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    },
  );
}
