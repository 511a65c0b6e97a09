import type { Database } from 'better-sqlite3';
import type { Quantity } from '../contract/quantity.ts';
import type { ReadingFact } from '../rules/facts.ts';
import { placeFrom } from '../rules/reading-run.ts';
import { hourOf } from './packed-hour.ts';
import { codeOf } from './quantity-code.ts';
import { joined, type ReadingExtent, readingTable } from './readings.ts';

/** Packed hours whose times are remembered, for a sensor that sends what it had stored. */
const rememberedHours = 64;

/**
 * The readings as the one that writes them sees them: it may remember what is on disk, for nobody
 * else changes it.
 */
export function readingIntake(db: Database) {
  const table = readingTable(db);
  const { staged, packed } = table;
  let extents: Map<string, ReadingExtent> | null = null;
  const newestHours = new Map<string, number>();
  const packedTimes = new Map<string, Float64Array>();
  const stagedListeners: ((hour: number) => void)[] = [];

  function stagedExtents(): Map<string, ReadingExtent> {
    extents ??= new Map(
      staged.extents().map((row) => [`${row.sensorKey} ${row.code}`, { ...row }] as const),
    );
    return extents;
  }

  function newestHour(series: string, sensorKey: number, code: number): number {
    let hour = newestHours.get(series);
    if (hour === undefined) {
      hour = packed.newestHour(sensorKey, code) ?? Number.NEGATIVE_INFINITY;
      newestHours.set(series, hour);
    }
    return hour;
  }

  /** Whether a reading of that time is packed, or was, and is no longer kept. */
  function isPacked(series: string, sensorKey: number, code: number, at: number): boolean {
    const hour = hourOf(at);
    if (hour > newestHour(series, sensorKey, code)) return false;
    if (hour < packed.keptFrom()) return true;
    const key = `${series} ${hour}`;
    let times = packedTimes.get(key);
    if (!times) {
      times = packed.times(sensorKey, code, hour);
      const oldest = packedTimes.keys().next().value;
      if (packedTimes.size >= rememberedHours && oldest !== undefined) packedTimes.delete(oldest);
      packedTimes.set(key, times);
    }
    return times[placeFrom(times, times.length, at)] === at;
  }

  return {
    ...table,
    /**
     * @returns false when this sensor already gave this quantity at this time: the first stands.
     *   Also when readings of that time are no longer kept.
     */
    insert: (reading: ReadingFact): boolean => {
      const { sensorKey, at } = reading;
      const code = codeOf(reading.quantity);
      const series = `${sensorKey} ${code}`;
      if (isPacked(series, sensorKey, code, at)) return false;
      if (!staged.insert(sensorKey, code, reading)) return false;
      const extent = extents?.get(series) ?? null;
      extents?.set(series, joined(extent, { firstAt: at, lastAt: at }) as ReadingExtent);
      for (const listener of stagedListeners) listener(hourOf(at));
      return true;
    },
    extent: (sensorKey: number, quantity: Quantity): ReadingExtent | null => {
      const code = codeOf(quantity);
      const waiting = stagedExtents().get(`${sensorKey} ${code}`) ?? null;
      return joined(waiting, packed.extent(sensorKey, code));
    },
    /** Calls back with the hour of each reading that is put among those not packed yet. */
    onStaged: (listener: (hour: number) => void): void => {
      stagedListeners.push(listener);
    },
    /** To be told of each hour that is packed, so that nothing remembered of it goes stale. */
    hourPacked: (sensorKey: number, code: number, hour: number): void => {
      const series = `${sensorKey} ${code}`;
      newestHours.set(series, Math.max(hour, newestHour(series, sensorKey, code)));
      packedTimes.delete(`${series} ${hour}`);
    },
    /** Forgets what is remembered, after a transaction that was rolled back. */
    forget: (): void => {
      extents = null;
      newestHours.clear();
      packedTimes.clear();
    },
  };
}
export type ReadingIntake = ReturnType<typeof readingIntake>;
