import type { Database } from 'better-sqlite3';
import { packedSeries } from './make-days.ts';
import { dayHours, packedDays } from './packed-days.ts';
import { hourMs } from './packed-hour.ts';
import type { SeriesKey } from './staged-readings.ts';

/** What is kept of the past, from the finest to the coarsest. */
export type KeptLevel = 'readings' | 'hours' | 'days';

/**
 * Lets go of what is older than it is to be kept, a UTC day at a time and the oldest first. Of the
 * readings their hours’ extremes and sums stay, of the hours those of their day.
 */
export function lettingGo(db: Database) {
  const kept = db.prepare<[string], number>('select hour from kept_from where level = ?').pluck();
  const keep = db.prepare('insert or replace into kept_from (level, hour) values (?, ?)');
  const series = packedSeries(db);
  const days = packedDays(db);
  const firstHour = db
    .prepare<[SeriesKey], number>(
      `select hour from packed_hour
        where sensor_key = @sensorKey and quantity = @code order by hour limit 1`,
    )
    .pluck();
  const dropReadings = db.prepare(
    `update packed_hour set packed = null
      where sensor_key = @sensorKey and quantity = @code and hour >= @from and hour < @to`,
  );
  const dropHours = db.prepare(
    `delete from packed_hour
      where sensor_key = @sensorKey and quantity = @code and hour >= @from and hour < @to`,
  );
  const oldestDay = db.prepare<[], number | null>('select min(day) from packed_day').pluck();
  const dropDays = db.prepare('delete from packed_day where day < ?');

  /** The first hour of a UTC day from which on a level is there. */
  function thereFrom(level: KeptLevel): number {
    const known = kept.get(level);
    if (known !== undefined) return known;
    const hours = [...series()].map((one) => firstHour.get(one) ?? Number.POSITIVE_INFINITY);
    const first = hours.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
    return Math.floor(first / dayHours) * dayHours;
  }

  function letGo(level: KeptLevel, beforeAt: number): { more: boolean } {
    const wanted = Math.floor(beforeAt / hourMs / dayHours) * dayHours;
    if (level === 'days') {
      // Hours that are kept keep their days.
      const end = Math.min(wanted, thereFrom('hours')) / dayHours;
      const oldest = oldestDay.get() ?? null;
      if (oldest !== null && oldest < end) dropDays.run(end);
      return { more: false };
    }
    // Readings that are kept keep their hours.
    const end = level === 'hours' ? Math.min(wanted, thereFrom('readings')) : wanted;
    const from = thereFrom(level);
    if (from >= end) return { more: false };
    const to = from + dayHours;
    for (const one of [...series()]) {
      const span = { ...one, from, to };
      if (level === 'readings') dropReadings.run(span);
      else {
        days.make(one.sensorKey, one.code, from / dayHours);
        dropHours.run(span);
      }
    }
    keep.run(level, to);
    return { more: to < end };
  }

  const transaction = db.transaction(letGo);
  return {
    /**
     * Lets go of one day of a level, in one transaction.
     *
     * @param beforeAt - what lies before it is not to be kept, epoch ms; days that reach beyond stay
     */
    letGo: (level: KeptLevel, beforeAt: number): { more: boolean } =>
      transaction.immediate(level, beforeAt),
  };
}
