import type { Database } from 'better-sqlite3';
import { mergedRuns } from '../rules/reading-run.ts';
import { dayMaker } from './make-days.ts';
import { packedDays } from './packed-days.ts';
import { hourMs, packRun } from './packed-hour.ts';
import type { ReadingIntake } from './take-in-readings.ts';

export interface Packed {
  /** Readings that were worked on. */
  readings: number;
  /** Whether more waits to be packed. */
  more: boolean;
}

/** An hour of which some sensors are packed; its readings still stand among the waiting ones too. */
interface HourUnderWay {
  hour: number;
  sensors: { sensorKey: number; count: number }[];
  next: number;
}

/**
 * Packs closed hours a slice at a time, the oldest first, each slice one transaction; a day that is
 * made already is made again in the transaction of the hour that changed.
 *
 * All sensors of an hour are packed before the readings that were waiting are removed: these lie by
 * time, so that a page of them is written once and not once for each sensor. Ended in between, an
 * hour is begun again: what is packed already is found to be so, and left alone.
 */
export function hourPacker(db: Database, readings: ReadingIntake) {
  const { staged, packed } = readings;
  const days = dayMaker(db, packedDays(db));
  let underWay: HourUnderWay | null = null;
  // What came while its hour was under way may not be in the packed row yet.
  readings.onStaged((hour) => {
    if (underWay?.hour === hour) underWay = null;
  });

  /** @returns the hour to work on; null when none is closed */
  function begin(beforeAt: number): HourUnderWay | null {
    if (underWay) return underWay;
    const hour = staged.oldestHour();
    if (hour === null) return null;
    if ((hour + 1) * hourMs > beforeAt) return null;
    return { hour, sensors: staged.sensorsOfHour(hour), next: 0 };
  }

  /** Takes the next sensors, as many as have no more readings than the limit, one at least. */
  function take(work: HourUnderWay, limit: number): { from: number; to: number; count: number } {
    const first = work.sensors[work.next];
    if (!first) throw new Error('All sensors of this hour are packed.');
    let { count, sensorKey: to } = first;
    for (let other = work.sensors[++work.next]; other; other = work.sensors[++work.next]) {
      if (count + other.count > limit) break;
      count += other.count;
      to = other.sensorKey;
    }
    return { from: first.sensorKey, to, count };
  }

  function packSensors(hour: number, fromSensor: number, toSensor: number): void {
    for (const { sensorKey, code, waiting } of staged.ofHour(hour, fromSensor, toSensor)) {
      const kept = packed.ofHour(sensorKey, code, hour);
      const all = mergedRuns(kept, waiting.run(), Number.POSITIVE_INFINITY);
      if (all.length === kept.length) continue;
      packed.save(sensorKey, code, packRun(all));
      readings.hourPacked(sensorKey, code, hour);
      days.hourPacked(sensorKey, code, hour);
    }
  }

  function slice(beforeAt: number, limit: number): Packed {
    underWay = begin(beforeAt);
    if (!underWay) return { readings: 0, more: days.makeSome(beforeAt, limit).more };
    const work = underWay;
    let count = 0;
    if (work.next < work.sensors.length) {
      const taken = take(work, limit);
      packSensors(work.hour, taken.from, taken.to);
      count = taken.count;
    }
    if (work.next >= work.sensors.length && count < limit) {
      if (staged.removeOfHour(work.hour, limit)) underWay = null;
    }
    const more = underWay !== null || begin(beforeAt) !== null || days.isOneWaiting(beforeAt);
    return { readings: count, more };
  }

  const transaction = db.transaction(slice);
  return {
    /**
     * Packs a slice of the hours that are closed; once none is left, makes some of the days that are.
     *
     * @param beforeAt - hours that end by then are closed, epoch ms
     * @param limit - about how many readings to work on in one transaction
     */
    packClosedHours(beforeAt: number, limit: number): Packed {
      try {
        return transaction.immediate(beforeAt, limit);
      } catch (cause) {
        underWay = null;
        days.forget();
        readings.forget();
        throw cause;
      }
    },
  };
}
export type HourPacker = ReturnType<typeof hourPacker>;
