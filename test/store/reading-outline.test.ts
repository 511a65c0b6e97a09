import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gapsBetween } from '../../daemon/rules/reading-outline.ts';
import { openForWriting } from '../../daemon/store/open.ts';
import { storeReader, storeWriter } from '../../daemon/store/store.ts';
import { build, moment } from '../http/built-site.ts';
import { day1, group, hourMs, reading } from './site-of-facts.ts';
import { timeUnknown } from './store-sides.ts';

const minute = 60_000;
const quantity = 'air-temperature';

function openStore() {
  const db = openForWriting(':memory:');
  const write = storeWriter(db, timeUnknown);
  return {
    write,
    read: storeReader(db),
    hear: (readings: { at: number; raw: number }[]) =>
      write.commitReadings(group(...readings.map(({ at, raw }) => reading('n1', at, raw)))),
    pack(beforeAt = Number.MAX_SAFE_INTEGER) {
      while (write.packClosedHours(beforeAt, 1000).more);
    },
  };
}

describe('the outline of a series', () => {
  const readings = fc.uniqueArray(
    fc.record({
      at: fc.integer({ min: 0, max: 20 * 60 }).map((i) => day1 + i * minute + (i % 7)),
      raw: fc.integer({ min: -300, max: 300 }).map((n) => n / 10),
    }),
    { minLength: 1, maxLength: 150, selector: ({ at }) => at },
  );
  const moments = fc
    .tuple(fc.integer({ min: -60, max: 1260 }), fc.integer({ min: 0, max: 1260 }))
    .map(([a, b]) => ({ from: day1 + a * minute, to: day1 + (a + b) * minute }));

  it('of many hours for few points keeps the extremes, and every gap that is one', () => {
    fc.assert(
      fc.property(readings, fc.integer({ min: 1, max: 3 }), fc.nat(20), (heard, points, packed) => {
        const { write, read, hear, pack } = openStore();
        hear(heard);
        pack(day1 + packed * hourMs);
        const [from, to] = [day1 - hourMs, day1 + 24 * hourMs];
        const all = read.readingsBetween(1, quantity, from, to);
        const rough = read.readingOutline(1, quantity, from, to, points);
        const fine = read.readingOutline(1, quantity, from, to);
        expect(rough.points.length).toBeLessThanOrEqual(fine.points.length);
        const known = new Map(all.map(({ at, raw }) => [at, raw]));
        for (const [i, { at, raw }] of rough.points.entries()) {
          expect(known.get(at)).toBe(raw);
          expect(at).toBeGreaterThan(rough.points[i - 1]?.at ?? Number.NEGATIVE_INFINITY);
        }
        const raws = (some: readonly { raw: number }[]) => some.map(({ raw }) => raw);
        expect(Math.min(...raws(rough.points))).toBe(Math.min(...raws(all)));
        expect(Math.max(...raws(rough.points))).toBe(Math.max(...raws(all)));
        for (const longestMs of [hourMs, 3 * hourMs]) {
          expect(gapsBetween(rough.spans, longestMs)).toEqual(gapsBetween(fine.spans, longestMs));
        }
        write.close();
      }),
    );
  });

  it('of stretches of hours has near every reading one as low and one as high, of the same calibration', () => {
    const at = (least: number, most: number) =>
      fc.integer({ min: least * 60, max: most * 60 }).map((i) => day1 + i * minute);
    const heard = (least: number) =>
      fc.array(fc.record({ at: at(0, 48), raw: fc.integer({ min: -300, max: 300 }) }), {
        ...{ minLength: least, maxLength: 150, size: 'max' },
      });
    const asked = fc.record({
      ...{ from: at(-5, 12), to: at(30, 60), packed: at(20, 50) },
      points: fc.integer({ min: 12, max: 30 }),
      calibrated: fc.array(at(-5, 50), { maxLength: 3 }),
    });
    let together = 0;
    fc.assert(
      fc.property(
        ...[heard(60), heard(0), asked],
        (early, late, { from, to, packed, points, calibrated }) => {
          const { write, read, hear, pack } = openStore();
          hear(early);
          pack(packed);
          hear(late);
          const all = read.readingsBetween(1, quantity, from, to);
          const outline = read.readingOutline(1, quantity, from, to, points, calibrated);
          const known = new Map(all.map(({ at, raw }) => [at, raw]));
          for (const [i, { at, raw }] of outline.points.entries()) {
            expect(known.get(at)).toBe(raw);
            expect(at).toBeGreaterThan(outline.points[i - 1]?.at ?? Number.NEGATIVE_INFINITY);
          }
          for (const longestMs of [hourMs, 3 * hourMs]) {
            const each = all.map(({ at }) => ({ firstAt: at, lastAt: at }));
            expect(gapsBetween(outline.spans, longestMs)).toEqual(gapsBetween(each, longestMs));
          }
          if (outline.stretches !== null) {
            together++;
            const hours = Math.ceil((to - from) / hourMs) + 1;
            const stretches = Math.floor(points / 2) - 2 - calibrated.length;
            const nearMs = Math.ceil(hours / Math.max(1, stretches)) * hourMs;
            const side = (at: number) => calibrated.filter((one) => one <= at).length;
            for (const { at, raw } of all) {
              const near = outline.points.filter(
                (one) => Math.abs(one.at - at) < nearMs && side(one.at) === side(at),
              );
              expect(Math.min(...near.map((one) => one.raw))).toBeLessThanOrEqual(raw);
              expect(Math.max(...near.map((one) => one.raw))).toBeGreaterThanOrEqual(raw);
            }
          }
          write.close();
        },
      ),
    );
    expect(together).toBeGreaterThan(50);
  });

  it('has the extremes of each hour and every gap, however much of it is packed', () => {
    fc.assert(
      fc.property(readings, readings, moments, fc.nat(20), (early, late, span, packedHours) => {
        const { write, read, hear, pack } = openStore();
        hear(early);
        pack(day1 + packedHours * hourMs);
        hear(late);
        const { from, to } = span;
        const all = read.readingsBetween(1, quantity, from, to);
        const { points, spans } = read.readingOutline(1, quantity, from, to);
        const known = new Map(all.map(({ at, raw }) => [at, raw]));
        for (const [i, { at, raw }] of points.entries()) {
          expect(known.get(at)).toBe(raw);
          expect(at).toBeGreaterThan(points[i - 1]?.at ?? Number.NEGATIVE_INFINITY);
        }
        for (let hour = Math.floor(from / hourMs); hour * hourMs <= to; hour++) {
          const within = (one: { at: number }) => Math.floor(one.at / hourMs) === hour;
          const raws = all.filter(within).map(({ raw }) => raw);
          const kept = points.filter(within).map(({ raw }) => raw);
          expect(Math.min(...kept)).toBe(Math.min(...raws));
          expect(Math.max(...kept)).toBe(Math.max(...raws));
        }
        for (const gapMs of [hourMs, 3 * hourMs]) {
          const each = all.map(({ at }) => ({ firstAt: at, lastAt: at }));
          expect(gapsBetween(spans, gapMs)).toEqual(gapsBetween(each, gapMs));
        }
        write.close();
      }),
      { numRuns: 60 },
    );
  });

  it('draws a season as its readings would: peaks stay, gaps stay empty', async () => {
    const store = openStore();
    const { read } = store;
    const hours = 60 * 24;
    const season = Array.from({ length: hours * 12 }, (_, i) => ({
      at: day1 + i * 5 * minute,
      raw:
        i === 7777 ? 41.5 : i === 9999 ? -12.25 : Math.round(1800 + 300 * Math.sin(i / 300)) / 100,
    })).filter(({ at }) => at < day1 + 500 * hourMs || at > day1 + 505 * hourMs);
    store.hear(season);
    store.pack(day1 + (hours - 3) * hourMs);
    let lookedUp = 0;
    const site = await build({
      readings: {
        readingsBetween: (...args) => {
          const found = read.readingsBetween(...args);
          lookedUp += found.length;
          return found;
        },
        readingOutline: read.readingOutline,
        newestReading: () => null,
        corrected: ({ raw }) => raw,
        refused: () => [],
      },
    });
    await site.hear('n1', quantity, [[day1, 18]]);
    const ask = (points: number, from = day1) =>
      site.call('series', {
        query: { sensor: 'n1', quantity, points: String(points), from: moment(from) },
      });
    const chart = await ask(400);
    expect(lookedUp).toBe(0);
    expect(chart.at.length).toBeLessThanOrEqual(401);
    expect(chart.raw).toContain(41.5);
    expect(chart.raw).toContain(-12.25);
    const gap = chart.value.indexOf(null);
    expect(chart.value.filter((one) => one === null)).toHaveLength(1);
    expect(chart.at[gap]).toBe((day1 + 500 * hourMs - 5 * minute + 1) / 1000);
    // Few hours at many points: every reading is there.
    const lastDay = await ask(400, day1 + (hours - 24) * hourMs);
    expect(lastDay.at).toHaveLength(24 * 12);
    store.write.close();
  });
});
