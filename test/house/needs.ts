import { accessSync, constants, existsSync, readFileSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe } from 'vitest';

/** A part that not every machine has, and that a suite cannot do without. */
export type Part =
  | 'chromium'
  | 'mosquitto'
  | 'strace'
  | 'openmetrics'
  | 'shellcheck'
  | 'systemd'
  | 'openssl'
  | 'nginx'
  | 'recorded-air';

/** Recordings of real rooms; they may not be passed on, so they lie beside the project. */
export const RECORDED_AIR = fileURLToPath(new URL('../../../shared/data', import.meta.url));

const PROGRAMS = JSON.parse(
  readFileSync(new URL('./parts.json', import.meta.url), 'utf8'),
) as Record<
  Exclude<Part, 'recorded-air'>,
  { programs: string[]; files?: string[]; debian: string[] }
>;

// A person's PATH often lacks the folder that Debian puts its servers in.
const FOLDERS = [...(process.env.PATH ?? '').split(delimiter), '/usr/sbin', '/usr/local/sbin'];

/**
 * Where a program is.
 *
 * @param program its name
 * @returns its full path, or null when it is not on this machine
 */
export const programPath = (program: string): string | null => {
  const isProgram = (file: string): boolean => {
    try {
      accessSync(file, constants.X_OK);
      return true;
    } catch {
      return false;
    }
  };
  return FOLDERS.map((folder) => join(folder, program)).find(isProgram) ?? null;
};

const whyMissing = (part: Part): string | null => {
  if (part === 'recorded-air') {
    return existsSync(RECORDED_AIR) ? null : `no recordings in ${RECORDED_AIR}`;
  }
  const { programs, files = [], debian } = PROGRAMS[part];
  const missing = [
    ...programs.filter((program) => programPath(program) === null),
    ...files.filter((file) => !existsSync(file)),
  ];
  if (missing.length === 0) return null;
  return `${missing.join(', ')} not found (Debian: apt-get install ${debian.join(' ')})`;
};

/**
 * Whether a suite has to be skipped, said out loud when it has.
 *
 * @param part what the suite cannot do without
 * @param why what is missing, or null when nothing is
 * @param isCi whether a missing program is a fault: only recordings may be absent there
 * @returns true when the suite cannot run
 * @throws {Error} in CI, when a program is missing
 */
export const mustSkip = (part: Part, why: string | null, isCi: boolean): boolean => {
  if (why === null) return false;
  if (isCi && part !== 'recorded-air') throw new Error(`${part}: ${why}`);
  process.stderr.write(`\n*** SKIPPED, NOT TESTED (${part}): ${why}\n`);
  return true;
};

/**
 * `describe`, if the machine has all the parts; otherwise `describe.skip`, said out loud, or a
 * failure where CI is set.
 *
 * @param parts what the suite cannot do without
 * @returns what to call in place of `describe`
 * @throws {Error} where CI is set and a program is missing
 */
export const needs = (...parts: Part[]): typeof describe | typeof describe.skip => {
  const isCi = Boolean(process.env.CI);
  const skips = parts.map((part) => mustSkip(part, whyMissing(part), isCi));
  return skips.includes(true) ? describe.skip : describe;
};
