import type { Database } from 'better-sqlite3';
import type { Quantity } from '../contract/quantity.ts';
import type { ReadingFact } from '../rules/facts.ts';
import { codeOf } from './quantity-code.ts';

interface ReadingRow {
  at: number;
  raw: number;
  flags: number;
}

/** What SQLite takes for no limit. */
const noLimit = -1;

export interface ReadingExtent {
  firstAt: number;
  lastAt: number;
}

export function readingTable(db: Database) {
  const insert = db.prepare(
    'insert or ignore into reading (sensor_key, quantity, at, raw, flags) values (?, ?, ?, ?, ?)',
  );
  const between = db.prepare<[number, number, number, number, number], ReadingRow>(
    `select at, raw, flags from reading
      where sensor_key = ? and quantity = ? and at between ? and ? order by at limit ?`,
  );
  const before = db.prepare<[number, number, number, number], ReadingRow>(
    `select at, raw, flags from reading
      where sensor_key = ? and quantity = ? and at < ? and flags & ? = 0 order by at desc limit 1`,
  );
  const after = db.prepare<[number, number, number, number], ReadingRow>(
    `select at, raw, flags from reading
      where sensor_key = ? and quantity = ? and at > ? and flags & ? = 0 order by at limit 1`,
  );
  const bounds = db.prepare<
    [{ sensorKey: number; code: number }],
    { first_at: number | null; last_at: number | null }
  >(
    `select (select min(at) from reading where sensor_key = @sensorKey and quantity = @code) as first_at,
            (select max(at) from reading where sensor_key = @sensorKey and quantity = @code) as last_at`,
  );
  const fact = (sensorKey: number, quantity: Quantity, row: ReadingRow): ReadingFact => ({
    sensorKey,
    quantity,
    at: row.at,
    raw: row.raw,
    flags: row.flags,
  });
  return {
    /** @returns false when this sensor already gave this quantity at this time: the first stands */
    insert: (reading: ReadingFact): boolean =>
      insert.run(
        reading.sensorKey,
        codeOf(reading.quantity),
        reading.at,
        reading.raw,
        reading.flags,
      ).changes === 1,
    /** The first `limit` readings from `from` to `to`, both included, ascending. */
    between: (
      sensorKey: number,
      quantity: Quantity,
      from: number,
      to: number,
      limit = noLimit,
    ): ReadingFact[] =>
      between
        .all(sensorKey, codeOf(quantity), from, to, limit)
        .map((row) => fact(sensorKey, quantity, row)),
    /** The newest reading before a moment that carries none of the flags. */
    before: (
      sensorKey: number,
      quantity: Quantity,
      at: number,
      without = 0,
    ): ReadingFact | null => {
      const row = before.get(sensorKey, codeOf(quantity), at, without);
      return row ? fact(sensorKey, quantity, row) : null;
    },
    /** The oldest reading after a moment that carries none of the flags. */
    after: (sensorKey: number, quantity: Quantity, at: number, without = 0): ReadingFact | null => {
      const row = after.get(sensorKey, codeOf(quantity), at, without);
      return row ? fact(sensorKey, quantity, row) : null;
    },
    extent: (sensorKey: number, quantity: Quantity): ReadingExtent | null => {
      const row = bounds.get({ sensorKey, code: codeOf(quantity) });
      return row && row.first_at !== null && row.last_at !== null
        ? { firstAt: row.first_at, lastAt: row.last_at }
        : null;
    },
  };
}
export type ReadingTable = ReturnType<typeof readingTable>;
