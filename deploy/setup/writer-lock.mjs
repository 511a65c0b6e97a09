import { mkdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { SetupFault } from './fault.mjs';

const POLL_MS = 500;
const WAIT_LIMIT_MS = 20 * 60_000;
const HALF_WRITTEN_MS = 10_000;

/**
 * Does the work while no other process installs or builds in the same project.
 *
 * @template T
 * @param {string} root the project's folder
 * @param {(line: string) => void} say
 * @param {() => Promise<T>} work
 * @returns {Promise<T>}
 * @throws {SetupFault} when the lock cannot be written, or another process keeps it for too long
 */
export async function withWriterLock(root, say, work) {
  const lock = join(root, '.install', 'lock');
  const mine = JSON.stringify({ pid: process.pid, born: bornAt(process.pid) });
  await take(lock, mine, say);
  try {
    return await work();
  } finally {
    if (readLock(lock) === mine) rmSync(lock, { force: true });
  }
}

/**
 * @param {string} lock
 * @param {string} mine
 * @param {(line: string) => void} say
 */
async function take(lock, mine, say) {
  for (let waitedMs = 0; ; waitedMs += POLL_MS) {
    if (tryToTake(lock, mine)) return;
    const held = readLock(lock);
    if (held === null) continue;
    if (!isAlive(lock, held)) {
      say(`breaking the lock that a dead process left (${held})`);
      breakLock(lock, held);
      continue;
    }
    if (waitedMs === 0) say(`another process is installing or building (${held}): waiting for it`);
    if (waitedMs >= WAIT_LIMIT_MS) {
      throw new SetupFault('another process has been installing or building for 20 minutes', {
        where: `${lock}: ${held}`,
        doThis: `look at that process; if it is not ours, delete ${lock} and start again`,
      });
    }
    await sleep(POLL_MS);
  }
}

/**
 * @param {string} lock
 * @param {string} mine
 */
function tryToTake(lock, mine) {
  try {
    mkdirSync(join(lock, '..'), { recursive: true });
    writeFileSync(lock, mine, { flag: 'wx' });
    return true;
  } catch (error) {
    if (codeOf(error) === 'EEXIST') return false;
    throw new SetupFault(`cannot write to the project's folder (${codeOf(error)})`, {
      where: lock,
      doThis: 'start it once as the user who owns this folder, or make room on the disk',
      cause: error,
    });
  }
}

/** @param {string} lock */
function readLock(lock) {
  try {
    return readFileSync(lock, 'utf8');
  } catch (error) {
    if (codeOf(error) === 'ENOENT') return null;
    throw error;
  }
}

/**
 * Renames before it deletes: of two that break the same lock, only one moves it, and a fresh lock
 * taken in between is put back.
 *
 * @param {string} lock
 * @param {string} stale
 */
function breakLock(lock, stale) {
  const aside = `${lock}.${process.pid}`;
  try {
    renameSync(lock, aside);
  } catch (error) {
    if (codeOf(error) === 'ENOENT') return;
    throw error;
  }
  if (readLock(aside) === stale) rmSync(aside, { force: true });
  else renameSync(aside, lock);
}

/**
 * @param {string} lock
 * @param {string} held
 */
function isAlive(lock, held) {
  let holder;
  try {
    holder = JSON.parse(held);
  } catch {
    // Created but not written yet, unless it has stayed that way.
    const written = statSync(lock, { throwIfNoEntry: false });
    return written !== undefined && Date.now() - written.mtimeMs < HALF_WRITTEN_MS;
  }
  try {
    process.kill(holder.pid, 0);
  } catch (error) {
    // EPERM: it lives, and belongs to another user.
    if (codeOf(error) !== 'EPERM') return false;
  }
  return bornAt(holder.pid) === holder.born;
}

/**
 * When a process was born, where the system tells: a process id comes back after a restart (in a
 * container it is even the same one each time), a birth does not.
 *
 * @param {number} pid
 * @returns {string | null}
 */
function bornAt(pid) {
  try {
    const boot = readFileSync('/proc/sys/kernel/random/boot_id', 'utf8').trim();
    const stat = readFileSync(`/proc/${pid}/stat`, 'utf8');
    // Field 22, start time in clock ticks since boot; the name in field 2 may hold spaces.
    const ticks = stat.slice(stat.lastIndexOf(')') + 2).split(' ')[19];
    return `${boot} ${ticks}`;
  } catch {
    return null;
  }
}

/** @param {unknown} error */
function codeOf(error) {
  return error instanceof Error && 'code' in error ? String(error.code) : String(error);
}
