import type { Quantity } from '../contract/quantity.ts';
import type { ReadingFact } from '../rules/facts.ts';
import type { ReadingSource } from './ports.ts';

/** The longest stretch that is taken from the store at once, ms. */
const longestMs = 6 * 3_600_000;
/** So many readings are held at once, or more where there are very many series to look into. */
const leastHeld = 20_000;
/** Each look into a series costs about as much as so many of its readings. Assumption. */
const heldEach = 20;

/**
 * The readings of many series from one time to another, both included, ascending by time; those of one
 * moment in the order of the series. A page is a stretch of time, long where little was sent and short in
 * an hour in which a sensor sent a flood, so that no such hour is held in memory whole.
 *
 * @param series - sensor’s key and quantity
 */
export function* readingPages(
  readings: Pick<ReadingSource, 'readingsBetween'>,
  series: readonly (readonly [number, Quantity])[],
  from: number,
  to: number,
): Generator<ReadingFact[]> {
  const most = Math.max(leastHeld, heldEach * series.length);
  let spanMs = longestMs;
  for (let start = from; start <= to; ) {
    const end = Math.min(to, start + spanMs - 1);
    // A moment cannot be parted: no sensor has two readings of it.
    const page = heldAtMost(end > start ? most : Number.POSITIVE_INFINITY, start, end);
    if (page === null) {
      spanMs = Math.ceil((end - start + 1) / 2);
      continue;
    }
    yield page.sort((a, b) => a.at - b.at);
    start = end + 1;
    if (page.length < most / 4) spanMs = Math.min(longestMs, spanMs * 2);
  }

  /** @returns null where there are more, and nothing is held then */
  function heldAtMost(limit: number, start: number, end: number): ReadingFact[] | null {
    const held: ReadingFact[] = [];
    for (const [key, quantity] of series) {
      const room = limit - held.length + 1;
      for (const one of readings.readingsBetween(key, quantity, start, end, room)) held.push(one);
      if (held.length > limit) return null;
    }
    return held;
  }
}
