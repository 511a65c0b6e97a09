import { existsSync } from 'node:fs';
import BetterSqlite3, { type Database } from 'better-sqlite3';
import { afterEach, describe, expect, it } from 'vitest';
import { migrate, migrations, schemaVersion, versionOf } from '../../daemon/store/migrate.ts';
import { openForReading } from '../../daemon/store/open.ts';
import { plainDegreeHours } from '../monitor/independent-sum.ts';
import { openSite, type TestSite } from '../monitor/site.ts';

const hour = 3_600_000;
const from = Date.UTC(2025, 8, 1, 6);
const finishedAt = from + 5 * hour;
const now = from + 60 * hour;

/** Three days by a sensor every twelve minutes, with a night below the datum and a gap of five hours. */
const readings = Array.from({ length: 300 }, (_, i) => ({
  sensor: 'rack-1',
  at: from + i * 12 * 60_000,
  value: Math.round((11 + 9 * Math.sin((i / 120) * 2 * Math.PI)) * 100) / 100,
})).filter(({ at }) => at < from + 20 * hour || at > from + 25 * hour);

/** Rows as the program of an earlier version wrote them, in its own tables. */
function fill(db: Database, hasPackedTables: boolean): void {
  const mixture = '{"paint":90,"rawLinseedOil":0,"turpentine":10}';
  const coats = [1, 2].map((number) => ({
    ...{ name: `Coat ${number}`, mixture: JSON.parse(mixture), faces: ['face'] },
    ...{ spreadingM2PerL: 10, soaksIn: false },
  }));
  db.exec(`
    insert into place (id, name, kind, created_at) values ('room', 'Shed', 'room', 0);
    insert into sensor (key, id, name, first_seen_at) values (1, 'rack-1', null, ${from});
    insert into sensor_stay (sensor_key, place_id, from_at, recorded_at) values (1, 'room', null, 0);
    insert into coating_plan (id, name, surface, coats, is_default, created_at)
      values ('plan', 'Two', 'sawn', '${JSON.stringify(coats)}', 1, 0);
    insert into batch (id, name, species, surface, boards, plan_id, created_at)
      values ('batch', 'South gable', 'norway-spruce', 'sawn',
        '{"count":10,"lengthMm":4000,"widthMm":145,"thicknessMm":22}', 'plan', 0);
    insert into move (id, batch_id, place_id, at, recorded_at) values ('move', 'batch', 'room', null, 0);
    insert into coat (id, batch_id, coat, finished_at, mixture, faces, recorded_at)
      values ('coat', 'batch', 0, ${finishedAt}, '${mixture}', '["face"]', 0);
    insert into touch_test (id, batch_id, coat_id, at, gate, passed, felt_on, recorded_at)
      values ('test', 'batch', 'coat', ${now - hour}, 'turn', 0, 'board', 0);
    -- What an earlier reckoning made of the hours must not be taken for what this one makes.
    insert into hour_range (place_id, model, from_hour, to_hour)
      values ('room', 'reckoned long ago', ${from / hour}, ${now / hour});
    insert into hour_sum (place_id, model, hour, low, high, capped, covered)
      values ('room', 'reckoned long ago', ${from / hour}, 999, 999, 999, 1);`);
  const insert = hasPackedTables
    ? db.prepare(
        'insert into reading (slot, sensor_key, quantity, at, raw, flags) values (cast(@at as integer) / 15000, 1, 1, @at, @value, 0)',
      )
    : db.prepare(
        'insert into reading (sensor_key, quantity, at, raw, flags) values (1, 1, @at, @value, 0)',
      );
  for (const { at, value } of readings) insert.run({ at: BigInt(at), value });
}

let site: TestSite;
afterEach(() => site.close());

// The versions that a shed may come from; the tables of each are those that its migrations made.
const olds = migrations.map((_, index) => index + 1).filter((version) => version < schemaVersion);

describe('a database of an earlier version', () => {
  it.each(olds)(
    '%i: after the upgrade every reading is there, and the sums are those reckoned by hand',
    (version) => {
      let file = '';
      site = openSite({}, (at) => {
        file = at;
        const db = new BetterSqlite3(at);
        db.pragma('journal_mode = WAL');
        migrate(db, () => {}, migrations.slice(0, version));
        fill(db, version >= 2);
        db.close();
      });
      const wanted = plainDegreeHours(
        readings,
        [{ sensor: 'rack-1', level: 0, fromAt: 0 }],
        finishedAt,
        now,
        { datumC: 5, maxGapHours: 3 },
      );
      const [coat] = site.coatsAt('batch', now);
      expect(coat?.degreeHours).toBeCloseTo(wanted.low, 8);
      expect(coat?.degreeHoursHigh).toBeCloseTo(wanted.high, 8);
      expect(wanted.low).toBeGreaterThan(100);
      site.pack(now);
      site.restart();
      expect(site.coatsAt('batch', now)[0]?.degreeHours).toBeCloseTo(wanted.low, 8);
      const kept = site.reader.readingsBetween(1, 'air-temperature', 0, now, 1000);
      expect(kept.map(({ at, raw }) => ({ at, raw }))).toEqual(
        readings.map(({ at, value }) => ({ at, raw: value })),
      );
      const opened = openForReading(file);
      expect(versionOf(opened)).toBe(schemaVersion);
      opened.close();
      expect(existsSync(`${file}.before-version-${version + 1}`)).toBe(true);
    },
  );
});
