import { closeSync, fsyncSync, mkdirSync, openSync, renameSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import BetterSqlite3, { type Database } from 'better-sqlite3';
import { isDiskFull } from './disk-full.ts';
import { claimFile } from './file-claim.ts';
import { accessFault, fileFault } from './file-fault.ts';
import { type Migration, migrate, migrations } from './migrate.ts';
import {
  damageText,
  noteOpened,
  refuseDamaged,
  refuseLost,
  refuseWithoutLog,
} from './whole-file.ts';

/** A database that cannot be opened, with its name and what to do. */
export class UnopenedDatabase extends Error {
  override name = 'UnopenedDatabase';
}

/** How long a daemon that is just ending may take to let go of the file. */
const claimWaitMs = 2000;

/**
 * Page size of a new file. A commit writes the page that the newest readings are on, whole and once
 * more with each commit: half of SQLite’s usual size spares an SD card a quarter, and packed hours
 * still fit several to a page. A file that is there already keeps its own.
 */
const pageBytes = 2048;

export const databaseFile = (dataFolder: string) => join(dataFolder, 'boardcure.sqlite');

/**
 * Opens the database for writing and brings it to the newest version.
 *
 * WAL with synchronous=FULL: what was committed survives a power cut, not only a killed process.
 *
 * @param steps - the migrations; only tests give others
 * @throws Error with the file's name when it cannot be opened, is damaged or is too new, or when
 *   another program writes to it
 */
export function openForWriting(file: string, steps: readonly Migration[] = migrations): Database {
  if (file === ':memory:') return openFile(file, {}, (db) => settle(db, steps));
  makeFolder(dirname(file));
  const claim = claimOf(file);
  try {
    const logOf = refuseLost(file);
    const db = openFile(file, {}, (opened) => {
      settle(opened, steps, () => {
        refuseWithoutLog(opened, logOf);
        refuseDamaged(opened);
      });
      noteOpened(opened);
    });
    return closedWith(db, claim);
  } catch (cause) {
    claim.close();
    throw cause;
  }
}

function makeFolder(folder: string): void {
  try {
    mkdirSync(folder, { recursive: true });
  } catch (cause) {
    const what = fileFault(cause) ?? String(cause);
    throw new UnopenedDatabase(`The data folder ${folder} cannot be made. ${what}`, { cause });
  }
}

/** @param look - looks the file through before anything in it is changed */
function settle(db: Database, steps: readonly Migration[], look = () => {}): void {
  // Heeded as long as nothing is written.
  db.pragma(`page_size = ${pageBytes}`);
  db.pragma('busy_timeout = 5000');
  db.pragma('journal_mode = WAL');
  db.pragma('synchronous = FULL');
  db.pragma('foreign_keys = ON');
  look();
  migrate(db, (fromVersion) => backUp(db, `${db.name}.before-version-${fromVersion + 1}`), steps);
}

function claimOf(file: string): Database {
  let claim: Database | null;
  try {
    claim = claimFile(file, claimWaitMs);
  } catch (cause) {
    throw unopened(file, cause, 'write');
  }
  if (claim) return claim;
  throw new UnopenedDatabase(
    `Another program already writes to the database ${file}: stop it, or choose another folder with --data.`,
  );
}

/** The claim ends with the connection, and not before. */
function closedWith(db: Database, claim: Database): Database {
  const close = db.close.bind(db);
  db.close = () => {
    close();
    claim.close();
    return db;
  };
  return db;
}

/** Opens the database for reading beside the writer. */
export function openForReading(file: string): Database {
  return openFile(file, { readonly: true, fileMustExist: true }, (db) => {
    db.pragma('busy_timeout = 5000');
    db.pragma('query_only = ON');
  });
}

/** Opens a file and makes it ready; a file that cannot be made ready is left closed. */
function openFile(
  file: string,
  options: BetterSqlite3.Options,
  prepare: (db: Database) => void,
): Database {
  let db: Database | undefined;
  try {
    db = new BetterSqlite3(file, options);
    db.pragma('user_version');
    prepare(db);
    return db;
  } catch (cause) {
    db?.close();
    // What a migration says is said already; only SQLite speaks without the file’s name.
    const spoken = cause instanceof Error && !(cause instanceof BetterSqlite3.SqliteError);
    throw spoken && db ? cause : unopened(file, cause, options.readonly ? 'read' : 'write');
  }
}

function unopened(file: string, cause: unknown, use: 'read' | 'write'): Error {
  const cannot = `The database ${file} cannot be opened`;
  if (isDiskFull(cause, file)) {
    const full = `${cannot}: the disk is full. Free some space and start again.`;
    return new UnopenedDatabase(full, { cause });
  }
  // A whole database that this user may not touch is not to be replaced by a backup.
  const fault = accessFault(file, use);
  if (fault !== null) {
    return new UnopenedDatabase(`${cannot}, and nothing was changed. ${fault}`, { cause });
  }
  const words = cause instanceof Error ? cause.message : String(cause);
  return new UnopenedDatabase(
    `${damageText(file, words)} If it is whole, see that its folder exists and may be written.`,
    { cause },
  );
}

/** Copies the database. The name stands for a whole copy only, and for the newest one. */
function backUp(db: Database, target: string): void {
  if (db.name === ':memory:') return;
  const part = `${target}.part`;
  rmSync(part, { force: true });
  try {
    db.prepare('vacuum into ?').run(part);
    // SQLite does not wait for such a copy to reach the disk.
    const copy = openSync(part, 'r+');
    fsyncSync(copy);
    closeSync(copy);
    renameSync(part, target);
  } catch (cause) {
    rmSync(part, { force: true });
    throw cause;
  }
}
