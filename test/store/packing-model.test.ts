import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Quantity } from '../../daemon/contract/quantity.ts';
import { day1, group, hourMs, reading } from './site-of-facts.ts';
import { timeUnknown } from './store-sides.ts';
import { type StoreToReopen, storeToReopen } from './store-to-reopen.ts';

const minute = 60_000;
const allTime = [0, Number.MAX_SAFE_INTEGER] as const;

/** A plain list that does what the store should do. */
function plainList() {
  const kept = new Map<string, { at: number; raw: number; flags: number }[]>();
  const of = (sensor: string, quantity: Quantity) => kept.get(`${sensor} ${quantity}`) ?? [];
  return {
    of,
    /** @returns whether it was new */
    insert(sensor: string, quantity: Quantity, at: number, raw: number, flags: number): boolean {
      const list = of(sensor, quantity);
      if (list.some((one) => one.at === at)) return false;
      list.push({ at, raw, flags });
      list.sort((a, b) => a.at - b.at);
      kept.set(`${sensor} ${quantity}`, list);
      return true;
    },
    series: () => [...kept.keys()].map((key) => key.split(' ') as [string, Quantity]),
  };
}

describe('readings whose hours are packed at any moment', () => {
  const hours = 5;
  const arrival = fc.record({
    sensor: fc.constantFrom('n1', 'n2', 'n3'),
    quantity: fc.constantFrom<Quantity>('air-temperature', 'relative-humidity'),
    // Coarse, so that repetitions and neighbours are frequent.
    at: fc.integer({ min: 0, max: hours * 30 }).map((i) => day1 + i * 2 * minute),
    raw: fc.oneof(
      fc.integer({ min: -500, max: 3000 }).map((n) => n / 100),
      fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e15, max: 1e15 }),
    ),
    flags: fc.constantFrom(0, 0, 0, timeUnknown, 5),
  });
  const step = fc.oneof(
    {
      weight: 5,
      arbitrary: fc.array(arrival, { maxLength: 40 }).map((arrivals) => ({ arrivals })),
    },
    {
      weight: 4,
      arbitrary: fc.record({
        packBeforeHour: fc.integer({ min: 0, max: hours + 1 }),
        limit: fc.constantFrom(1, 3, 20, 1000),
        slices: fc.integer({ min: 1, max: 4 }),
      }),
    },
    { weight: 1, arbitrary: fc.constant({ reopen: true as const }) },
    {
      weight: 1,
      arbitrary: fc.array(arrival, { maxLength: 10 }).map((rolledBack) => ({ rolledBack })),
    },
  );
  const question = fc.record({
    from: fc.integer({ min: -1, max: hours * 60 + 1 }).map((i) => day1 + i * minute),
    minutes: fc.integer({ min: 0, max: hours * 60 }),
    limit: fc.constantFrom(1, 2, 7, 1000),
    without: fc.constantFrom(0, timeUnknown),
  });

  it('answer like a plain list of them, through late ones, repetitions and restarts', () => {
    fc.assert(
      fc.property(
        fc.array(step, { minLength: 1, maxLength: 25 }),
        fc.array(question, { minLength: 3, maxLength: 3 }),
        (steps, questions) => {
          const store = storeToReopen();
          try {
            const list = plainList();
            for (const one of steps) {
              act(store, list, one);
              compare(store, list, questions.slice(0, 1));
            }
            store.packAll(day1 + (hours + 2) * hourMs, 10);
            expect(store.count('reading')).toBe(0);
            compare(store, list, questions);
          } finally {
            store.remove();
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  type Step = typeof step extends fc.Arbitrary<infer T> ? T : never;

  function act(store: StoreToReopen, list: ReturnType<typeof plainList>, one: Step): void {
    if ('arrivals' in one) {
      const fresh = one.arrivals.filter(({ sensor, quantity, at, raw, flags }) =>
        list.insert(sensor, quantity, at, raw, flags),
      ).length;
      const committed = store.write.commitReadings(group(...one.arrivals));
      expect(committed.fresh).toHaveLength(fresh);
      expect(committed.duplicates).toBe(one.arrivals.length - fresh);
    } else if ('rolledBack' in one) {
      const broken = { ...reading('n1', day1, 1), at: day1 + 0.5 };
      expect(() => store.write.commitReadings(group(...one.rolledBack, broken))).toThrow();
    } else if ('reopen' in one) {
      store.reopen();
    } else {
      for (let i = 0; i < one.slices; i++) {
        store.write.packClosedHours(day1 + one.packBeforeHour * hourMs, one.limit);
      }
    }
  }

  function compare(
    store: StoreToReopen,
    list: ReturnType<typeof plainList>,
    questions: { from: number; minutes: number; limit: number; without: number }[],
  ): void {
    for (const [sensor, quantity] of list.series()) {
      const key = store.read.sensorById(sensor)?.key ?? -1;
      const facts = list.of(sensor, quantity).map((one) => ({ sensorKey: key, quantity, ...one }));
      expect(store.read.readingsBetween(key, quantity, ...allTime)).toEqual(facts);
      expect(store.read.readingExtent(key, quantity)).toEqual({
        firstAt: facts[0]?.at,
        lastAt: facts.at(-1)?.at,
      });
      for (const { from, minutes, limit, without } of questions) {
        const to = from + minutes * minute;
        const within = facts.filter(({ at }) => at >= from && at <= to);
        const counts = facts.filter(({ flags }) => (flags & without) === 0);
        expect(store.read.readingsBetween(key, quantity, from, to)).toEqual(within);
        expect(store.read.readingsBetween(key, quantity, from, to, limit)).toEqual(
          within.slice(0, limit),
        );
        expect(store.read.readingBefore(key, quantity, from, without)).toEqual(
          counts.findLast(({ at }) => at < from) ?? null,
        );
        expect(store.read.readingAfter(key, quantity, from, without)).toEqual(
          counts.find(({ at }) => at > from) ?? null,
        );
      }
    }
  }
});
