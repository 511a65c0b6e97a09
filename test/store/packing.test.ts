import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { migrations } from '../../daemon/store/migrate.ts';
import { databaseFile, openForReading, openForWriting } from '../../daemon/store/open.ts';
import { packHour } from '../../daemon/store/packed-hour.ts';
import { readingTable } from '../../daemon/store/readings.ts';
import { storeReader, storeWriter } from '../../daemon/store/store.ts';
import { day1, group, hourMs, reading } from './site-of-facts.ts';
import { temporaryFolder, timeUnknown } from './store-sides.ts';
import { type StoreToReopen, storeToReopen } from './store-to-reopen.ts';

const minute = 60_000;
const allTime = [0, Number.MAX_SAFE_INTEGER] as const;

describe('packing', () => {
  let store: StoreToReopen;
  beforeEach(() => {
    store = storeToReopen();
  });
  afterEach(() => store.remove());

  const key = () => store.read.sensorById('n1')?.key ?? -1;
  const kept = () => store.read.readingsBetween(key(), 'air-temperature', ...allTime);
  const anHour = (sensors: string[], start = day1) =>
    group(
      ...Array.from({ length: 60 }, (_, i) =>
        sensors.map((sensor) => reading(sensor, start + i * minute, 18 + i / 100)),
      ).flat(),
    );

  it('takes hours that are closed, and leaves the open one', () => {
    store.write.commitReadings(anHour(['n1']));
    store.write.commitReadings(group(reading('n1', day1 + hourMs, 19)));
    expect(store.write.packClosedHours(day1 + hourMs - 1, 1000)).toEqual({
      readings: 0,
      more: false,
    });
    expect(store.write.packClosedHours(day1 + hourMs, 1000)).toEqual({ readings: 60, more: false });
    expect(store.count('packed_hour')).toBe(1);
    expect(store.count('reading')).toBe(1);
    expect(kept()).toHaveLength(61);
  });

  it('works on no more readings at once than it is told', () => {
    const sensors = ['n1', 'n2', 'n3', 'n4', 'n5'];
    store.write.commitReadings(anHour(sensors));
    const sizes: number[] = [];
    for (let more = true; more; ) {
      const left = store.count('reading') ?? 0;
      const slice = store.write.packClosedHours(day1 + 2 * hourMs, 125);
      more = slice.more;
      sizes.push(slice.readings);
      expect(left - (store.count('reading') ?? 0)).toBeLessThanOrEqual(125 + sensors.length);
    }
    expect(Math.max(...sizes)).toBeLessThanOrEqual(125);
    expect(sizes.reduce((a, b) => a + b)).toBe(300);
    expect(kept()).toHaveLength(60);
  });

  it('ended between two slices loses nothing and doubles nothing', () => {
    store.write.commitReadings(anHour(['n1', 'n2', 'n3']));
    const all = kept();
    for (let slices = 0; store.count('reading') !== 0; slices++) {
      for (let i = 0; i <= slices; i++) store.write.packClosedHours(day1 + 2 * hourMs, 60);
      expect(kept()).toEqual(all);
      store.reopen();
      expect(kept()).toEqual(all);
      expect(store.write.commitReadings(anHour(['n1'])).fresh).toEqual([]);
    }
  });

  it('is not seen from the side: a reading packed between two look-ups is there once', () => {
    store.write.commitReadings(anHour(['n1']));
    const all = kept();
    const table = readingTable(openForReading(store.file));
    for (const name of ['between', 'before', 'after', 'extent'] as const) {
      store.write.commitReadings(anHour(['n1'], day1 + hourMs));
      const lookUp = table.packed[name] as (...args: unknown[]) => unknown;
      Object.assign(table.packed, {
        [name]: (...args: unknown[]) => {
          store.packAll(day1 + 9 * hourMs);
          return lookUp(...args);
        },
      });
    }
    expect(table.between(key(), 'air-temperature', day1, day1 + hourMs - 1)).toEqual(all);
    expect(table.before(key(), 'air-temperature', day1 + hourMs)).toEqual(all.at(-1));
  });

  it('merges what comes late into its hour, and touches no other', () => {
    store.write.commitReadings(anHour(['n1']));
    store.write.commitReadings(anHour(['n1'], day1 + hourMs));
    store.packAll(day1 + 9 * hourMs);
    const rows = () =>
      store.db.prepare<[], { hour: number; packed: Buffer }>('select * from packed_hour').all();
    const before = rows();
    store.write.commitReadings(group(reading('n1', day1 + 90_001, 21.5), reading('n1', day1, 99)));
    expect(kept()).toHaveLength(121);
    store.packAll(day1 + 9 * hourMs);
    expect(store.count('reading')).toBe(0);
    expect(kept().filter(({ at }) => at === day1 || at === day1 + 90_001)).toMatchObject([
      { raw: 18 },
      { raw: 21.5 },
    ]);
    expect(rows()[1]).toEqual(before[1]);
    expect(rows()[0]).toMatchObject({ count: 61, high: 21.5, high_ms: 90_001 });
  });

  it('gives back an hour of a flood: forty readings a second of one sensor', () => {
    // The fault injected: more readings in one row than a function takes as arguments.
    store.write.commitReadings(group(reading('n1', day1 + hourMs, 19)));
    const flood = Array.from({ length: 144_000 }, (_, i) => ({
      ...{ at: day1 + i * 25, raw: 18 + (i % 7) / 100, flags: 0 },
    }));
    const { packed } = readingTable(store.db);
    packed.save(key(), 1, packHour(flood));
    expect(kept()).toHaveLength(flood.length + 1);
    const some = store.read.readingsBetween(key(), 'air-temperature', day1 + 30, day1 + 10_000, 3);
    expect(some.map(({ at }) => at - day1)).toEqual([50, 75, 100]);
  });

  it('keeps a minute’s cadence of an ordinary sensor under 6 bytes a reading', () => {
    const jitter = fc.sample(fc.integer({ min: -900, max: 900 }), {
      numRuns: 24 * 60 * 3,
      seed: 1,
    });
    const noise = fc.sample(fc.integer({ min: -6, max: 6 }), { numRuns: 24 * 60 * 3, seed: 2 });
    const readings = jitter.map((ms, i) =>
      reading('n1', day1 + i * minute + 30_000 + ms, (1800 + (noise[i] ?? 0)) / 100),
    );
    store.write.commitReadings(group(...readings));
    store.packAll(day1 + 99 * hourMs);
    const bytes = store.db
      .prepare<[], number>("select sum(pgsize) from dbstat where name = 'packed_hour'")
      .pluck();
    expect((bytes.get() ?? Number.NaN) / readings.length).toBeLessThan(6);
  });

  it('finds the readings of a file from before there was packing', () => {
    const { folder, remove } = temporaryFolder();
    const file = databaseFile(folder);
    const before = openForWriting(file, migrations.slice(0, 1));
    before.exec(`insert into sensor (key, id, first_seen_at) values (1, 'n1', ${day1})`);
    const insert = before.prepare('insert into reading values (1, 1, ?, ?, 4)');
    for (const at of [day1, day1 + 14_999, day1 + 15_000]) insert.run(at, at / 7);
    before.close();
    const write = storeWriter(openForWriting(file), timeUnknown);
    const read = storeReader(openForReading(file));
    const all = () => read.readingsBetween(1, 'air-temperature', ...allTime);
    expect(all()).toEqual(
      [day1, day1 + 14_999, day1 + 15_000].map((at) => ({
        sensorKey: 1,
        quantity: 'air-temperature',
        at,
        raw: at / 7,
        flags: 4,
      })),
    );
    expect(write.commitReadings(group(reading('n1', day1 + 15_000, 1)))).toMatchObject({
      duplicates: 1,
    });
    read.close();
    write.close();
    remove();
  });
});
