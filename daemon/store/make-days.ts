import type { Database } from 'better-sqlite3';
import { dayHours, dayMs, dayOfHour, type PackedDays } from './packed-days.ts';
import type { SeriesKey } from './staged-readings.ts';

/** Every sensor and quantity that has packed hours, found by a look-up or two each. */
export function packedSeries(db: Database) {
  // One comparison of both columns would read every hour of a sensor.
  const nextQuantity = db.prepare<[SeriesKey], SeriesKey>(
    `select sensor_key as sensorKey, quantity as code from packed_hour
      where sensor_key = @sensorKey and quantity > @code order by quantity limit 1`,
  );
  const nextSensor = db.prepare<[SeriesKey], SeriesKey>(
    `select sensor_key as sensorKey, quantity as code from packed_hour
      where sensor_key > @sensorKey order by sensor_key, quantity limit 1`,
  );
  return function* series(): Generator<SeriesKey> {
    let last: SeriesKey = { sensorKey: Number.MIN_SAFE_INTEGER, code: 0 };
    for (;;) {
      const found = nextQuantity.get(last) ?? nextSensor.get(last);
      if (!found) return;
      last = found;
      yield found;
    }
  };
}

/** A day that is being made; where that ends in between it is begun again. */
interface DayUnderWay {
  day: number;
  series: SeriesKey[];
  next: number;
}

/**
 * Makes the days that are over from their hours, the oldest first, a slice at a time: those of
 * yesterday after each midnight, and once those of all the years before days were made.
 */
export function dayMaker(db: Database, days: PackedDays) {
  const allSeries = packedSeries(db);
  const hourFrom = db
    .prepare<[SeriesKey & { hour: number }], number>(
      `select hour from packed_hour where sensor_key = @sensorKey and quantity = @code
        and hour >= @hour order by hour limit 1`,
    )
    .pluck();
  let underWay: DayUnderWay | null = null;
  /** No day that has hours ends before this, of those not made yet; null where that is not known. */
  let nextEndsAt: number | null = null;

  /** The next day that has hours and is over; null when there is none. */
  function begin(beforeAt: number): DayUnderWay | null {
    if (underWay) return underWay;
    if (nextEndsAt !== null && nextEndsAt > beforeAt) return null;
    const hour = Math.max(days.madeUntil() * dayHours, Number.MIN_SAFE_INTEGER);
    const series = [...allSeries()];
    let first = Number.POSITIVE_INFINITY;
    for (const one of series) first = Math.min(first, hourFrom.get({ ...one, hour }) ?? first);
    const day = dayOfHour(first);
    nextEndsAt = (day + 1) * dayMs;
    if (!Number.isFinite(day) || nextEndsAt > beforeAt) return null;
    return { day, series, next: 0 };
  }

  return {
    /**
     * Makes some days, within a transaction of the caller’s.
     *
     * @param beforeAt - days that end by then are over, epoch ms
     * @param limit - about how many rows to read
     */
    makeSome(beforeAt: number, limit: number): { more: boolean } {
      let rows = 0;
      for (;;) {
        underWay = begin(beforeAt);
        if (!underWay) return { more: false };
        const { day, series } = underWay;
        while (underWay.next < series.length && rows < limit) {
          const { sensorKey, code } = series[underWay.next++] as SeriesKey;
          rows += 1 + days.make(sensorKey, code, day);
        }
        if (underWay.next < series.length) return { more: true };
        days.setMadeUntil(day + 1);
        underWay = null;
        nextEndsAt = null;
        if (rows >= limit) return { more: begin(beforeAt) !== null };
      }
    },
    /** Whether a day is over that is not made yet. */
    isOneWaiting: (beforeAt: number): boolean => begin(beforeAt) !== null,
    /** To be told of each hour that is packed. */
    hourPacked(sensorKey: number, code: number, hour: number): void {
      days.hourPacked(sensorKey, code, hour);
      // It may be the first of a sensor that the day under way knows nothing of.
      if (underWay?.day === dayOfHour(hour)) underWay = null;
      const endsAt = (dayOfHour(hour) + 1) * dayMs;
      if (nextEndsAt !== null && endsAt < nextEndsAt && endsAt > days.madeUntil() * dayMs) {
        nextEndsAt = endsAt;
      }
    },
    /** After a transaction that was rolled back. */
    forget(): void {
      underWay = null;
      nextEndsAt = null;
    },
  };
}
export type DayMaker = ReturnType<typeof dayMaker>;
