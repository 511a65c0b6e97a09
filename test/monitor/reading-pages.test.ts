import { describe, expect, it } from 'vitest';
import type { Quantity } from '../../daemon/contract/quantity.ts';
import { readingPages } from '../../daemon/monitor/reading-pages.ts';
import type { ReadingFact } from '../../daemon/rules/facts.ts';

const start = Date.UTC(2026, 1, 1);
const hour = 3_600_000;
const quantity = 'air-temperature' as const;

/** A store of plain lists that notes how many readings were held at once. */
function source(all: readonly ReadingFact[]) {
  const answers: number[] = [];
  return {
    answers,
    readingsBetween(key: number, of: Quantity, from: number, to: number, limit = Infinity) {
      const own = all.filter((one) => one.sensorKey === key && one.quantity === of);
      const found = own.filter(({ at }) => at >= from && at <= to).slice(0, limit);
      answers.push(found.length);
      return found;
    },
  };
}

const every = (sensorKey: number, ms: number, from: number, to: number): ReadingFact[] =>
  Array.from({ length: Math.ceil((to - from) / ms) }, (_, i) => ({
    ...{ sensorKey, quantity, at: from + i * ms, raw: i, flags: 0 },
  }));

describe('readings of many series by pages', () => {
  // The fault injected: a node that sends a hundred readings a second for some minutes.
  const calm = [1, 2, 3].flatMap((key) => every(key, 60_000, start, start + 60 * hour));
  const flood = every(4, 10, start + 30 * hour, start + 30 * hour + 600_000);
  const series = [1, 2, 3, 4].map((key) => [key, quantity] as const);

  it('are all of them in the order of time, and of one moment in that of the series', () => {
    const pages = [...readingPages(source([...calm, ...flood]), series, start, start + 61 * hour)];
    const plain = [...calm, ...flood].sort((a, b) => a.at - b.at);
    expect(pages.flat()).toEqual(plain);
  });

  it('are never held by the hour, however many were sent in it', () => {
    const store = source([...calm, ...flood]);
    const pages = [...readingPages(store, series, start, start + 61 * hour)];
    expect(flood.length).toBe(60_000);
    expect(Math.max(...pages.map((page) => page.length))).toBeLessThanOrEqual(20_000);
    expect(Math.max(...store.answers)).toBeLessThanOrEqual(20_001);
    // Where little is sent pages are as long as ever.
    expect(pages.length).toBeLessThan(40);
  });

  it('are taken together where more series than a page holds speak at one moment', () => {
    const many = Array.from({ length: 30 }, (_, key) =>
      every(key, hour, start, start + hour),
    ).flat();
    const keys = many.map(({ sensorKey }) => [sensorKey, quantity] as const);
    const limited = { ...source(many) };
    expect([...readingPages(limited, keys, start, start)].flat()).toHaveLength(30);
    expect([...readingPages(limited, keys, start + 1, start)]).toEqual([]);
  });
});
