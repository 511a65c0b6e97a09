import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { copyFileSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import type { Database } from 'better-sqlite3';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openForWriting } from '../../daemon/store/open.ts';
import { storeWriter } from '../../daemon/store/store.ts';
import { randomFromWords } from '../../sensors/shed/physics/random.ts';
import { timeUnknown } from '../store/store-sides.ts';
import { killCount } from './kill-count.ts';
import { dayFaults, type PlainSeries, readingsOf } from './plain-days.ts';
import { type Plant, plantedBuild } from './planted-build.ts';

/*
 * The fault injected: a process is killed (SIGKILL) while it makes the rows of days that are over, makes
 * one again because a reading of it came late, or lets go of the hours a day was made of: right after a
 * row was written and before its transaction is over, between two transactions, and at random moments.
 */
const dayMs = 86_400_000;
const minute = 60_000;
const start = Date.UTC(2025, 2, 20);
const days = 20;
const end = start + days * dayMs;
/** Sensor, quantity, its key in the tables. */
const series = [
  ['north', 'air-temperature', '1 1'],
  ['north', 'relative-humidity', '1 2'],
  ['south', 'air-temperature', '2 1'],
] as const;
const script = fileURLToPath(new URL('./make-days.mjs', import.meta.url));
const built = new URL('../../.build/', import.meta.url);
const timeout = 180_000;

type Work = 'make' | 'late' | 'let go';
/** Killed right after the nth row was written, or the nth transaction was over. */
interface Strike {
  on: 'insert on packed_day' | 'insert on packed_days_made' | 'insert on packed_hour' | OfHours;
  nth: number;
}
type OfHours = 'update on packed_hour' | 'delete on packed_hour' | 'insert on kept_from' | 'slice';

/** Quarters, so that sums are exact in whatever order they are added; with holes of some hours. */
const all = series.flatMap(([sensor, quantity], which) => {
  const random = randomFromWords([3, 1, 4, which]);
  const readings = Array.from({ length: (days * dayMs) / (20 * minute) }, (_, i) => ({
    ...{ sensor, quantity, at: start + i * 20 * minute + which * 1000, flags: 0 },
    raw: Math.round(random.between(40, 80)) / 4,
  }));
  return readings.filter((_, i) => i % 40 > which + 3);
});
/** Of each second day: one into an hour that has readings, one into a hole. */
const late = series.flatMap(([sensor, quantity], which) =>
  Array.from({ length: days }, (_, day) =>
    [10 * 60 + 7, 5]
      .filter(() => day % 2 === 0)
      .map((minutes) => ({
        ...{ sensor, quantity, at: start + day * dayMs + minutes * minute + which, flags: 0 },
        raw: day % 4 === 0 ? 30 : 2.5,
      })),
  ).flat(),
);

function bySeries(readings: typeof all): PlainSeries {
  const found: PlainSeries = new Map();
  for (const [sensor, quantity, key] of series) {
    const own = readings.filter((one) => one.sensor === sensor && one.quantity === quantity);
    found.set(
      key,
      own.map(({ at, raw }) => ({ at, raw })),
    );
  }
  return found;
}

let folder: string;
/** Hours are packed and no day is made; all days are made; late readings are in as well. */
let saved: Record<Work, string>;
let file: string;

/** Opens the database here, where nothing kills, and closes it. */
function opened<T>(act: (db: Database, write: ReturnType<typeof storeWriter>) => T): T {
  const db = openForWriting(file);
  // What is tested is no power cut.
  db.pragma('synchronous = OFF');
  const write = storeWriter(db, timeUnknown);
  try {
    return act(db, write);
  } finally {
    write.close();
  }
}

function packAll(): void {
  opened((_, write) => {
    while (write.packClosedHours(end, 1000).more);
  });
}

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'boardcure-days-'));
  file = join(folder, 'days.sqlite');
  saved = {
    make: join(folder, 'saved-make'),
    late: join(folder, 'saved-late'),
    'let go': join(folder, 'saved-let-go'),
  };
  opened((db, write) => {
    write.commitReadings({ readings: all, refused: [], arrivedAt: end });
    const waiting = db.prepare<[], number>('select count(*) from reading').pluck();
    while (waiting.get()) write.packClosedHours(end, 100_000);
    expect(db.prepare('select * from packed_day').all()).toEqual([]);
  });
  copyFileSync(file, saved.make);
  packAll();
  copyFileSync(file, saved.late);
  opened((_, write) => write.commitReadings({ readings: late, refused: [], arrivedAt: end }));
  packAll();
  copyFileSync(file, saved['let go']);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function startOver(work: Work): void {
  for (const tail of ['', '-wal', '-shm', '-state', '-lock'])
    rmSync(`${file}${tail}`, { force: true });
  copyFileSync(saved[work], file);
}

function run(work: Work, strike: Strike | null, build = built) {
  const told = JSON.stringify({ work, beforeAt: end, late, strike });
  return spawn(process.execPath, [script, build.href, file, told], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
}

async function killedAt(work: Work, strike: Strike, build = built): Promise<void> {
  startOver(work);
  const [code, signal] = await once(run(work, strike, build), 'exit');
  expect([code, signal], `${strike.on} ${strike.nth} came`).toEqual([null, 'SIGKILL']);
}

/** What is wrong right after a kill. */
function faultsNow(work: Work): string[] {
  return opened((db) => {
    if (work === 'make') return dayFaults(db, bySeries(all), null);
    if (work === 'let go') return dayFaults(db, bySeries([...all, ...late]), end);
    return dayFaults(db, readingsOf(db).packed, end);
  });
}

/** What is wrong once the work was taken up again and went through. */
function faultsInTheEnd(work: Work): string[] {
  return opened((db, write) => {
    if (work === 'late') {
      // Whoever was not told sends again.
      write.commitReadings({ readings: late, refused: [], arrivedAt: end });
    }
    if (work === 'let go') {
      while (write.letGo('readings', end).more);
      while (write.letGo('hours', end).more);
      expect(db.prepare('select * from packed_hour').all()).toEqual([]);
    } else {
      while (write.packClosedHours(end, 1000).more);
      expect(readingsOf(db).waiting.size).toBe(0);
      const found = [...readingsOf(db).packed.values()].flat();
      expect(found).toHaveLength(all.length + (work === 'make' ? 0 : late.length));
    }
    return dayFaults(db, bySeries(work === 'make' ? all : [...all, ...late]), end);
  });
}

const strikes: Record<Work, [Strike['on'], number[]][]> = {
  make: [
    ['insert on packed_day', [1, 2, 3, 31, days * series.length]],
    ['insert on packed_days_made', [1, 8]],
    ['slice', [1, 14]],
  ],
  late: [
    ['insert on packed_hour', [1, 2, 17]],
    ['insert on packed_day', [1, 6]],
    ['slice', [1, 9]],
  ],
  'let go': [
    ['update on packed_hour', [1, 400]],
    ['insert on packed_day', [1, 2]],
    ['delete on packed_hour', [1, 30]],
    ['insert on kept_from', [days + 1]],
    ['slice', [days + 2]],
  ],
};

describe('a process that is killed while it makes days', () => {
  for (const [work, points] of Object.entries(strikes) as [Work, [Strike['on'], number[]][]][]) {
    it(`at a chosen moment (${work}): every day is right or waits to be made`, {
      timeout,
    }, async () => {
      for (const [on, moments] of points) {
        for (const nth of moments) {
          await killedAt(work, { on, nth });
          expect(faultsNow(work), `${on} ${nth}`).toEqual([]);
          expect(faultsInTheEnd(work), `${on} ${nth}`).toEqual([]);
        }
      }
    });
  }

  it('at random moments, again and again, until all is made', { timeout }, async () => {
    const random = randomFromWords([2, 7, 1, 8]);
    startOver('make');
    // Until it has ended by itself once, nobody knows how long it takes.
    let takesMs = 200;
    let cut = 0;
    for (let kill = 0; kill < killCount(6); kill++) {
      const child = run(kill % 2 ? 'late' : 'make', null);
      const ended = once(child, 'exit').then(([code]) => code as number | null);
      await once(child.stdout as NodeJS.ReadableStream, 'data');
      const began = performance.now();
      const first = await Promise.race([ended, pause(random.between(0, takesMs), 'late')]);
      if (first === 'late') {
        child.kill('SIGKILL');
        if ((await ended) === null) cut++;
      } else {
        expect(first).toBe(0);
        takesMs = performance.now() - began;
      }
      opened((db) => expect(dayFaults(db, readingsOf(db).packed, null)).toEqual([]));
      if (first !== 'late') startOver('make');
    }
    expect(faultsInTheEnd('late')).toEqual([]);
    expect(cut).toBeGreaterThan(0);
  });
});

describe('these tests see', () => {
  const plants: [string, Plant, Work, Strike][] = [
    [
      'days that are called made before they are',
      {
        file: 'daemon/store/make-days.js',
        from: 'return { day, series, next: 0 };',
        to: 'days.setMadeUntil(day + 1); return { day, series, next: 0 };',
      },
      'make',
      { on: 'slice', nth: 1 },
    ],
    [
      'an hour that is packed in another transaction than its day',
      {
        file: 'daemon/store/pack-hours.js',
        from: 'const transaction = db.transaction(slice);',
        to: 'const transaction = { immediate: slice };',
      },
      'late',
      { on: 'insert on packed_day', nth: 1 },
    ],
  ];
  for (const [name, plant, work, strike] of plants) {
    it(name, { timeout }, async () => {
      const planted = mkdtempSync(join(folder, 'planted-'));
      mkdirSync(join(planted, 'build'));
      await killedAt(work, strike, plantedBuild(planted, plant));
      expect(faultsNow(work)).not.toEqual([]);
    });
  }
});
