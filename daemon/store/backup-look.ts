import { existsSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import BetterSqlite3 from 'better-sqlite3';
import { integrityFaults } from './backup-check.ts';
import { accessFault } from './file-fault.ts';
import { schemaVersion, versionOf } from './migrate.ts';
import { openForReading, openForWriting } from './open.ts';
import { type StoreReader, storeReader } from './store.ts';

/** What a look into the daemon's database found, without changing anything. */
export type DatabaseLook =
  | { readonly kind: 'none' }
  /** This user may not read it. */
  | { readonly kind: 'closed'; readonly because: string }
  | { readonly kind: 'unreadable'; readonly because: string }
  | {
      readonly kind: 'read';
      readonly version: number;
      readonly knownVersion: number;
      readonly bytes: number;
      /** Of the log beside the file. */
      readonly logBytes: number;
      readonly faults: readonly string[];
    };

/** Looks at a database, also while a daemon writes to it. */
export function lookAtDatabase(file: string): DatabaseLook {
  const closed = existsSync(dirname(file)) ? accessFault(file, 'read') : null;
  if (closed !== null) return { kind: 'closed', because: closed };
  if (!existsSync(file)) return { kind: 'none' };
  try {
    const db = openForReading(file);
    try {
      return {
        kind: 'read',
        version: versionOf(db),
        knownVersion: schemaVersion,
        bytes: statSync(file).size,
        logBytes: existsSync(`${file}-wal`) ? statSync(`${file}-wal`).size : 0,
        faults: integrityFaults(db, 'quick'),
      };
    } finally {
      db.close();
    }
  } catch (cause) {
    return { kind: 'unreadable', because: cause instanceof Error ? cause.message : String(cause) };
  }
}

/** Reads from a database that is at this program's version, and closes it. */
export function readOnce<T>(file: string, read: (reader: StoreReader) => T): T {
  const reader = storeReader(openForReading(file));
  try {
    return read(reader);
  } finally {
    reader.close();
  }
}

/** Whether a daemon works on a database: it holds its claim as long as it lives. */
export function heldByDaemon(file: string): boolean {
  if (!existsSync(`${file}-lock`)) return false;
  const lock = new BetterSqlite3(`${file}-lock`, { readonly: true, timeout: 0 });
  try {
    lock.prepare('select count(*) from sqlite_schema').get();
    return false;
  } catch (cause) {
    if (cause instanceof BetterSqlite3.SqliteError && cause.code.startsWith('SQLITE_BUSY')) {
      return true;
    }
    throw cause;
  } finally {
    lock.close();
  }
}

/**
 * Tries the database engine: its native part loads, and a new database can be made in memory.
 *
 * @returns the engine's version
 * @throws Error when it was built for another Node, or not at all
 */
export function tryEngine(): string {
  const db = openForWriting(':memory:');
  try {
    return db.prepare<[], string>('select sqlite_version()').pluck().get() ?? '';
  } finally {
    db.close();
  }
}
