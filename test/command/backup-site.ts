import { mkdirSync } from 'node:fs';
import BetterSqlite3 from 'better-sqlite3';
import { v7 as newId } from 'uuid';
import { databaseFile, openForReading, openForWriting } from '../../daemon/store/open.ts';
import { storeReader, storeWriter } from '../../daemon/store/store.ts';
import { runCommand } from '../journey/running-daemon.ts';
import {
  batch,
  coat,
  day1,
  firstMove,
  group,
  hourMs,
  place,
  plan,
  ragsNotice,
  reading,
  touchTest,
} from '../store/site-of-facts.ts';
import { timeUnknown } from '../store/store-sides.ts';

export interface SiteSize {
  sensors?: readonly string[];
  /** Of each sensor, a minute apart, from `day1` on. */
  readings?: number;
  remark?: string;
}

/** Fills a data folder with a whole site: every kind of fact, and readings. */
export function fillSite(data: string, size: SiteSize = {}): { batchId: string; readings: number } {
  const { sensors = ['rack-1', 'rack-2'], readings = 200, remark = 'fine' } = size;
  mkdirSync(data, { recursive: true });
  const write = storeWriter(openForWriting(databaseFile(data)), timeUnknown);
  const room = place();
  write.createPlace(room);
  const itsPlan = plan();
  write.createPlan(itsPlan);
  const boards = batch(itsPlan.id);
  write.createBatch(boards, firstMove(boards.id, room.id));
  const onlyCoat = coat(boards.id);
  write.createCoat(onlyCoat, day1, ragsNotice(boards.id, day1));
  write.createTest(touchTest(onlyCoat), day1 + 30 * hourMs);
  const seen = { id: newId(), batchId: boards.id, at: day1, kind: 'runs' as const };
  write.createRemark({ ...seen, text: remark }, day1);
  write.createHandReading(
    {
      ...{ id: newId(), placeId: room.id, batchId: null, at: day1 },
      ...{ quantity: 'wood-moisture' as const, values: [14.5, 15] },
    },
    day1,
  );
  const all = sensors.flatMap((sensor) =>
    Array.from({ length: readings }, (_, index) => {
      const raw = Math.round((15 + 8 * Math.sin(index / 240)) * 100) / 100;
      return reading(sensor, day1 + index * 60_000, raw);
    }),
  );
  for (let from = 0; from < all.length; from += 5000) {
    write.commitReadings(group(...all.slice(from, from + 5000)));
  }
  write.close();
  return { batchId: boards.id, readings: all.length };
}

/** Every reading of every sensor, as the store gives them. */
export function readingsIn(file: string, quantity: 'air-temperature' = 'air-temperature') {
  const reader = storeReader(openForReading(file));
  try {
    return reader.sensors().flatMap(({ key, id }) => {
      const extent = reader.readingExtent(key, quantity);
      if (!extent) return [];
      const { firstAt, lastAt } = extent;
      return reader
        .readingsBetween(key, quantity, firstAt, lastAt)
        .map(({ at, raw }) => ({ sensor: id, at, raw }));
    });
  } finally {
    reader.close();
  }
}

/** Whether SQLite finds nothing wrong in a file. */
export function isWhole(file: string): boolean {
  const db = new BetterSqlite3(file, { readonly: true });
  try {
    return db.pragma('integrity_check', { simple: true }) === 'ok';
  } finally {
    db.close();
  }
}

/** Runs a command to its end. */
export async function finished(...args: string[]) {
  const command = runCommand(args);
  const code = await command.ended;
  return { code, out: command.out, err: command.err() };
}
