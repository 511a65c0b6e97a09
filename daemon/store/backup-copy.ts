import {
  accessSync,
  closeSync,
  constants,
  existsSync,
  fsyncSync,
  openSync,
  renameSync,
  rmSync,
  statfsSync,
  statSync,
} from 'node:fs';
import { dirname } from 'node:path';
import BetterSqlite3 from 'better-sqlite3';
import { checkDatabase, type TableCounts, tableCounts } from './backup-check.ts';
import { isDiskFull } from './disk-full.ts';
import { openForReading } from './open.ts';

/** A copy that was looked through after it was written. */
export interface WholeCopy {
  file: string;
  bytes: number;
  version: number;
  counts: TableCounts;
}

/** A copy that was not made, and what to do; nothing was changed. */
export class BackupRefusal extends Error {
  override name = 'BackupRefusal';
}

/** Pages copied between two looks at what else is to be done. */
const pagesAStep = 500;
/**
 * Rows that hold only for the daemon that wrote them: when a copy is put in its place, senders have long
 * released those numbers and given them to other messages, which would be taken for the old ones come again.
 */
const notCopied = 'open_message';
/** What a copy must leave free, so that readings can still be taken in. Assumption. */
export const leftFreeBytes = 64 * 1024 * 1024;

/**
 * Copies a database while others write to it, and gives it its name only when it is on disk and was
 * found whole: a kill leaves a `.part` file at most.
 *
 * The copy is of one moment, but for messages that were under way. The connection holds its snapshot from the counts to the last page, so
 * the copy must have exactly the counted rows, and a writer cannot make SQLite begin anew.
 *
 * @throws BackupRefusal when there is too little room, or the copy was not found whole
 */
export async function copyDatabase(source: string, target: string): Promise<WholeCopy> {
  const part = `${target}.part`;
  const copy = await copyToPart(source, part);
  renameSynced(part, target);
  return { ...copy, file: target };
}

/**
 * The first half of copying: written, on disk and found whole, but not under its name yet.
 *
 * @throws BackupRefusal when there is too little room, or the copy was not found whole
 */
export async function copyToPart(source: string, part: string): Promise<WholeCopy> {
  requireRoom(source, dirname(part));
  accessSync(dirname(part), constants.W_OK | constants.X_OK);
  removeDatabase(part);
  try {
    const counts = withoutOpen(await copyPages(source, part));
    settleInOneFile(part, notCopied in counts);
    syncPath(part);
    const check = checkDatabase(part, counts);
    if (check.kind === 'faulty') {
      throw new BackupRefusal(
        `The copy of ${source} was not kept, because ${check.because}. ` +
          'Run boardcure doctor: either the database or the disk of the copy is damaged.',
      );
    }
    const { bytes, version } = check;
    return { file: part, bytes, version, counts };
  } catch (cause) {
    // To be found out before the half copy makes room again.
    const isFull = isDiskFull(cause, part);
    removeDatabase(part);
    if (!isFull) throw cause;
    throw new BackupRefusal(
      `No copy was made: the disk of ${dirname(part)} became full meanwhile. The half copy was removed again. ` +
        'Make room there, or name a folder on another disk.',
      { cause },
    );
  }
}

async function copyPages(source: string, part: string): Promise<TableCounts> {
  const db = openForReading(source);
  try {
    db.exec('begin');
    const counts = tableCounts(db);
    await db.backup(part, { progress: () => pagesAStep });
    return counts;
  } finally {
    db.close();
  }
}

/** Databases of before such rows were kept have no table of them. */
const withoutOpen = (counts: TableCounts): TableCounts =>
  notCopied in counts ? { ...counts, [notCopied]: 0 } : counts;

/** A copied database still expects a log beside it; this one is to be moved about alone. */
function settleInOneFile(part: string, hasOpen: boolean): void {
  const copy = new BetterSqlite3(part);
  try {
    copy.pragma('journal_mode = delete');
    if (hasOpen) copy.exec(`delete from ${notCopied}`);
  } finally {
    copy.close();
  }
}

function requireRoom(source: string, folder: string): void {
  const needed = ['', '-wal']
    .map((tail) => `${source}${tail}`)
    .filter(existsSync)
    .reduce((sum, file) => sum + statSync(file).size, leftFreeBytes);
  if (!existsSync(folder)) {
    throw new BackupRefusal(
      `There is no folder ${folder}. Make it, or see that its disk is plugged in and mounted.`,
    );
  }
  const { bavail, bsize } = statfsSync(folder);
  const free = bavail * bsize;
  if (free >= needed) return;
  const mb = (bytes: number) => Math.ceil(bytes / 1e6);
  throw new BackupRefusal(
    `There is too little room in ${folder} for a copy: ${mb(free)} MB are free, ${mb(needed)} MB are needed. ` +
      'Delete what is not needed there, or name a folder on another disk.',
  );
}

/** Gives a file its name for good: also the folder's entry is on disk afterwards. */
export function renameSynced(from: string, to: string): void {
  renameSync(from, to);
  syncPath(dirname(to));
}

/** Waits until a file, or a folder's list of names, is on disk. */
export function syncPath(path: string): void {
  const opened = openSync(path, 'r');
  try {
    fsyncSync(opened);
  } finally {
    closeSync(opened);
  }
}

/** Removes a database and what SQLite keeps beside it. */
export function removeDatabase(file: string): void {
  for (const tail of ['', '-journal', '-wal', '-shm']) rmSync(`${file}${tail}`, { force: true });
}
