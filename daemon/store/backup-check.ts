import { closeSync, openSync, readSync, statSync } from 'node:fs';
import BetterSqlite3, { type Database } from 'better-sqlite3';
import { schemaVersion, versionOf } from './migrate.ts';

/** Rows of each table by its name. */
export type TableCounts = Record<string, number>;

export type DatabaseCheck =
  | {
      readonly kind: 'whole';
      readonly version: number;
      readonly bytes: number;
      readonly counts: TableCounts;
    }
  | { readonly kind: 'faulty'; readonly because: string };

/** What every database of ours begins with. **Source:** SQLite, Database File Format, section 1.3. */
const fileHeader = 'SQLite format 3\0';
/** Tables that every version of the database has; another program's file lacks them. */
const everyVersionHas = ['place', 'sensor', 'coat'];
const faultsNamed = 3;

/**
 * Looks whether a file is a whole database of ours: its pages and indexes agree (SQLite's
 * `integrity_check`), what it refers to is there, and its version is one that this program knows.
 *
 * @param expected - rows that each table must have; left out when nothing is known of them
 */
export function checkDatabase(file: string, expected?: TableCounts): DatabaseCheck {
  const notOurs = notADatabase(file);
  if (notOurs !== null) return faulty(notOurs);
  let db: Database | undefined;
  try {
    db = new BetterSqlite3(file, { readonly: true, fileMustExist: true });
    const tables = new Set(tableNames(db));
    if (!everyVersionHas.every((table) => tables.has(table))) {
      return faulty('it is a database, but not one of Boardcure');
    }
    const version = versionOf(db);
    if (version > schemaVersion) {
      return faulty(
        `it is at version ${version}, and this program knows only ${schemaVersion}: a newer program made it`,
      );
    }
    const faults = integrityFaults(db, 'full');
    if (faults.length > 0) return faulty(`it is damaged: ${faults.join('; ')}`);
    const counts = tableCounts(db);
    const differing = Object.entries(expected ?? {}).find(
      ([table, rows]) => counts[table] !== rows,
    );
    if (differing) {
      const [table, rows] = differing;
      return faulty(`its table ${table} has ${counts[table] ?? 'no'} rows instead of ${rows}`);
    }
    return { kind: 'whole', version, bytes: statSync(file).size, counts };
  } catch (cause) {
    return faulty(`it cannot be read: ${cause instanceof Error ? cause.message : cause}`);
  } finally {
    db?.close();
  }
}

const faulty = (because: string): DatabaseCheck => ({ kind: 'faulty', because });

/**
 * What SQLite finds wrong in a file.
 *
 * @param depth - `quick` leaves out whether indexes agree with their tables, and is much faster
 * @returns a few of the faults in SQLite's words, empty when there is none
 * @throws SqliteError when it is damaged so that it cannot be looked through
 */
export function integrityFaults(db: Database, depth: 'quick' | 'full'): string[] {
  const pragma = depth === 'full' ? 'integrity_check' : 'quick_check';
  const rows = db.pragma(`${pragma}(${faultsNamed})`) as Record<string, string>[];
  const faults = rows.map((row) => row[pragma] ?? '').filter((text) => text !== 'ok');
  if (depth === 'quick' || faults.length > 0) return faults;
  const orphans = db.pragma('foreign_key_check') as { table: string; parent: string }[];
  return orphans
    .slice(0, faultsNamed)
    .map(({ table, parent }) => `${table} refers to a ${parent} that is not there`);
}

/** Counts the rows of every table. */
export function tableCounts(db: Database): TableCounts {
  return Object.fromEntries(
    tableNames(db).map((table) => [
      table,
      db.prepare<[], number>(`select count(*) from "${table}"`).pluck().get() ?? 0,
    ]),
  );
}

/** Names of the tables of a database, in alphabetical order, SQLite's own left out. */
export function tableNames(db: Database): string[] {
  return db
    .prepare<[], string>(
      `select name from sqlite_schema
        where type = 'table' and name not like 'sqlite\\_%' escape '\\' order by name`,
    )
    .pluck()
    .all();
}

function notADatabase(file: string): string | null {
  let opened: number;
  try {
    if (!statSync(file).isFile()) return 'it is not a file';
    opened = openSync(file, 'r');
  } catch (cause) {
    const { code, message } = cause as NodeJS.ErrnoException;
    return code === 'ENOENT' ? 'there is no such file' : `it cannot be read: ${message}`;
  }
  try {
    const start = Buffer.alloc(fileHeader.length);
    readSync(opened, start, 0, start.length, 0);
    return start.toString('latin1') === fileHeader ? null : 'it is not a database';
  } finally {
    closeSync(opened);
  }
}
