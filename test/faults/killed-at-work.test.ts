import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { cpSync, existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { schemaVersion } from '../../daemon/store/migrate.ts';
import { databaseFile, openForReading } from '../../daemon/store/open.ts';
import { randomFromWords } from '../../sensors/shed/physics/random.ts';
import { runCommand, startDaemon } from '../journey/running-daemon.ts';
import { rawClient, readingFlood } from '../load/raw-client.ts';
import { killCount } from './kill-count.ts';
import { type Stored, storedReadings } from './stored-readings.ts';

/*
 * The fault injected: a process is killed (SIGKILL) at random moments while it migrates, packs or
 * copies the database. Each kill is at a moment of its own, spread over the time that the whole work
 * takes undisturbed.
 */
const kills = killCount(6);
const sensors = ['north', 'south'];
const readingsEach = 6000;
const start = Date.UTC(2025, 5, 1);
const build = new URL('../../.build/', import.meta.url).href;
const timeout = 300_000;

let folder: string;
let file: string;
let before: Stored;

/** A database with readings of some hours, as a daemon left it when it was killed. */
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'boardcure-killed-'));
  file = databaseFile(join(folder, 'data'));
  const daemon = await startDaemon(join(folder, 'data'));
  for (const sensor of sensors) {
    const client = await rawClient(daemon.mqtt ?? 0, sensor);
    client.socket.write(readingFlood(sensor, readingsEach, start, 60_000));
    await client.heard(readingsEach);
    client.socket.destroy();
  }
  await daemon.kill();
  before = storedReadings(file);
  cpSync(join(folder, 'data'), join(folder, 'saved'), { recursive: true });
  expect(sensors.map((sensor) => before.readings.get(sensor)?.length)).toEqual(
    sensors.map(() => readingsEach),
  );
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

/** As it was, so that the next kill finds work again. */
function startOver(): void {
  rmSync(join(folder, 'data'), { recursive: true });
  cpSync(join(folder, 'saved'), join(folder, 'data'), { recursive: true });
}

const script = (name: string, target: string): ChildProcess =>
  spawn(
    process.execPath,
    [fileURLToPath(new URL(`./${name}.mjs`, import.meta.url)), build, target],
    { stdio: ['ignore', 'pipe', 'inherit'] },
  );

/**
 * Kills at random moments of the time that one undisturbed run takes.
 *
 * @param saysWhenItBegins - the work says a line when it begins; else it is counted from the start
 * @returns how often it was really cut short
 */
async function killedOften(
  work: () => ChildProcess,
  saysWhenItBegins: boolean,
  afterEach: () => void,
): Promise<number> {
  const random = randomFromWords([5, 6, 7, 8]);
  let cut = 0;
  // Until it has ended by itself once, nobody knows how long it takes.
  let takesMs = 600;
  for (let kill = 0; kill < kills; kill++) {
    const child = work();
    const ended = once(child, 'exit').then(([code]) => code as number | null);
    if (saysWhenItBegins && child.stdout) await once(child.stdout, 'data');
    const began = performance.now();
    const first = await Promise.race([ended, pause(random.between(0, takesMs * 1.2), 'late')]);
    if (first === 'late') {
      child.kill('SIGKILL');
      if ((await ended) === null) cut++;
    } else {
      expect(first).toBe(0);
      takesMs = performance.now() - began;
    }
    afterEach();
  }
  return cut;
}

/** The same readings as before, each once; the file is whole. */
function expectAllThere(target: string): Stored {
  const now = storedReadings(target);
  expect(now.check).toBe('ok');
  expect(now.readings).toEqual(before.readings);
  return now;
}

const tables = (target: string): string[] => {
  const db = openForReading(target);
  try {
    return db.prepare<[], string>('select name from sqlite_master').pluck().all();
  } finally {
    db.close();
  }
};

describe('a process that is killed at its work', () => {
  it('migrating: is at one version or the next, whole, with a whole copy of before', {
    timeout,
  }, async () => {
    const copy = `${file}.before-version-${schemaVersion + 1}`;
    const seen = new Set<number>();
    const cut = await killedOften(
      () => script('slow-migration', file),
      true,
      () => {
        const { version } = expectAllThere(file);
        seen.add(version - schemaVersion);
        const added = tables(file).filter((name) => name.startsWith('slow_'));
        expect(added).toHaveLength(version - schemaVersion);
        if (version > schemaVersion) expect(existsSync(copy)).toBe(true);
        if (existsSync(copy)) expect(expectAllThere(copy).version).toBe(schemaVersion);
        if (version === schemaVersion + 2) startOver();
      },
    );
    expect(cut).toBeGreaterThan(0);
    expect(await once(script('slow-migration', file), 'exit')).toEqual([0, null]);
    expect(expectAllThere(file).version).toBe(schemaVersion + 2);
    process.stderr.write(`migrating: ${cut} kills, steps done then: ${[...seen].sort()}\n`);
  });

  it('packing: has every reading and day once, and goes on where it was', { timeout }, async () => {
    const one = (sql: string) => {
      const db = openForReading(file);
      try {
        return db.prepare<[], number>(sql).pluck().get() ?? -1;
      } finally {
        db.close();
      }
    };
    const waiting = () => one('select count(*) from reading');
    /** Days that ought to be made, and are not or differ from what their hours say. */
    const wrongDays = (until: string) =>
      one(`select count(*) from (
        select sensor_key, quantity, hour / 24 as day, sum(count) as count, min(low) as low,
               max(high) as high from packed_hour group by 1, 2, 3
      ) as hours left join packed_day as made using (sensor_key, quantity, day)
      where day < ${until} and (made.count, made.low, made.high)
        is not (hours.count, hours.low, hours.high)`);
    const madeUntil = 'coalesce((select until_day from packed_days_made), 0)';
    const lastDay = `(select max(hour) / 24 from packed_hour)`;
    const left: number[] = [];
    const cut = await killedOften(
      () => script('pack-all', file),
      true,
      () => {
        expectAllThere(file);
        expect(wrongDays(madeUntil)).toBe(0);
        left.push(waiting());
        if (waiting() === 0 && wrongDays(lastDay) === 0) startOver();
      },
    );
    expect(await once(script('pack-all', file), 'exit')).toEqual([0, null]);
    expectAllThere(file);
    expect(waiting()).toBe(0);
    expect(wrongDays(lastDay)).toBe(0);
    process.stderr.write(`packing: ${cut} kills, readings left to pack then: ${left.join(', ')}\n`);
  });

  it('copying: leaves a whole copy under its name or none, and the database as it was', {
    timeout,
  }, async () => {
    const copies: string[] = [];
    const cut = await killedOften(
      () => {
        const target = join(folder, `copy-${copies.length}.sqlite`);
        copies.push(target);
        return runCommand(['backup', target, '--data', join(folder, 'data')]).process;
      },
      false,
      () => void expectAllThere(file),
    );
    const whole = copies.filter((copy) => existsSync(copy));
    for (const copy of whole) expectAllThere(copy);
    expect(cut).toBeGreaterThan(0);
    process.stderr.write(`copying: ${cut} kills, ${whole.length} whole copies\n`);
  });
});
