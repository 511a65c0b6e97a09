import { existsSync, readdirSync, readFileSync, truncateSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import BetterSqlite3 from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { claimFile } from '../../daemon/store/file-claim.ts';
import { type Migration, migrations, versionOf } from '../../daemon/store/migrate.ts';
import { databaseFile, openForReading, openForWriting } from '../../daemon/store/open.ts';
import { storeReader, storeWriter } from '../../daemon/store/store.ts';
import { day1, group, place, reading } from './site-of-facts.ts';
import { temporaryFolder, timeUnknown } from './store-sides.ts';

const nextStep: Migration = { name: 'next', sql: 'create table next (id text) strict;' };

let folder: string;
let remove: () => void;
let file: string;
beforeEach(() => {
  ({ folder, remove } = temporaryFolder());
  file = databaseFile(folder);
});
afterEach(() => remove());

describe('the database file', () => {
  it('is written so that a power cut loses nothing that was acknowledged', () => {
    // SQLite manual, “PRAGMA synchronous”: with FULL a commit in WAL mode is synced (2 stands for FULL).
    const db = openForWriting(file);
    expect(db.pragma('journal_mode', { simple: true })).toBe('wal');
    expect(db.pragma('synchronous', { simple: true })).toBe(2);
    expect(db.pragma('foreign_keys', { simple: true })).toBe(1);
    db.close();
  });

  it('makes its folder', () => {
    const deep = databaseFile(join(folder, 'a', 'b'));
    openForWriting(deep).close();
    expect(existsSync(deep)).toBe(true);
  });

  it('cannot be written through the reading side', () => {
    const writer = openForWriting(file);
    const db = openForReading(file);
    expect(() => db.exec("insert into meta values ('a', 'b')")).toThrow(/readonly/);
    db.close();
    writer.close();
  });

  it('shows the reading side each commit as soon as it is made', () => {
    const db = openForWriting(file);
    const write = storeWriter(db, timeUnknown);
    const read = storeReader(openForReading(file));
    write.commitReadings(group(reading('n1', day1, 18)));
    expect(read.sensors()).toHaveLength(1);
    write.commitReadings(group(reading('n2', day1, 18)));
    expect(read.sensors()).toHaveLength(2);
    read.close();
    write.close();
  });

  it('is not opened by one that waits for its turn: it may be put aside meanwhile', () => {
    const claim = claimFile(file, 0);
    expect(() => openForWriting(file)).toThrow(/Another program already writes/);
    expect(readdirSync(folder)).toEqual([basename(`${file}-lock`)]);
    claim?.close();
    openForWriting(file).close();
    const free = claimFile(file, 0);
    expect(free).not.toBeNull();
    free?.close();
  });

  it('has one writer only, and is free again when that one is gone', () => {
    const first = openForWriting(file);
    expect(() => openForWriting(file)).toThrow(/Another program already writes to the database/);
    first.close();
    openForWriting(file).close();
  });

  it('leaves no log behind after a clean stop', () => {
    const write = storeWriter(openForWriting(file), timeUnknown);
    const read = storeReader(openForReading(file));
    write.createPlace(place());
    read.close();
    write.checkpoint();
    write.close();
    expect(readdirSync(folder).filter((name) => /-(wal|shm)$/.test(name))).toEqual([]);
  });
});

describe('a database file that cannot be used', () => {
  it.each([
    { what: 'is something else', bytes: Buffer.from('Dear diary, '.repeat(1000)) },
    { what: 'is cut off in its header', bytes: Buffer.from('SQLite format 3\0') },
  ])('that $what is named, and left as it is', ({ bytes }) => {
    writeFileSync(file, bytes);
    expect(() => openForWriting(file)).toThrow(
      new RegExp(`The database ${file} cannot be opened: .*put a backup in its place`, 's'),
    );
    expect(() => openForReading(file)).toThrow(file);
    expect(readFileSync(file).equals(bytes)).toBe(true);
  });

  it('that lost its end is named, and left as it is', () => {
    openForWriting(file).close();
    truncateSync(file, 8192);
    const bytes = readFileSync(file);
    expect(() => openForWriting(file)).toThrow(file);
    expect(readFileSync(file).equals(bytes)).toBe(true);
  });

  it('that a newer program wrote is refused, and left as it is', () => {
    openForWriting(file, [...migrations, nextStep]).close();
    const bytes = readFileSync(file);
    expect(() => openForWriting(file)).toThrow(/at version \d+, but this program knows only/);
    expect(readFileSync(file).equals(bytes)).toBe(true);
    openForWriting(file, [...migrations, nextStep]).close();
  });

  it('that is not there is not made by reading', () => {
    expect(() => openForReading(file)).toThrow(file);
    expect(existsSync(file)).toBe(false);
  });

  it('that is a folder is named', () => {
    expect(() => openForWriting(folder)).toThrow(folder);
  });
});

describe('the copy made before an upgrade', () => {
  const copy = () => `${file}.before-version-${migrations.length + 1}`;
  const placesIn = (name: string) => {
    const db = new BetterSqlite3(name, { readonly: true });
    const names = db.prepare('select name from place order by name').pluck().all();
    const version = versionOf(db);
    db.close();
    return { names, version };
  };
  const record = (name: string) => {
    const write = storeWriter(openForWriting(file), timeUnknown);
    write.createPlace(place({ name }));
    write.close();
  };

  it('holds what the file held, at its old version', () => {
    record('Shed');
    openForWriting(file, [...migrations, nextStep]).close();
    expect(placesIn(copy())).toEqual({ names: ['Shed'], version: migrations.length });
    expect(placesIn(file)).toEqual({ names: ['Shed'], version: migrations.length + 1 });
    expect(readdirSync(folder).filter((name) => name.endsWith('.part'))).toEqual([]);
  });

  it('is made anew when an upgrade that failed is tried again later', () => {
    record('Shed');
    const failing = { name: 'failing', sql: 'insert into nowhere values (1);' };
    expect(() => openForWriting(file, [...migrations, failing])).toThrow('failing');
    expect(placesIn(copy()).names).toEqual(['Shed']);
    record('Loft');
    openForWriting(file, [...migrations, nextStep]).close();
    expect(placesIn(copy()).names).toEqual(['Loft', 'Shed']);
  });

  it('that was cut off is not taken for one', () => {
    record('Shed');
    writeFileSync(`${copy()}.part`, 'half a copy');
    openForWriting(file, [...migrations, nextStep]).close();
    expect(placesIn(copy()).names).toEqual(['Shed']);
  });
});
