import { openForReading } from '../../daemon/store/open.ts';
import { storeReader } from '../../daemon/store/store.ts';
import type { SentReading } from './persistent-node.ts';

/** What is in a database, however it is laid out there. */
export interface Stored {
  version: number;
  /** `ok`, or what SQLite finds wrong */
  check: string;
  /** By sensor, ascending by time. */
  readings: Map<string, SentReading[]>;
  /** Low sums of the hours of a place, by the model that rules. */
  hours: { placeId: string; hour: number; low: number }[];
  /** Stretches whose sums wait to be made again. */
  dirty: number;
}

/** Looks through a database that nobody writes to. */
export function storedReadings(file: string): Stored {
  const db = openForReading(file);
  try {
    const reader = storeReader(db);
    const readings = new Map<string, SentReading[]>();
    for (const { id, key } of reader.sensors()) {
      readings.set(
        id,
        reader
          .readingsBetween(key, 'air-temperature', 0, Number.MAX_SAFE_INTEGER)
          .map(({ at, raw }) => ({ at, value: raw })),
      );
    }
    const hours = db
      .prepare<[], { placeId: string; hour: number; low: number }>(
        `select place_id as placeId, hour, low from hour_sum where model like 'nurse-saul%'`,
      )
      .all();
    return {
      version: db.pragma('user_version', { simple: true }) as number,
      check: db.pragma('integrity_check', { simple: true }) as string,
      ...{ readings, hours },
      dirty: db.prepare<[], number>('select count(*) from dirty_span').pluck().get() ?? -1,
    };
  } finally {
    db.close();
  }
}
