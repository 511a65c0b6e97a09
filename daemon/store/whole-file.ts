import { randomUUID } from 'node:crypto';
import {
  closeSync,
  existsSync,
  fsyncSync,
  openSync,
  readFileSync,
  rmSync,
  statSync,
  writeSync,
} from 'node:fs';
import type { Database } from 'better-sqlite3';
import { integrityFaults } from './backup-check.ts';
import { isDiskFull } from './disk-full.ts';

/** Beside the database: whether it was closed in order, and which file it was. */
const stateFile = (file: string) => `${file}-state`;
/** Beside the database: what the nightly check found wrong with it. */
export const damageFile = (file: string) => `${file}-damaged`;

interface KeptState {
  state: 'open' | 'closed';
  /** The file’s number: another one is a backup that was put in its place. */
  inode: number;
  /** Names the time it was open; the database has noted it as well. */
  opening: string;
}

const openingKey = 'opened';

/** How long pages are looked at by chance at the start, ms. */
const chanceMs = 100;
/** Tables that grow without end; all others are small and are checked whole. */
const growing = ['reading', 'packed_hour', 'packed_day', 'hour_sum'];

const sizeOf = (name: string): number => (existsSync(name) ? statSync(name).size : 0);

/** What to do about a damaged database, as a sentence after what is wrong with it. */
export function damageText(file: string, because: string): string {
  return (
    `The database ${file} cannot be opened: ${because}. Nothing was changed. ` +
    'To go on, put a backup in its place: boardcure restore <file> --replace; by default the nightly ones are in the folder backups beside it.'
  );
}

/**
 * Refuses to begin anew where there was a database: SQLite would make a new one of a file that is
 * gone or empty.
 *
 * @returns the opening whose log should be there and is not; null when nothing is missing
 * @throws Error saying what is missing and what to do
 */
export function refuseLost(file: string): string | null {
  const log = `${file}-wal`;
  const kept = readState(file);
  if (sizeOf(file) > 0) {
    const isOpen = kept?.state === 'open' && kept.inode === statSync(file).ino;
    return isOpen && !existsSync(log) ? kept.opening : null;
  }
  const what = existsSync(file) ? 'it is empty' : 'it is gone';
  if (sizeOf(log) > 0) {
    throw new Error(damageText(file, `${what}, though its log ${log} is there`));
  }
  if (kept) {
    const anew = `; to begin anew without what was recorded, remove ${stateFile(file)}`;
    throw new Error(damageText(file, `${what}, though this folder held one${anew}`));
  }
  return null;
}

/**
 * Refuses a database whose log is gone and that cannot do without: SQLite would go on with what was
 * copied out of the log before. Another program that opened it in between has put the log into the
 * file, and the opening with it. What cannot be told is a log that was lost after it had been put
 * into the file once and had begun anew.
 *
 * @param opening - as told by `refuseLost`
 * @throws Error saying what is missing and what to do
 */
export function refuseWithoutLog(db: Database, opening: string | null): void {
  if (opening === null) return;
  if (notedOpening(db) === opening) return;
  const without = `put it back, or remove ${stateFile(db.name)} to go on without what it held`;
  const what = `its log ${db.name}-wal is gone, which held the newest changes; ${without}`;
  throw new Error(damageText(db.name, what));
}

/** Null also where even the tables were in the log only. */
function notedOpening(db: Database): string | null {
  const hasMeta = db.prepare("select 1 from sqlite_schema where name = 'meta'").get();
  if (!hasMeta) return null;
  const row = db
    .prepare<[string], { value: string }>('select value from meta where key = ?')
    .get(openingKey);
  return row?.value ?? null;
}

/**
 * Looks through a database that was just opened, as far as that costs next to nothing: its schema,
 * all small tables, and parts of the large ones picked by chance. Where the nightly check has found
 * damage, the whole of it.
 *
 * A page that holds other numbers than were written is not found by this nor by anything else:
 * SQLite keeps no checksums.
 *
 * @throws Error saying what is wrong and what to do
 */
export function refuseDamaged(db: Database): void {
  const marker = damageFile(db.name);
  const faults = existsSync(marker) ? integrityFaults(db, 'full') : glanceFaults(db);
  if (faults.length > 0) {
    throw new Error(damageText(db.name, `it is damaged (${faults.slice(0, 3).join('; ')})`));
  }
  rmSync(marker, { force: true });
}

function glanceFaults(db: Database): string[] {
  const tables = db
    .prepare<[], string>(
      "select name from sqlite_schema where type = 'table' and name not like 'sqlite\\_%' escape '\\'",
    )
    .pluck()
    .all();
  const faults = tables
    .filter((table) => !growing.includes(table))
    .flatMap((table) => db.pragma(`quick_check("${table}")`) as { quick_check: string }[])
    .map(({ quick_check }) => quick_check)
    .filter((text) => text !== 'ok');
  if (tables.includes('packed_hour')) readByChance(db);
  return faults;
}

/** Reads here and there in the packed hours, and the newest readings. */
function readByChance(db: Database): void {
  db.prepare('select * from reading order by slot desc, at desc limit 1000').all();
  const series = db
    .prepare<[], { sensor: number; first: number; last: number }>(
      `select key as sensor,
              (select min(hour) from packed_hour where sensor_key = key and quantity = 1) as first,
              (select max(hour) from packed_hour where sensor_key = key and quantity = 1) as last
         from sensor limit 1000`,
    )
    .all()
    .filter(({ first }) => first !== null);
  const one = db.prepare<[number, number]>(
    'select * from packed_hour where sensor_key = ? and quantity = 1 and hour >= ? limit 1',
  );
  const until = performance.now() + chanceMs;
  for (let count = 0; series.length > 0 && count < 500 && performance.now() < until; count++) {
    const { sensor, first, last } = series[count % series.length] as (typeof series)[number];
    one.get(sensor, Math.floor(first + Math.random() * (last - first + 1)));
  }
}

/**
 * Notes that the database is open, so that the next start knows whether its log has to be there.
 *
 * Only once a commit has brought the log to disk: without one a power cut may leave none.
 */
export function noteOpened(db: Database): void {
  const opening = randomUUID();
  const close = db.close.bind(db);
  db.close = () => {
    // While the log is still there: a cut from here on leaves a log that nobody misses.
    if (db.open) writeState(db.name, 'closed', opening);
    return close();
  };
  try {
    db.prepare('insert or replace into meta (key, value) values (?, ?)').run(openingKey, opening);
  } catch (cause) {
    // On a full disk the daemon starts all the same: it says so, and holds what comes in.
    if (isDiskFull(cause, db.name)) return;
    throw cause;
  }
  writeState(db.name, 'open', opening);
}

/** A state that cannot be written is removed: nothing is refused on the word of an old one. */
function writeState(file: string, state: KeptState['state'], opening: string): void {
  const name = stateFile(file);
  let opened: number | null = null;
  try {
    const kept: KeptState = { state, inode: statSync(file).ino, opening };
    opened = openSync(name, 'w');
    writeSync(opened, JSON.stringify(kept));
    fsyncSync(opened);
  } catch {
    rmSync(name, { force: true });
  } finally {
    if (opened !== null) closeSync(opened);
  }
}

/** Null where nothing is known: a first start, or one that was cut off while it was noted. */
function readState(file: string): KeptState | null {
  try {
    return JSON.parse(readFileSync(stateFile(file), 'utf8')) as KeptState;
  } catch {
    return null;
  }
}
