import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { spaceDoubts } from '../../daemon/store/free-space.ts';
import { openForWriting } from '../../daemon/store/open.ts';
import { storeReader, storeWriter } from '../../daemon/store/store.ts';
import { storeUpkeep } from '../../daemon/store/upkeep.ts';
import { group, hourMs, reading } from './site-of-facts.ts';
import { inThisThread, temporaryFolder, timeUnknown } from './store-sides.ts';

const quantity = 'air-temperature';
const dayMs = 24 * hourMs;
const firstDay = Date.UTC(2026, 4, 4);
const now = firstDay + 10 * dayMs;

/** Ten days of two sensors, one reading in ten minutes, and one peak a day. */
function filled() {
  const db = openForWriting(':memory:');
  const write = storeWriter(db, timeUnknown);
  for (let at = firstDay; at < now; at += 10 * 60_000) {
    const day = Math.floor((at - firstDay) / dayMs);
    const raw = at % dayMs === 15 * hourMs ? 30 + day : 18;
    write.commitReadings(group(reading('n1', at, raw), reading('n2', at + 7, raw / 2)));
  }
  while (write.packClosedHours(now, 1000).more);
  return { db, write, read: storeReader(db) };
}

describe('what is no longer to be kept', () => {
  let store: ReturnType<typeof filled>;
  beforeEach(() => {
    store = filled();
  });
  afterEach(() => store.db.close());

  const count = (table: string, where = 'true') =>
    store.db.prepare<[], number>(`select count(*) from ${table} where ${where}`).pluck().get();
  const withoutHours = "day * 24 < (select hour from kept_from where level = 'hours')";
  const upkeep = (days: { readings?: number; hours?: number; days?: number }) =>
    storeUpkeep(
      inThisThread(store.write),
      {
        readingDays: days.readings ?? null,
        hourDays: days.hours ?? null,
        dayDays: days.days ?? null,
      },
      () => {},
    ).letGo(now);
  const shape = () => store.read.readingOutline(1, quantity, 0, Number.MAX_SAFE_INTEGER).points;
  const peaks = () =>
    shape()
      .map(({ raw }) => raw)
      .filter((raw) => raw >= 30);
  const all = () => store.read.readingsBetween(1, quantity, 0, Number.MAX_SAFE_INTEGER);

  it('is nothing unless it is told', async () => {
    await upkeep({});
    expect(all()).toHaveLength(1440);
    expect(store.read.readingExtent(1, quantity)?.firstAt).toBe(firstDay);
  });

  it('goes by whole days, and leaves the extremes and the sum of each hour', async () => {
    const sums = 'select sum(count), sum(sum), min(low), max(high) from packed_hour';
    const before = store.db.prepare(sums).get();
    await upkeep({ readings: 4 });
    expect(all()).toHaveLength(4 * 144);
    expect(all()[0]?.at).toBe(now - 4 * dayMs);
    expect(store.read.readingExtent(1, quantity)?.firstAt).toBe(now - 4 * dayMs);
    expect(store.read.readingBefore(1, quantity, now - 4 * dayMs)).toBeNull();
    expect(count('packed_hour', 'packed is null')).toBe(2 * 6 * 24);
    expect(store.db.prepare(sums).get()).toEqual(before);
    expect(peaks()).toEqual([30, 31, 32, 33, 34, 35, 36, 37, 38, 39]);
  });

  it('leaves the extremes of each day, at their time, once hours go too', async () => {
    await upkeep({ readings: 3, hours: 5 });
    expect(count('packed_hour')).toBe(2 * 5 * 24);
    expect(count('packed_day', withoutHours)).toBe(2 * 5);
    expect(peaks()).toEqual([30, 31, 32, 33, 34, 35, 36, 37, 38, 39]);
    expect(shape().find(({ raw }) => raw === 30)?.at).toBe(firstDay + 15 * hourMs);
    expect(
      store.db
        .prepare(`select sum(count) as n, sum(sum) as sum from packed_day where ${withoutHours}`)
        .get(),
    ).toEqual({ n: 2 * 5 * 144, sum: 1.5 * (5 * 143 * 18 + 30 + 31 + 32 + 33 + 34) });
    await upkeep({ readings: 3, hours: 5, days: 8 });
    expect(peaks()).toEqual([32, 33, 34, 35, 36, 37, 38, 39]);
  });

  it('never takes hours whose readings are kept', async () => {
    await upkeep({ readings: 6, hours: 2 });
    expect(all()).toHaveLength(6 * 144);
    expect(count('packed_day', withoutHours)).toBe(2 * 4);
  });

  it('does not come back: a reading sent again from then is a repetition', async () => {
    await upkeep({ readings: 4 });
    const old = reading('n1', firstDay + 61_000, 99);
    expect(store.write.commitReadings(group(old))).toMatchObject({ fresh: [], duplicates: 1 });
    const late = reading('n1', now - 4 * dayMs + 61_000, 19);
    expect(store.write.commitReadings(group(late)).fresh).toHaveLength(1);
  });

  it('goes in steps that are each whole: ended between them, the rest goes later', () => {
    expect(store.write.letGo('readings', now - 4 * dayMs)).toEqual({ more: true });
    expect(all()).toHaveLength(9 * 144);
    expect(store.write.letGo('hours', now)).toEqual({ more: false });
    expect(count('packed_day', withoutHours)).toBe(2);
  });
});

describe('the room on the disk', () => {
  const gib = 1_073_741_824;
  const doubts = (freeBytes: number, totalBytes: number) =>
    spaceDoubts('/', gib / 2, () => ({ freeBytes, totalBytes }));

  it('is told of when it gets little, with how much is left', () => {
    expect(doubts(gib, 32 * gib)).toEqual([]);
    expect(doubts(gib / 4, 32 * gib)[0]?.text).toMatch(/^Only 256 MiB are left on the disk/);
  });

  it('of a small disk is not little for that', () => {
    expect(doubts(gib / 4, gib)).toEqual([]);
    expect(doubts(gib / 40, gib)).toHaveLength(1);
  });

  it('is that of the folder’s own disk', () => {
    const { folder, remove } = temporaryFolder();
    expect(spaceDoubts(folder, 0)).toEqual([]);
    remove();
    // The fault injected: the folder is moved away, or its disk unmounted, beneath the daemon.
    expect(spaceDoubts(folder, 0).map(({ text }) => text)).toEqual([
      expect.stringMatching(/cannot be reached.*put the folder back, and restart/),
    ]);
  });
});
