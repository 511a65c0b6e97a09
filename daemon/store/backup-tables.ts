import type { Database } from 'better-sqlite3';
import { tableCounts, tableNames } from './backup-check.ts';
import { BackupRefusal } from './backup-copy.ts';
import { schemaVersion, versionOf } from './migrate.ts';
import { openForReading } from './open.ts';
import { quantityOf } from './quantity-code.ts';
import { type StoreReader, storeReader } from './store.ts';

/** A cell as others can read it: times are ISO 8601, what is kept as JSON is unfolded. */
export type ExportedValue = string | number | boolean | null | object;
export type ExportedRow = Record<string, ExportedValue>;

/** The tables of facts that leave the house, and the name each goes by outside. */
export const exportedTables = {
  place: 'places',
  sensor: 'sensors',
  sensor_stay: 'sensor-stays',
  calibration: 'calibrations',
  sensor_fault: 'sensor-faults',
  coating_plan: 'plans',
  batch: 'batches',
  move: 'moves',
  coat: 'coats',
  touch_test: 'tests',
  remark: 'remarks',
  photo: 'photos',
  hand_reading: 'hand-readings',
  batch_split: 'splits',
  batch_merge: 'merges',
  tin: 'tins',
  coating: 'coatings',
  coating_step: 'coating-steps',
  mounting_tick: 'mounting-ticks',
  notice: 'notices',
  lock_up_tick: 'lock-up-ticks',
  change: 'changes',
  refused: 'refused-messages',
  pending_reading: 'pending-readings',
  topic_rule: 'topic-rules',
  site_name: 'site-names',
} as const;
export type ExportedTable = keyof typeof exportedTables;

/** Tables that stay in the house, with the reason. */
export const keptBack: Readonly<Record<string, string>> = {
  meta: 'keys of the program, and the newest weather forecast, which the next one replaces',
  hour_sum: 'reckoned from the readings, and reckoned anew where it is missing',
  hour_range: 'reckoned from the readings, and reckoned anew where it is missing',
  outgoing_message:
    'messages on their way out, and for a month those that left; the notices leave as such',
  open_message: 'numbers of messages that are under way, which mean nothing elsewhere',
  dirty_span: 'marks of what is being reckoned anew',
};

/** Tables that readings are kept in: they leave as one file for each sensor and quantity. */
const readingTables = /^(reading|packed_|kept_from)/;
export const holdsReadings = (table: string): boolean => readingTables.test(table);

const jsonColumns = new Set([
  'coating_plan.coats',
  'batch.boards',
  'batch.timber',
  'coat.mixture',
  'coat.faces',
  'hand_reading.figures',
  'topic_rule.form',
  'calibration.how',
  'notice.told',
  'sensor_fault.told',
  'remark.told',
  'refused.told',
]);
const yesOrNoColumns = new Set([
  'lock_up_tick.done',
  'coating_plan.is_default',
  'touch_test.passed',
  'remark.automatic',
]);
const codedQuantities = new Set([
  'pending_reading.quantity',
  'calibration.quantity',
  'sensor_fault.quantity',
]);
/** What a JavaScript date can hold. **Source:** ECMAScript 2025, section 21.4.1.1. */
const latestAt = 8.64e15;

/** The whole database as it stood at one moment, whatever is written meanwhile. */
export interface DatabaseSnapshot {
  reader: StoreReader;
  version: number;
  /** Rows of each table. */
  counts: Record<string, number>;
  /** Names of the columns of a table, as they leave the house. */
  columns(table: ExportedTable): string[];
  /** Rows of a table in the order they were written. */
  rows(table: ExportedTable): IterableIterator<ExportedRow>;
  /** Every table that is not exported, with the reason. */
  leftOut: { table: string; because: string }[];
  close(): void;
}

/**
 * Opens the database for reading as it stands now.
 *
 * @throws BackupRefusal when it is at another version than this program's
 * @throws Error with the file's name when it cannot be opened
 */
export function openSnapshot(file: string): DatabaseSnapshot {
  const db = openForReading(file);
  try {
    db.exec('begin');
    const version = versionOf(db);
    if (version !== schemaVersion) {
      throw new BackupRefusal(
        version < schemaVersion
          ? `The database ${file} is at version ${version}. Start the daemon once: it brings it to version ${schemaVersion}.`
          : `The database ${file} is at version ${version}; this program knows only ${schemaVersion}. Use the newer one.`,
      );
    }
    const reader = storeReader(db);
    return {
      reader,
      version,
      counts: tableCounts(db),
      columns: (table) => columnsOf(db, table).map(({ outside }) => outside),
      rows: (table) => rowsOf(db, table),
      leftOut: tableNames(db)
        .filter((table) => !(table in exportedTables) && !holdsReadings(table))
        .map((table) => ({
          table,
          because: keptBack[table] ?? 'the export of this version does not know it',
        })),
      close: () => reader.close(),
    };
  } catch (cause) {
    db.close();
    throw cause;
  }
}

interface Column {
  inside: string;
  outside: string;
  read(value: unknown): ExportedValue;
}

function* rowsOf(db: Database, table: ExportedTable): IterableIterator<ExportedRow> {
  const columns = columnsOf(db, table);
  const all = db.prepare<[], Record<string, unknown>>(`select * from "${table}"`);
  for (const row of all.iterate()) {
    yield Object.fromEntries(
      columns.map(({ inside, outside, read }) => [outside, read(row[inside])]),
    );
  }
}

function columnsOf(db: Database, table: ExportedTable): Column[] {
  const described = db.pragma(`table_info("${table}")`) as { name: string }[];
  return described.map(({ name }) => ({
    inside: name,
    outside: name.replaceAll(/_(\w)/g, (_, letter: string) => letter.toUpperCase()),
    read: readerOf(table, name),
  }));
}

function readerOf(table: ExportedTable, column: string): Column['read'] {
  const name = `${table}.${column}`;
  if (jsonColumns.has(name)) return (value) => (value === null ? null : JSON.parse(String(value)));
  if (yesOrNoColumns.has(name)) return (value) => value === 1;
  if (codedQuantities.has(name)) {
    return (value) => (value === null ? null : quantityOf(Number(value)));
  }
  if (column === 'at' || column.endsWith('_at')) return isoTime;
  return (value) =>
    value instanceof Uint8Array ? Buffer.from(value).toString('base64') : plain(value);
}

function plain(value: unknown): ExportedValue {
  return typeof value === 'string' || typeof value === 'number' ? value : null;
}

/** UTC epoch ms as ISO 8601; a number beyond any calendar is left as it is. */
export function isoTime(at: unknown): string | number | null {
  if (typeof at !== 'number') return null;
  return Math.abs(at) <= latestAt ? new Date(at).toISOString() : at;
}
