import type { Quantity } from '../contract/quantity.ts';
import type { HeardSensor } from '../rules/place.ts';
import type { HeardReading } from '../rules/place-series.ts';
import type { ReadingRun } from '../rules/reading-run.ts';
import type { Corrected, FlagBits, ReadingSource } from './ports.ts';

/** So many readings are held at once, in columns, of all sensors together. */
const mostHeld = 200_000;
/** Of one sensor so many at least: each look costs about as much as so many of its readings. Assumption. */
const leastEach = 500;

interface HearingParts {
  readings: Pick<ReadingSource, 'readingRun'>;
  corrected: Corrected;
  flags: FlagBits;
}

/** How far a sensor’s stretch has been read. */
interface Cursor {
  sensor: HeardSensor;
  /** Time of the reading that is next. */
  at: number;
  run: ReadingRun;
  next: number;
  endAt: number;
  isAll: boolean;
}

/**
 * What sensors said from one time to another, both included, moment by moment, ascending. Readings come in
 * runs of bounded length, so that no hour in which sensors sent a flood is held in memory whole.
 *
 * @param heard - the stretches in which sensors are heard; those of one sensor do not overlap
 */
export function* heardMoments(
  { readings, corrected, flags }: HearingParts,
  heard: readonly HeardSensor[],
  quantity: Quantity,
  from: number,
  to: number,
): Generator<HeardReading[]> {
  const length = Math.max(leastEach, Math.floor(mostHeld / Math.max(1, heard.length)));
  /** By the time of the next reading, the earliest last. */
  const cursors: Cursor[] = [];
  for (const sensor of heard) {
    const start = Math.max(from, sensor.fromAt ?? from);
    const endAt = Math.min(to, sensor.untilAt === null ? to : sensor.untilAt - 1);
    if (endAt < start) continue;
    const run = look(sensor, start, endAt);
    put({ sensor, run, next: 0, at: start, endAt, isAll: run.length < length });
  }
  for (let first = cursors.at(-1); first; first = cursors.at(-1)) {
    const { at } = first;
    const moment: HeardReading[] = [];
    for (let one: Cursor | undefined = first; one?.at === at; one = cursors.at(-1)) {
      cursors.pop();
      moment.push(readingOf(one));
      one.next++;
      put(one);
    }
    yield moment;
  }

  function look({ sensorKey }: HeardSensor, start: number, endAt: number): ReadingRun {
    return readings.readingRun(sensorKey, quantity, start, endAt, length);
  }

  /** Puts a cursor at its next reading that has a time, and among the others. */
  function put(cursor: Cursor): void {
    for (;;) {
      if (cursor.next === cursor.run.length) {
        if (cursor.isAll) return;
        const lastAt = cursor.run.at[cursor.run.length - 1] as number;
        cursor.run = look(cursor.sensor, lastAt + 1, cursor.endAt);
        cursor.isAll = cursor.run.length < length;
        cursor.next = 0;
        continue;
      }
      if (((cursor.run.flags[cursor.next] as number) & flags.timeUnknown) === 0) break;
      cursor.next++;
    }
    cursor.at = cursor.run.at[cursor.next] as number;
    let index = cursors.length;
    while (index > 0 && (cursors[index - 1] as Cursor).at < cursor.at) index--;
    cursors.splice(index, 0, cursor);
  }

  function readingOf({ sensor, run, next, at }: Cursor): HeardReading {
    const { sensorKey, level, untilAt } = sensor;
    const raw = run.raw[next] as number;
    return { sensorKey, at, level, untilAt, value: corrected({ sensorKey, quantity, at, raw }) };
  }
}
