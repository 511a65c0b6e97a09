import BetterSqlite3, { type Database } from 'better-sqlite3';
import { describe, expect, it, vi } from 'vitest';
import {
  type Migration,
  migrate,
  migrations,
  schemaVersion,
  versionOf,
} from '../../daemon/store/migrate.ts';

/** Steps as later versions may bring them: a table, a column with a value for what is there. */
const later: readonly Migration[] = [
  ...migrations,
  { name: 'later-table', sql: 'create table later (id text primary key, at integer) strict;' },
  { name: 'later-column', sql: "alter table place add column note text not null default '';" },
];

const noBackup = () => {};

function at(version: number, steps: readonly Migration[] = later): Database {
  const db = new BetterSqlite3(':memory:');
  migrate(db, noBackup, steps.slice(0, version));
  return db;
}

function schemaOf(db: Database): unknown[] {
  return db
    .prepare('select type, name, tbl_name, sql from sqlite_schema order by type, name')
    .all();
}

const addPlace = (db: Database) =>
  db.exec("insert into place (id, name, kind, created_at) values ('p', 'Shed', 'room', 1)");

describe('the database’s versions', () => {
  it('are numbered by their place in the list', () => {
    const numbers = migrations.map(({ name }) => Number.parseInt(name, 10));
    expect(numbers).toEqual(migrations.map((_, i) => i + 1));
    expect(versionOf(at(schemaVersion, migrations))).toBe(schemaVersion);
  });

  describe.each([
    { list: 'as released', steps: migrations },
    { list: 'with later steps', steps: later },
  ])('$list', ({ steps }) => {
    const olds = steps.map((_, version) => version);

    it.each(olds)('from %i on, upgraded is the same as fresh', (version) => {
      const upgraded = at(version, steps);
      migrate(upgraded, noBackup, steps);
      expect(schemaOf(upgraded)).toEqual(schemaOf(at(steps.length, steps)));
      expect(versionOf(upgraded)).toBe(steps.length);
    });

    it.each(olds.filter((version) => version > 0))('from %i on, rows survive', (version) => {
      const db = at(version, steps);
      addPlace(db);
      migrate(db, noBackup, steps);
      expect(db.prepare('select id, name, kind from place').all()).toEqual([
        { id: 'p', name: 'Shed', kind: 'room' },
      ]);
    });
  });

  it('keep every table strict', () => {
    const loose = at(schemaVersion, migrations)
      .prepare(
        "select name from pragma_table_list where schema = 'main' and strict = 0 and name not like 'sqlite_%'",
      )
      .all();
    expect(loose).toEqual([]);
  });

  it('stay whole at the one before when a step fails half-way', () => {
    const db = at(migrations.length);
    addPlace(db);
    const before = schemaOf(db);
    const failing: Migration = {
      name: 'failing',
      sql: 'create table half (id text) strict; insert into nowhere values (1);',
    };
    expect(() => migrate(db, noBackup, [...migrations, failing])).toThrow(
      /could not be brought to version \d+ \(failing\).*still whole at version/s,
    );
    expect(versionOf(db)).toBe(migrations.length);
    expect(schemaOf(db)).toEqual(before);
    expect(db.prepare('select count(*) as n from place').get()).toEqual({ n: 1 });
    migrate(db, noBackup, later);
    expect(versionOf(db)).toBe(later.length);
  });

  it('keep what earlier steps of the same upgrade did', () => {
    const db = at(1);
    const failing: Migration = { name: 'failing', sql: 'insert into nowhere values (1);' };
    expect(() => migrate(db, noBackup, [...later, failing])).toThrow();
    expect(versionOf(db)).toBe(later.length);
  });

  it('are backed up before the first step, once, and only when there is something to lose', () => {
    const backup = vi.fn();
    const db = new BetterSqlite3(':memory:');
    migrate(db, backup, migrations);
    migrate(db, backup, migrations);
    expect(backup).not.toHaveBeenCalled();
    migrate(db, backup, later);
    expect(backup.mock.calls).toEqual([[migrations.length]]);
  });

  it('are not upgraded when the backup cannot be made', () => {
    const db = at(1);
    const full = () => {
      throw new Error('database or disk is full');
    };
    expect(() => migrate(db, full, later)).toThrow('full');
    expect(versionOf(db)).toBe(1);
  });

  it('of a newer program are refused, saying what to do', () => {
    const db = at(later.length);
    expect(() => migrate(db, noBackup, migrations)).toThrow(
      /knows only \d+\. Install the newer program/,
    );
    expect(versionOf(db)).toBe(later.length);
  });
});
