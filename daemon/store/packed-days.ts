import type { Database } from 'better-sqlite3';
import { hourMs, type Outline } from './packed-hour.ts';

export const dayHours = 24;
export const dayMs = dayHours * hourMs;
export const dayOfHour = (hour: number): number => Math.floor(hour / dayHours);

/** A stretch of time with readings at both its ends, epoch ms. */
export interface HeardSpan {
  firstAt: number;
  lastAt: number;
}

/** Start of the hour or day, then as the columns of a row say, in ms from there. */
export type OutlineRow = [
  start: number,
  count: number,
  firstMs: number,
  lastMs: number,
  lowMs: number,
  low: number,
  highMs: number,
  high: number,
  sum: number,
];
export type DayRow = [...OutlineRow, gaps: Uint8Array | null];

export const outlineColumns = 'count, first_ms, last_ms, low_ms, low, high_ms, high, sum';

/** An hour’s or a day’s row with times as epoch ms. */
export function outlineOfRow(
  [start, count, firstMs, lastMs, lowMs, low, highMs, high, sum]: OutlineRow | DayRow,
  unitMs: number,
): Outline {
  const at = start * unitMs;
  return {
    count,
    firstAt: at + firstMs,
    lastAt: at + lastMs,
    lowAt: at + lowMs,
    highAt: at + highMs,
    low,
    high,
    sum,
  };
}

/** What is known of each UTC day that is over without a look at its hours, one row a day. */
export function packedDays(db: Database) {
  const hoursOfDay = db
    .prepare<[number, number, number, number], OutlineRow>(
      `select hour, ${outlineColumns} from packed_hour
        where sensor_key = ? and quantity = ? and hour >= ? and hour < ? order by hour`,
    )
    .raw();
  const save = db.prepare(
    `insert or replace into packed_day
       (sensor_key, quantity, day, count, first_ms, last_ms, low_ms, high_ms, low, high, sum, gaps)
     values (@sensorKey, @code, @day, @count, @firstMs, @lastMs, @lowMs, @highMs, @low, @high, @sum, @gaps)`,
  );
  const one = db
    .prepare<[number, number, number], number>(
      'select 1 from packed_day where sensor_key = ? and quantity = ? and day = ?',
    )
    .pluck();
  const between = db
    .prepare<[number, number, number, number], DayRow>(
      `select day, ${outlineColumns}, gaps from packed_day
        where sensor_key = ? and quantity = ? and day between ? and ? order by day`,
    )
    .raw();
  const made = db.prepare<[], number>('select until_day from packed_days_made').pluck();
  const setMade = db.prepare(
    'insert or replace into packed_days_made (only_one, until_day) values (1, ?)',
  );
  /** Days before this one are there for every series that has hours of them. */
  const madeUntil = (): number => made.get() ?? Number.MIN_SAFE_INTEGER;

  /**
   * Makes a day from its hours; one whose hours are no longer kept stays as it is.
   *
   * @returns how many hours it has
   */
  function make(sensorKey: number, code: number, day: number): number {
    const rows = hoursOfDay.all(sensorKey, code, day * dayHours, (day + 1) * dayHours);
    const hours = rows.map((row) => outlineOfRow(row, hourMs));
    const [begin, end] = [hours[0], hours.at(-1)];
    if (!begin || !end) return 0;
    const whole = { ...begin, count: 0, sum: 0 };
    const start = day * dayMs;
    const gaps: number[] = [];
    let lastAt = begin.firstAt;
    for (const hour of hours) {
      whole.count += hour.count;
      whole.sum += hour.sum;
      if (hour.low < whole.low) [whole.low, whole.lowAt] = [hour.low, hour.lowAt];
      if (hour.high > whole.high) [whole.high, whole.highAt] = [hour.high, hour.highAt];
      if (hour.firstAt - lastAt > hourMs) gaps.push(lastAt - start, hour.firstAt - start);
      lastAt = hour.lastAt;
    }
    const { count, low, high, sum } = whole;
    save.run({
      ...{ sensorKey, code, day, count, low, high, sum },
      ...{ firstMs: begin.firstAt - start, lastMs: end.lastAt - start },
      ...{ lowMs: whole.lowAt - start, highMs: whole.highAt - start },
      gaps: gaps.length === 0 ? null : packedGaps(gaps),
    });
    return rows.length;
  }

  return {
    madeUntil,
    setMadeUntil: (day: number): void => {
      setMade.run(day);
    },
    make,
    /** To be told of each hour that is packed: a day that is made already is made again. */
    hourPacked(sensorKey: number, code: number, hour: number): void {
      const day = dayOfHour(hour);
      if (day < madeUntil() || one.get(sensorKey, code, day) === 1) make(sensorKey, code, day);
    },
    /** Rows from one day to another, both included, ascending. */
    between: (sensorKey: number, code: number, fromDay: number, toDay: number): DayRow[] =>
      between.all(sensorKey, code, fromDay, toDay),
  };
}
export type PackedDays = ReturnType<typeof packedDays>;

function packedGaps(gaps: readonly number[]): Uint8Array {
  const bytes = Buffer.alloc(gaps.length * 4);
  for (const [i, ms] of gaps.entries()) bytes.writeUInt32LE(ms, i * 4);
  return bytes;
}

/** The stretches of a day with readings that follow each other within an hour, ascending. */
export function spansOfDay(row: DayRow): HeardSpan[] {
  const { firstAt, lastAt } = outlineOfRow(row, dayMs);
  const gaps = row[9];
  if (!gaps) return [{ firstAt, lastAt }];
  const view = new DataView(gaps.buffer, gaps.byteOffset, gaps.byteLength);
  const start = row[0] * dayMs;
  const spans: HeardSpan[] = [];
  let from = firstAt;
  for (let i = 0; i < gaps.byteLength; i += 8) {
    spans.push({ firstAt: from, lastAt: start + view.getUint32(i, true) });
    from = start + view.getUint32(i + 4, true);
  }
  spans.push({ firstAt: from, lastAt });
  return spans;
}
