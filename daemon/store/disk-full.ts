import { closeSync, fsyncSync, openSync, rmSync, writeSync } from 'node:fs';
import { SqliteError } from 'better-sqlite3';

/** A few pages more than a commit grows its log by. */
const probeBytes = 65_536;
const noSpace = ['ENOSPC', 'EDQUOT'];

/**
 * Whether SQLite failed because there is no space left.
 *
 * It says so itself where a write was refused for want of space; a log that cannot be extended, a
 * quota or a sync that finds no room it calls an input/output error like any other, so that a
 * little file beside the database has to tell.
 *
 * **Source:** SQLite, os_unix.c: `unixWrite` gives SQLITE_FULL for ENOSPC only. From memory.
 */
export function isDiskFull(cause: unknown, file: string): boolean {
  if (!(cause instanceof SqliteError)) return false;
  if (cause.code.startsWith('SQLITE_FULL')) return true;
  return cause.code.startsWith('SQLITE_IOERR') && !hasSpace(`${file}-space`);
}

function hasSpace(probe: string): boolean {
  let file: number | null = null;
  try {
    file = openSync(probe, 'w');
    writeSync(file, Buffer.alloc(probeBytes));
    fsyncSync(file);
    return true;
  } catch (cause) {
    return !noSpace.includes((cause as NodeJS.ErrnoException).code ?? '');
  } finally {
    if (file !== null) closeSync(file);
    rmSync(probe, { force: true });
  }
}
