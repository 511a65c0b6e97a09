import type { Database } from 'better-sqlite3';
import { sql as firstTables } from './migrations/0001-first-tables.ts';
import { sql as packedHours } from './migrations/0002-packed-hours.ts';
import { sql as pendingReadings } from './migrations/0003-pending-readings.ts';
import { sql as topicRules } from './migrations/0004-topic-rules.ts';
import { sql as calibrations } from './migrations/0005-calibrations.ts';
import { sql as trade } from './migrations/0006-trade.ts';
import { sql as outgoingAndLockUp } from './migrations/0007-outgoing-and-lock-up.ts';
import { sql as photos } from './migrations/0008-photos.ts';
import { sql as daysAndOpenMessages } from './migrations/0009-days-and-open-messages.ts';
import { sql as siteName } from './migrations/0010-site-name.ts';
import { sql as toldSentences } from './migrations/0011-told-sentences.ts';
import { sql as boundOpenMessages } from './migrations/0012-bound-open-messages.ts';
import { sql as toldRefusals } from './migrations/0013-told-refusals.ts';

/** One step from a version of the database to the next. */
export interface Migration {
  name: string;
  sql: string;
}

/** All steps in order; the position, counted from 1, is the version a step leads to. */
export const migrations: readonly Migration[] = [
  { name: '0001-first-tables', sql: firstTables },
  { name: '0002-packed-hours', sql: packedHours },
  { name: '0003-pending-readings', sql: pendingReadings },
  { name: '0004-topic-rules', sql: topicRules },
  { name: '0005-calibrations', sql: calibrations },
  { name: '0006-trade', sql: trade },
  { name: '0007-outgoing-and-lock-up', sql: outgoingAndLockUp },
  { name: '0008-photos', sql: photos },
  { name: '0009-days-and-open-messages', sql: daysAndOpenMessages },
  { name: '0010-site-name', sql: siteName },
  { name: '0011-told-sentences', sql: toldSentences },
  { name: '0012-bound-open-messages', sql: boundOpenMessages },
  { name: '0013-told-refusals', sql: toldRefusals },
];

export const schemaVersion = migrations.length;

/** The version a database file is at; 0 when it is new. */
export function versionOf(db: Database): number {
  return db.pragma('user_version', { simple: true }) as number;
}

/**
 * Brings a database to the newest version, each step in one transaction with its number.
 *
 * @param backup - called once before the first step on a file that already holds data
 * @throws Error when the file was written by a newer program, or when a step fails
 *   (the file is then at the version before that step)
 */
export function migrate(
  db: Database,
  backup: (fromVersion: number) => void,
  steps: readonly Migration[] = migrations,
): void {
  const from = versionOf(db);
  if (from > steps.length) {
    throw new Error(
      `The database ${db.name} is at version ${from}, but this program knows only ${steps.length}. ` +
        'Install the newer program again, or restore a backup from before the upgrade.',
    );
  }
  if (from > 0 && from < steps.length) backup(from);
  for (let version = from + 1; version <= steps.length; version++) {
    const step = steps[version - 1];
    if (!step) break;
    try {
      db.transaction(() => {
        // Another process may have come first while this one waited for the file.
        if (versionOf(db) >= version) return;
        db.exec(step.sql);
        db.pragma(`user_version = ${version}`);
      }).immediate();
    } catch (cause) {
      throw new Error(
        `The database ${db.name} could not be brought to version ${version} (${step.name}): ` +
          `${cause instanceof Error ? cause.message : cause}. It is still whole at version ${version - 1}: ` +
          'free some space if the disk is full, or install the program that wrote it again.',
        { cause },
      );
    }
  }
}
