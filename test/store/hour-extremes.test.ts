import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { correction } from '../../daemon/corrected.ts';
import type { CalibrationFact } from '../../daemon/rules/sensor-facts.ts';
import { openForWriting } from '../../daemon/store/open.ts';
import { storeReader, storeWriter } from '../../daemon/store/store.ts';
import { group, hourMs, reading } from './site-of-facts.ts';
import { timeUnknown } from './store-sides.ts';

const minute = 60_000;
const quantity = 'air-temperature';
const firstAt = Date.UTC(2026, 4, 4);
const hours = 60;

interface Heard {
  at: number;
  raw: number;
}

const moment = fc.integer({ min: 0, max: hours * 60 - 1 }).map((i) => firstAt + i * minute);
const heard = fc.array(
  fc.record({ at: moment, raw: fc.integer({ min: -300, max: 300 }).map((n) => n / 10) }),
  { minLength: 1, maxLength: 150, size: 'max' },
);
const calibrations = fc.array(
  fc.record({ fromAt: moment, add: fc.integer({ min: -50, max: 50 }).map((n) => n / 10) }),
  { maxLength: 3 },
);

function openStore() {
  const db = openForWriting(':memory:');
  const write = storeWriter(db, timeUnknown);
  return {
    write,
    read: storeReader(db),
    hear: (readings: readonly Heard[]) =>
      write.commitReadings(group(...readings.map(({ at, raw }) => reading('n1', at, raw)))),
    pack(beforeAt: number): void {
      while (write.packClosedHours(beforeAt, 1000).more);
    },
  };
}
type Opened = ReturnType<typeof openStore>;

const facts = (calibrated: readonly { fromAt: number; add: number }[]) =>
  calibrated.map(
    ({ fromAt, add }, i): CalibrationFact => ({
      ...{ id: `c${i}`, sensorKey: 1, quantity, fromAt, how: { kind: 'offset', add } },
      ...{ note: null, recordedAt: 0, supersededAt: null },
    }),
  );

/** What a curve makes of the columns. */
function corrected({ read }: Opened, from: number, to: number, of: readonly CalibrationFact[]) {
  const value = correction(of);
  const changes = of.map(({ fromAt }) => fromAt as number);
  const found = new Map<number, { low: number; high: number }>();
  read.hourExtremes(1, quantity, from, to, changes, (hour, at, lowest, highest) => {
    const of = (raw: number) => value({ sensorKey: 1, quantity, at, raw });
    const { low, high } = found.get(hour) ?? { low: 1e9, high: -1e9 };
    found.set(hour, { low: Math.min(low, of(lowest)), high: Math.max(high, of(highest)) });
  });
  return found;
}

describe('the extremes of every hour', () => {
  it('are those of its corrected readings, however much is packed', () => {
    fc.assert(
      fc.property(
        ...[heard, heard, moment, moment, moment, calibrations],
        (early, late, packed, a, b, calibrated) => {
          const store = openStore();
          store.hear(early);
          store.pack(packed);
          store.hear(late);
          const [from, to] = [Math.min(a, b), Math.max(a, b)];
          const known = facts(calibrated);
          const value = correction(known);
          const expected = new Map<number, { low: number; high: number }>();
          for (const one of store.read.readingsBetween(1, quantity, from, to)) {
            const hour = Math.floor(one.at / hourMs);
            const [of, { low, high }] = [
              value(one),
              expected.get(hour) ?? { low: 1e9, high: -1e9 },
            ];
            expected.set(hour, { low: Math.min(low, of), high: Math.max(high, of) });
          }
          expect(corrected(store, from, to, known)).toEqual(expected);
          store.write.close();
        },
      ),
    );
  });

  it('stay once readings are let go, and are those of their day once hours are', () => {
    fc.assert(
      fc.property(heard, moment, (all, letGoBefore) => {
        const store = openStore();
        store.hear(all);
        store.pack(Number.MAX_SAFE_INTEGER);
        const asked = () => corrected(store, firstAt, firstAt + hours * hourMs, []);
        const before = asked();
        while (store.write.letGo('readings', letGoBefore).more);
        expect(asked()).toEqual(before);
        while (store.write.letGo('hours', letGoBefore).more);
        const after = asked();
        const dayOf = (hour: number) => Math.floor(hour / 24);
        const firstKept = dayOf(letGoBefore / hourMs) * 24;
        for (const [hour, extremes] of before) {
          if (hour >= firstKept) expect(after.get(hour)).toEqual(extremes);
          const ofDay = (from: typeof before) =>
            [...from].filter(([one]) => dayOf(one) === dayOf(hour)).map(([, one]) => one);
          expect(Math.min(...ofDay(after).map(({ low }) => low))).toBe(
            Math.min(...ofDay(before).map(({ low }) => low)),
          );
          expect(Math.max(...ofDay(after).map(({ high }) => high))).toBe(
            Math.max(...ofDay(before).map(({ high }) => high)),
          );
        }
        store.write.close();
      }),
      { numRuns: 40 },
    );
  });
});
