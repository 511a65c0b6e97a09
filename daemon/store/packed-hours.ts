import type { Database } from 'better-sqlite3';
import { placeFrom, type ReadingRun, type RunBuilder, runBuilder } from '../rules/reading-run.ts';
import {
  hourColumns,
  hourMs,
  hourOf,
  type KeptReading,
  type PackedHour,
  timesOfHour,
  unpackHour,
} from './packed-hour.ts';

interface PackedRow {
  hour: number;
  count: number;
  packed: Uint8Array;
}

interface Edge {
  hour: number;
  ms: number;
}

/** Hours that are looked up at once. */
const pageHours = 256;

/** Readings of hours that are closed, one row an hour. Quantities are known by their code here. */
export function packedHours(db: Database) {
  const save = db.prepare(
    `insert or replace into packed_hour
       (sensor_key, quantity, hour, count, first_ms, last_ms, low_ms, high_ms, low, high, sum, packed)
     values (@sensorKey, @code, @hour, @count, @firstMs, @lastMs, @lowMs, @highMs, @low, @high, @sum, @packed)`,
  );
  const one = db.prepare<[number, number, number], PackedRow>(
    `select hour, count, packed from packed_hour
      where sensor_key = ? and quantity = ? and hour = ? and packed is not null`,
  );
  const up = db.prepare<[number, number, number, number, number], PackedRow>(
    `select hour, count, packed from packed_hour
      where sensor_key = ? and quantity = ? and hour between ? and ? and packed is not null
      order by hour limit ?`,
  );
  const down = db.prepare<[number, number, number, number, number], PackedRow>(
    `select hour, count, packed from packed_hour
      where sensor_key = ? and quantity = ? and hour between ? and ? and packed is not null
      order by hour desc limit ?`,
  );
  const first = db.prepare<[number, number, number], Edge>(
    `select hour, first_ms as ms from packed_hour
      where sensor_key = ? and quantity = ? and hour >= ? order by hour limit 1`,
  );
  const last = db.prepare<[number, number, number], Edge>(
    `select hour, last_ms as ms from packed_hour
      where sensor_key = ? and quantity = ? and hour >= ? order by hour desc limit 1`,
  );
  const kept = db
    .prepare<[], number>("select hour from kept_from where level = 'readings'")
    .pluck();
  /** The first hour of which readings are still kept. */
  const keptFrom = () => kept.get() ?? Number.MIN_SAFE_INTEGER;
  const timeOf = (edge: Edge) => edge.hour * hourMs + edge.ms;

  /** The hours that a time reaches into, in the order asked for. */
  function* walk(
    sensorKey: number,
    code: number,
    from: number,
    to: number,
    order: 'up' | 'down',
    firstPage: number,
  ): Generator<PackedRow> {
    let fromHour = Math.max(hourOf(from), keptFrom());
    let toHour = hourOf(to);
    let page = firstPage;
    while (fromHour <= toHour) {
      const rows = (order === 'up' ? up : down).all(sensorKey, code, fromHour, toHour, page);
      yield* rows;
      const end = rows.at(-1);
      if (!end || rows.length < page) return;
      if (order === 'up') fromHour = end.hour + 1;
      else toHour = end.hour - 1;
      page = pageHours;
    }
  }

  return {
    keptFrom,
    save: (sensorKey: number, code: number, hour: PackedHour): void => {
      const start = hour.hour * hourMs;
      save.run({
        sensorKey,
        code,
        hour: hour.hour,
        count: hour.count,
        firstMs: hour.firstAt - start,
        lastMs: hour.lastAt - start,
        lowMs: hour.lowAt - start,
        highMs: hour.highAt - start,
        low: hour.low,
        high: hour.high,
        sum: hour.sum,
        packed: hour.packed,
      });
    },
    /** The readings of one hour; none when it is not packed. */
    ofHour: (sensorKey: number, code: number, hour: number): ReadingRun => {
      const row = one.get(sensorKey, code, hour);
      const built = runBuilder();
      if (row) addHour(built, row, Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY, Infinity);
      return built.run();
    },
    /** The times of the readings of one hour, ascending; none when it is not packed. */
    times: (sensorKey: number, code: number, hour: number): Float64Array => {
      const row = one.get(sensorKey, code, hour);
      return row ? timesOfHour(row.hour, row.count, row.packed) : new Float64Array();
    },
    /** The first `limit` readings from `from` to `to`, both included, ascending. */
    between: (
      sensorKey: number,
      code: number,
      from: number,
      to: number,
      limit: number,
    ): KeptReading[] => {
      const found: KeptReading[] = [];
      for (const row of walk(sensorKey, code, from, to, 'up', pageHours)) {
        // One by one: an hour of a flood holds more than can be handed to a function at once.
        for (const reading of unpackHour(row.hour, row.count, row.packed, from, to)) {
          found.push(reading);
          if (found.length === limit) return found;
        }
      }
      return found;
    },
    /** The same as columns. */
    run: (sensorKey: number, code: number, from: number, to: number, limit: number): ReadingRun => {
      const built = runBuilder();
      for (const row of walk(sensorKey, code, from, to, 'up', pageHours)) {
        addHour(built, row, from, to, limit);
        if (built.length === limit) break;
      }
      return built.run();
    },
    before: (sensorKey: number, code: number, at: number, without: number): KeptReading | null => {
      const { MIN_SAFE_INTEGER } = Number;
      for (const row of walk(sensorKey, code, MIN_SAFE_INTEGER, at, 'down', 2)) {
        const { times, values, flags } = hourColumns(row.hour, row.count, row.packed);
        for (let i = placeFrom(times, row.count, at) - 1; i >= 0; i--) {
          const bits = flags?.[i] ?? 0;
          if ((bits & without) !== 0) continue;
          return { at: times[i] as number, raw: values[i] as number, flags: bits };
        }
      }
      return null;
    },
    after: (sensorKey: number, code: number, at: number, without: number): KeptReading | null => {
      const { MAX_SAFE_INTEGER } = Number;
      for (const row of walk(sensorKey, code, at, MAX_SAFE_INTEGER, 'up', 2)) {
        const { times, values, flags } = hourColumns(row.hour, row.count, row.packed);
        for (let i = placeFrom(times, row.count, Math.floor(at) + 1); i < row.count; i++) {
          const bits = flags?.[i] ?? 0;
          if ((bits & without) !== 0) continue;
          return { at: times[i] as number, raw: values[i] as number, flags: bits };
        }
      }
      return null;
    },
    extent: (sensorKey: number, code: number): { firstAt: number; lastAt: number } | null => {
      const from = keptFrom();
      const start = first.get(sensorKey, code, from);
      const end = last.get(sensorKey, code, from);
      return start && end ? { firstAt: timeOf(start), lastAt: timeOf(end) } : null;
    },
    /** The newest packed hour of a sensor’s quantity; null when there is none. */
    newestHour: (sensorKey: number, code: number): number | null =>
      last.get(sensorKey, code, Number.MIN_SAFE_INTEGER)?.hour ?? null,
  };
}
export type PackedHours = ReturnType<typeof packedHours>;

/** Adds the readings of an hour from one time to another, up to so many in all. */
function addHour(
  built: RunBuilder,
  { hour, count, packed }: PackedRow,
  from: number,
  to: number,
  limit: number,
): void {
  const { times, values, flags } = hourColumns(hour, count, packed);
  for (let i = placeFrom(times, count, from); i < count && built.length < limit; i++) {
    const at = times[i] as number;
    if (at > to) return;
    built.add(at, values[i] as number, flags?.[i] ?? 0);
  }
}
