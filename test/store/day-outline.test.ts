import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { correction } from '../../daemon/corrected.ts';
import { gapsBetween } from '../../daemon/rules/reading-outline.ts';
import type { CalibrationFact } from '../../daemon/rules/sensor-facts.ts';
import { stretchStarts } from '../../daemon/rules/stretches.ts';
import { openForWriting } from '../../daemon/store/open.ts';
import { storeReader, storeWriter } from '../../daemon/store/store.ts';
import { group, hourMs, reading } from './site-of-facts.ts';
import { timeUnknown } from './store-sides.ts';

const minute = 60_000;
const dayMs = 24 * hourMs;
const quantity = 'air-temperature';
const firstAt = Date.UTC(2026, 4, 4);
const dayCount = 24;

interface Heard {
  at: number;
  raw: number;
}

const heard = fc.array(
  fc.record({
    at: fc.integer({ min: 0, max: dayCount * 24 * 6 - 1 }).map((i) => firstAt + i * 10 * minute),
    raw: fc.integer({ min: -300, max: 300 }).map((n) => n / 10),
  }),
  { minLength: 1, maxLength: 250 },
);
const moment = fc.integer({ min: 0, max: dayCount * 24 * 60 }).map((i) => firstAt + i * minute);
const calibrations = fc.array(
  fc.record({ fromAt: moment, add: fc.integer({ min: -50, max: 50 }).map((n) => n / 10) }),
  { maxLength: 3 },
);

/** A store and, beside it, all that it has to know: of one time the first reading stands. */
function openStore() {
  const db = openForWriting(':memory:');
  const write = storeWriter(db, timeUnknown);
  const known = new Map<number, number>();
  return {
    db,
    write,
    read: storeReader(db),
    hear(readings: readonly Heard[]): void {
      for (const { at, raw } of readings) if (!known.has(at)) known.set(at, raw);
      write.commitReadings(group(...readings.map(({ at, raw }) => reading('n1', at, raw))));
    },
    /** Packs what is closed by then; in so many slices of a few rows, or all of it. */
    pack(beforeAt: number, slices = Number.POSITIVE_INFINITY): void {
      for (let i = 0; i < slices; i++) if (!write.packClosedHours(beforeAt, 30).more) return;
    },
    all: (): Heard[] => [...known].map(([at, raw]) => ({ at, raw })).sort((a, b) => a.at - b.at),
  };
}

/** The lowest and the highest value of each stretch, a plain second way: look at every reading. */
function extremes(values: readonly { at: number; value: number }[], starts: readonly number[]) {
  const edges = [Number.NEGATIVE_INFINITY, ...starts, Number.POSITIVE_INFINITY];
  return edges.slice(1).map((end, i) => {
    const within = values.filter(({ at }) => at >= (edges[i] as number) && at < end);
    const found = within.map(({ value }) => value);
    return found.length === 0 ? null : [Math.min(...found), Math.max(...found)];
  });
}

const spansOfEach = (readings: readonly Heard[]) =>
  readings.map(({ at }) => ({ firstAt: at, lastAt: at }));

describe('a curve from days', () => {
  it('has the extremes of each stretch and every gap, as all its readings have', () => {
    fc.assert(
      fc.property(
        ...[heard, heard, heard, calibrations],
        fc.record({
          packed: moment,
          slices: fc.nat(40),
          from: moment,
          days: fc.integer({ min: 8, max: dayCount }),
          points: fc.integer({ min: 12, max: 16 }),
        }),
        (early, late, later, calibrated, { packed, slices, from, days, points }) => {
          const { write, read, hear, pack, all } = openStore();
          hear(early);
          pack(packed);
          hear(late);
          hear(early.map(({ at }) => ({ at, raw: 99 })));
          // Ended while days are being made: some are there, and some are not.
          pack(Number.MAX_SAFE_INTEGER, slices);
          hear(later);
          const to = from + days * dayMs;
          const changes = calibrated.map(({ fromAt }) => fromAt);
          const outline = read.readingOutline(1, quantity, from, to, points, changes);
          const facts = calibrated.map(
            ({ fromAt, add }, i): CalibrationFact => ({
              ...{ id: `c${i}`, sensorKey: 1, quantity, fromAt, how: { kind: 'offset', add } },
              ...{ note: null, recordedAt: 0, supersededAt: null },
            }),
          );
          const corrected = correction(facts);
          const values = (some: readonly Heard[]) =>
            some.map(({ at, raw }) => ({
              at,
              value: corrected({ sensorKey: 1, quantity, at, raw }),
            }));
          const heardThen = all().filter(({ at }) => at >= from && at <= to);
          const known = new Map(heardThen.map(({ at, raw }) => [at, raw]));
          for (const [i, { at, raw }] of outline.points.entries()) {
            expect(known.get(at)).toBe(raw);
            expect(at).toBeGreaterThan(outline.points[i - 1]?.at ?? Number.NEGATIVE_INFINITY);
          }
          for (const gapMs of [hourMs, 3 * hourMs]) {
            expect(gapsBetween(outline.spans, gapMs)).toEqual(
              gapsBetween(spansOfEach(heardThen), gapMs),
            );
          }
          if (outline.stretches === 'days') {
            expect(outline.points.length).toBeLessThanOrEqual(points);
            const [oldest, newest] = [heardThen[0] as Heard, heardThen.at(-1) as Heard];
            const first = Math.max(Math.ceil(from / dayMs), Math.floor(oldest.at / dayMs));
            const last = Math.min(Math.floor((to + 1) / dayMs) - 1, Math.floor(newest.at / dayMs));
            const inside = changes.filter((at) => at > from && at <= to);
            const stretches = Math.max(1, Math.floor(points / 2) - 2 - inside.length);
            const starts = stretchStarts(first, last, stretches, dayMs, inside);
            expect(extremes(values(outline.points), starts)).toEqual(
              extremes(values(heardThen), starts),
            );
          }
          write.close();
        },
      ),
      { numRuns: 80 },
    );
  });

  it('is the same once readings, and then hours, are let go', () => {
    fc.assert(
      fc.property(heard, heard, moment, moment, (early, late, readingsFrom, hoursFrom) => {
        const { write, read, hear, pack } = openStore();
        hear(early);
        pack(Number.MAX_SAFE_INTEGER);
        hear(late);
        pack(Number.MAX_SAFE_INTEGER);
        const asked = () =>
          read.readingOutline(1, quantity, firstAt, firstAt + dayCount * dayMs - 1, 10);
        const before = asked();
        while (write.letGo('readings', readingsFrom).more);
        expect(asked()).toEqual(before);
        while (write.letGo('hours', hoursFrom).more);
        expect(asked()).toEqual(before);
        write.close();
      }),
      { numRuns: 40 },
    );
  });

  it('reads no hours of days that are made, and makes anew the one that a late reading is of', () => {
    const { db, write, read, hear, pack } = openStore();
    const hours = dayCount * 24;
    hear(
      Array.from({ length: hours * 2 }, (_, i) => ({ at: firstAt + i * hourMs * 0.5, raw: 18 })),
    );
    pack(firstAt + dayCount * dayMs);
    const rows = () =>
      db.prepare<[], { day: number; count: number; high: number }>(
        'select day, count, high from packed_day order by day',
      );
    const before = rows().all();
    expect(before).toHaveLength(dayCount);
    const day = firstAt / dayMs + 7;
    hear([{ at: day * dayMs + 5 * hourMs + 1, raw: 31 }]);
    pack(firstAt + dayCount * dayMs);
    expect(rows().all()).toEqual(
      before.map((one) => (one.day === day ? { day, count: 49, high: 31 } : one)),
    );
    db.exec('delete from packed_hour');
    const { points, stretches } = read.readingOutline(
      1,
      quantity,
      firstAt,
      Number.MAX_SAFE_INTEGER,
      20,
    );
    expect(stretches).toBe('days');
    expect(Math.max(...points.map(({ raw }) => raw))).toBe(31);
    write.close();
  });

  it('does not wait for days of before they were made: these are made in the background, in steps', () => {
    const { db, write, read, hear, pack, all } = openStore();
    hear(
      Array.from({ length: dayCount * 24 }, (_, i) => ({ at: firstAt + i * hourMs, raw: i % 50 })),
    );
    pack(firstAt + dayCount * dayMs);
    // As a database is left by the program of before.
    db.exec('delete from packed_day; delete from packed_days_made');
    const asked = () =>
      read.readingOutline(1, quantity, firstAt, firstAt + dayCount * dayMs - 1, 10).points;
    const before = asked();
    expect(Math.max(...before.map(({ raw }) => raw))).toBe(49);
    const upgraded = storeWriter(db, timeUnknown);
    let steps = 0;
    while (upgraded.packClosedHours(firstAt + dayCount * dayMs, 60).more) {
      steps++;
      expect(asked()).toEqual(before);
    }
    expect(steps).toBeGreaterThan(5);
    expect(db.prepare('select sum(count) from packed_day').pluck().get()).toBe(all().length);
    write.close();
  });
});

describe('stretches of whole days', () => {
  it('are as many as asked, as even as days allow, and leave out none', () => {
    fc.assert(
      fc.property(
        fc.nat(20_000),
        fc.integer({ min: 1, max: 3000 }),
        fc.nat(600),
        (first, days, n) => {
          const starts = stretchStarts(first, first + days - 1, n + 1, 1);
          expect(starts).toHaveLength(Math.min(days, n + 1) + 1);
          expect([starts[0], starts.at(-1)]).toEqual([first, first + days]);
          const lengths = starts.slice(1).map((start, i) => start - (starts[i] as number));
          expect(Math.max(...lengths) - Math.min(...lengths)).toBeLessThanOrEqual(1);
        },
      ),
    );
  });
});
