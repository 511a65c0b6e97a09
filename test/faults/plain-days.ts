import type { Database } from 'better-sqlite3';
import { unpackHour } from '../../daemon/store/packed-hour.ts';

const hourMs = 3_600_000;
const dayMs = 24 * hourMs;

export interface PlainReading {
  at: number;
  raw: number;
}
/** By sensor and quantity. */
export type PlainSeries = Map<string, PlainReading[]>;

/** What is to be known of a day, reckoned without the program’s own way to it. */
interface PlainDay {
  count: number;
  firstAt: number;
  lastAt: number;
  low: number;
  lowAt: number;
  high: number;
  highAt: number;
  sum: number;
  /** Last before and first after each stretch of more than an hour without readings. */
  gaps: number[];
}

/** The UTC days of readings, reading by reading. */
function plainDays(series: PlainSeries): Map<string, PlainDay> {
  const days = new Map<string, PlainDay>();
  for (const [name, readings] of series) {
    for (const { at, raw } of [...readings].sort((a, b) => a.at - b.at)) {
      const key = `${name} ${Math.floor(at / dayMs)}`;
      const day = days.get(key);
      if (!day) {
        const one = { count: 1, firstAt: at, lastAt: at, low: raw, lowAt: at, high: raw };
        days.set(key, { ...one, highAt: at, sum: raw, gaps: [] });
        continue;
      }
      if (at - day.lastAt > hourMs) day.gaps.push(day.lastAt, at);
      day.count++;
      day.lastAt = at;
      day.sum += raw;
      if (raw < day.low) [day.low, day.lowAt] = [raw, at];
      if (raw > day.high) [day.high, day.highAt] = [raw, at];
    }
  }
  return days;
}

interface DayRow extends Record<keyof Omit<PlainDay, 'gaps'>, number> {
  series: string;
  day: number;
  gaps: Buffer | null;
}

function daysIn(db: Database): Map<string, PlainDay> {
  const rows = db.prepare<[], DayRow>(
    `select sensor_key || ' ' || quantity as series, day, count, day * ${dayMs} + first_ms as firstAt,
       day * ${dayMs} + last_ms as lastAt, low, day * ${dayMs} + low_ms as lowAt, high,
       day * ${dayMs} + high_ms as highAt, sum, gaps from packed_day`,
  );
  return new Map(
    rows.all().map(({ series, day, gaps: packed, ...row }) => {
      const gaps: number[] = [];
      for (let i = 0; packed && i < packed.length; i += 4) {
        gaps.push(day * dayMs + packed.readUInt32LE(i));
      }
      return [`${series} ${day}`, { ...row, gaps }];
    }),
  );
}

/** Readings of hours that are packed, and of those that wait. */
export function readingsOf(db: Database): { packed: PlainSeries; waiting: PlainSeries } {
  const packed: PlainSeries = new Map();
  const hours = db.prepare<[], { series: string; hour: number; count: number; packed: Buffer }>(
    `select sensor_key || ' ' || quantity as series, hour, count, packed from packed_hour
      where packed is not null`,
  );
  for (const { series, hour, count, packed: bytes } of hours.iterate()) {
    const all = packed.get(series) ?? [];
    all.push(...unpackHour(hour, count, bytes).map(({ at, raw }) => ({ at, raw })));
    packed.set(series, all);
  }
  const waiting: PlainSeries = new Map();
  const rows = db.prepare<[], PlainReading & { series: string }>(
    `select sensor_key || ' ' || quantity as series, at, raw from reading`,
  );
  for (const { series, at, raw } of rows.iterate()) {
    waiting.set(series, [...(waiting.get(series) ?? []), { at, raw }]);
  }
  return { packed, waiting };
}

/**
 * What is wrong with the days of a database; none when they are as a plain reckoning says.
 *
 * @param packed - the readings that its packed hours hold or held
 * @param until - days that end by then must all be there, epoch ms; null for those it calls made
 */
export function dayFaults(db: Database, packed: PlainSeries, until: number | null): string[] {
  const made = db.prepare<[], number>('select until_day from packed_days_made').pluck().get();
  const untilDay = until === null ? (made ?? Number.NEGATIVE_INFINITY) : until / dayMs;
  const [expected, found] = [plainDays(packed), daysIn(db)];
  const faults: string[] = [];
  for (const [key, day] of expected) {
    const there = found.get(key);
    if (!there && Number(key.split(' ')[2]) < untilDay) faults.push(`day ${key} is missing`);
    if (there && JSON.stringify(sorted(there)) !== JSON.stringify(sorted(day))) {
      faults.push(`day ${key} says ${JSON.stringify(there)}, not ${JSON.stringify(day)}`);
    }
  }
  for (const key of found.keys()) {
    if (!expected.has(key)) faults.push(`day ${key} is of no readings`);
  }
  return faults;
}

const sorted = (day: PlainDay) => Object.entries(day).sort(([a], [b]) => (a < b ? -1 : 1));
