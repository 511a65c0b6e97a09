import { existsSync, linkSync, mkdirSync, renameSync, rmSync } from 'node:fs';
import { dirname } from 'node:path';
import BetterSqlite3, { type Database } from 'better-sqlite3';
import { checkDatabase } from './backup-check.ts';
import {
  BackupRefusal,
  copyToPart,
  renameSynced,
  syncPath,
  type WholeCopy,
} from './backup-copy.ts';
import { claimFile } from './file-claim.ts';
import { accessFault } from './file-fault.ts';
import { databaseFile } from './open.ts';

export interface RestoreParts {
  /** The backup. */
  from: string;
  dataFolder: string;
  /** Whether data that is there already may be put aside. */
  replace: boolean;
  /** UTC epoch ms, for the name of what is put aside. */
  now: number;
}

export interface Restored extends WholeCopy {
  /** Where the database went that was there before; null when there was none. */
  aside: string | null;
}

/**
 * Puts a backup in the place of the database. At every moment the folder holds the old database or
 * the new one, whole; the old one is kept under a dated name.
 *
 * @throws BackupRefusal when a daemon works on the folder, when the backup is not whole, or when
 *   there are data already and they may not be put aside
 */
export async function restoreDatabase(parts: RestoreParts): Promise<Restored> {
  const { from, dataFolder, replace, now } = parts;
  const file = databaseFile(dataFolder);
  const check = checkDatabase(from);
  if (check.kind === 'faulty') {
    throw new BackupRefusal(
      `${from} was not restored, because ${check.because}. Choose another backup.`,
    );
  }
  mkdirSync(dataFolder, { recursive: true });
  const claim = claimFolder(file);
  try {
    const hasData = existsSync(file) || existsSync(`${file}-wal`);
    if (hasData && !replace) {
      throw new BackupRefusal(
        `${dataFolder} already holds a database. Add --replace to put it aside under a dated name, or name another folder with --data.`,
      );
    }
    const part = `${file}.restoring.part`;
    const copy = await copyToPart(from, part);
    const aside = hasData ? putAside(file, freeName(`${file}.replaced-${dated(now)}`)) : null;
    renameSynced(part, file);
    return { ...copy, file, aside };
  } finally {
    claim.close();
  }
}

/** As long as it is held no daemon opens the database. */
function claimFolder(file: string): Database {
  const fault = accessFault(file, 'write');
  if (fault !== null) throw new BackupRefusal(`Nothing was restored. ${fault}`);
  const claim = claimFile(file, 0);
  if (claim) return claim;
  throw new BackupRefusal(
    `A daemon is working on ${file}: stop it first, then restore and start it again.`,
  );
}

/** Gives the database a second name, and takes its log away from the first one. */
function putAside(file: string, aside: string): string {
  foldLog(file);
  const linked = linkIfPossible(file, aside);
  // A log that stayed would be played back into the restored database.
  for (const tail of ['-wal', '-journal']) {
    if (existsSync(`${file}${tail}`)) renameSync(`${file}${tail}`, `${aside}${tail}`);
  }
  rmSync(`${file}-shm`, { force: true });
  if (!linked && existsSync(file)) renameSync(file, aside);
  syncPath(dirname(file));
  return aside;
}

/** Puts what the log holds into the file; a damaged database keeps its log beside it. */
function foldLog(file: string): void {
  let db: Database | undefined;
  try {
    db = new BetterSqlite3(file, { fileMustExist: true });
    db.pragma('journal_mode = delete');
  } catch (cause) {
    if (!(cause instanceof BetterSqlite3.SqliteError)) throw cause;
  } finally {
    db?.close();
  }
}

/** Some file systems of memory cards know no second name for a file. */
function linkIfPossible(file: string, aside: string): boolean {
  if (!existsSync(file)) return false;
  try {
    linkSync(file, aside);
    return true;
  } catch (cause) {
    const { code } = cause as NodeJS.ErrnoException;
    if (code === 'EPERM' || code === 'ENOTSUP' || code === 'ENOSYS') return false;
    throw cause;
  }
}

const dated = (now: number) => `${new Date(now).toISOString().slice(0, 19).replaceAll(':', '')}Z`;

function freeName(wanted: string): string {
  let name = wanted;
  for (let next = 2; existsSync(name) || existsSync(`${name}-wal`); next++) {
    name = `${wanted}-${next}`;
  }
  return name;
}
