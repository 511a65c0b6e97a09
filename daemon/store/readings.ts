import type { Database } from 'better-sqlite3';
import type { Quantity } from '../contract/quantity.ts';
import type { ReadingFact } from '../rules/facts.ts';
import { mergedRuns, type ReadingRun } from '../rules/reading-run.ts';
import type { KeptReading } from './packed-hour.ts';
import { packedHours } from './packed-hours.ts';
import { codeOf } from './quantity-code.ts';
import { stagedReadings } from './staged-readings.ts';

export interface ReadingExtent {
  firstAt: number;
  lastAt: number;
}

/**
 * All readings, wherever they are. Those not packed yet are always looked up first: one that is
 * packed between the two look-ups is then seen twice, and counted once; the other way round it
 * could be missed.
 */
export function readingTable(db: Database) {
  const staged = stagedReadings(db);
  const packed = packedHours(db);
  return {
    staged,
    packed,
    /** The first `limit` readings from `from` to `to`, both included, ascending; all without it. */
    between: (
      sensorKey: number,
      quantity: Quantity,
      from: number,
      to: number,
      limit = Number.POSITIVE_INFINITY,
    ): ReadingFact[] => {
      const code = codeOf(quantity);
      const waiting = staged.between(sensorKey, code, from, to, limit === Infinity ? -1 : limit);
      const kept = packed.between(sensorKey, code, from, to, limit);
      return merged(kept, waiting)
        .slice(0, limit)
        .map((reading) => fact(sensorKey, quantity, reading));
    },
    /** The same as columns. */
    run: (
      sensorKey: number,
      quantity: Quantity,
      from: number,
      to: number,
      limit = Number.POSITIVE_INFINITY,
    ): ReadingRun => {
      const code = codeOf(quantity);
      const waiting = staged.run(sensorKey, code, from, to, limit === Infinity ? -1 : limit);
      return mergedRuns(packed.run(sensorKey, code, from, to, limit), waiting, limit);
    },
    /** The newest reading before a moment that carries none of the flags. */
    before: (
      sensorKey: number,
      quantity: Quantity,
      at: number,
      without = 0,
    ): ReadingFact | null => {
      const code = codeOf(quantity);
      const waiting = staged.before(sensorKey, code, at, without);
      const kept = packed.before(sensorKey, code, at, without);
      const found = waiting && kept ? (waiting.at > kept.at ? waiting : kept) : (waiting ?? kept);
      return found && fact(sensorKey, quantity, found);
    },
    /** The oldest reading after a moment that carries none of the flags. */
    after: (sensorKey: number, quantity: Quantity, at: number, without = 0): ReadingFact | null => {
      const code = codeOf(quantity);
      const waiting = staged.after(sensorKey, code, at, without);
      const kept = packed.after(sensorKey, code, at, without);
      const found = waiting && kept ? (waiting.at < kept.at ? waiting : kept) : (waiting ?? kept);
      return found && fact(sensorKey, quantity, found);
    },
    extent: (sensorKey: number, quantity: Quantity): ReadingExtent | null => {
      const code = codeOf(quantity);
      return joined(staged.extent(sensorKey, code), packed.extent(sensorKey, code));
    },
  };
}
export type ReadingTable = ReturnType<typeof readingTable>;

const fact = (sensorKey: number, quantity: Quantity, reading: KeptReading): ReadingFact => ({
  sensorKey,
  quantity,
  at: reading.at,
  raw: reading.raw,
  flags: reading.flags,
});

/** Two ascending lists as one; of two readings of one moment the first list’s stands. */
export function merged(
  kept: readonly KeptReading[],
  waiting: readonly KeptReading[],
): readonly KeptReading[] {
  const [firstWaiting, lastKept] = [waiting[0], kept.at(-1)];
  if (!firstWaiting) return kept;
  if (!lastKept || lastKept.at < firstWaiting.at) return [...kept, ...waiting];
  const all: KeptReading[] = [];
  let next = 0;
  for (const reading of kept) {
    for (let other = waiting[next]; other && other.at <= reading.at; other = waiting[++next]) {
      if (other.at < reading.at) all.push(other);
    }
    all.push(reading);
  }
  return [...all, ...waiting.slice(next)];
}

export function joined(a: ReadingExtent | null, b: ReadingExtent | null): ReadingExtent | null {
  if (!a || !b) return a ?? b;
  return { firstAt: Math.min(a.firstAt, b.firstAt), lastAt: Math.max(a.lastAt, b.lastAt) };
}
