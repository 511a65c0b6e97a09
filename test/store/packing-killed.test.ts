import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { createInterface } from 'node:readline';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { databaseFile, openForReading, openForWriting } from '../../daemon/store/open.ts';
import { storeReader, storeWriter } from '../../daemon/store/store.ts';
import { seededRandom } from '../science/seeded-random.ts';
import { day1 } from './site-of-facts.ts';
import { builtWorker, temporaryFolder, timeUnknown } from './store-sides.ts';

const minute = 60_000;
const sensors = ['n1', 'n2', 'n3', 'n4'];
const quantity = 'air-temperature';

let folder: string;
let remove: () => void;
beforeEach(() => {
  ({ folder, remove } = temporaryFolder());
});
afterEach(() => remove());

/**
 * Commits a quarter of an hour of each sensor at a time, some of it late, tells so, and packs in
 * small slices in between; from where it is told to on.
 */
const program = `
  const { openForWriting, databaseFile } = await import(process.argv[1] + 'open.js');
  const { storeWriter } = await import(process.argv[1] + 'store.js');
  const write = storeWriter(openForWriting(databaseFile(process.argv[2])), ${timeUnknown});
  for (let i = Number(process.argv[3]); ; i++) {
    // Every fifth quarter is an hour and a half late.
    const quarter = i % 5 === 4 ? i - 4 : i + (i % 5 < 1 ? 1_000_000 : 0);
    const readings = [];
    for (let k = 0; k < 15; k++) {
      const at = ${day1} + (quarter * 15 + k) * ${minute};
      for (const sensor of ${JSON.stringify(sensors)}) {
        readings.push({ sensor, quantity: '${quantity}', at, raw: i + k / 100, flags: 0 });
      }
    }
    write.commitReadings({ readings, refused: [], arrivedAt: ${day1} });
    process.stdout.write(i + '\\n');
    for (let slice = 0; slice < 3; slice++) write.packClosedHours(Number.MAX_SAFE_INTEGER, 20);
  }
`;

function start(from: number): { process: ChildProcess; told: () => number } {
  const stores = new URL('./', builtWorker).href;
  const child = spawn(
    process.execPath,
    ['--input-type=module', '-e', program, '--', stores, folder, String(from)],
    { stdio: ['ignore', 'pipe', 'inherit'] },
  );
  let last = from - 1;
  createInterface({ input: child.stdout as NodeJS.ReadableStream }).on('line', (line) => {
    last = Number(line);
  });
  return { process: child, told: () => last };
}

describe('a process that is killed while it packs', () => {
  it('has lost nothing it told of, and has nothing twice', async () => {
    const random = seededRandom(8);
    let from = 0;
    for (let kill = 0; kill < 8; kill++) {
      const running = start(from);
      while (running.told() < from) await new Promise((resolve) => setTimeout(resolve, 5));
      await new Promise((resolve) => setTimeout(resolve, random() * 150));
      running.process.kill('SIGKILL');
      await once(running.process, 'close');
      from = running.told() + 1;
      compare(from);
    }
    // What it may have committed and not told of is sent again, and counted once.
    const write = storeWriter(openForWriting(databaseFile(folder)), timeUnknown);
    while (write.packClosedHours(Number.MAX_SAFE_INTEGER, 1000).more);
    write.close();
    compare(from);
  });

  function compare(told: number): void {
    const read = storeReader(openForReading(databaseFile(folder)));
    const expected = [...Array(told).keys()].flatMap((i) =>
      Array.from({ length: 15 }, (_, k) => ({
        at: day1 + ((i % 5 === 4 ? i - 4 : i + (i % 5 < 1 ? 1_000_000 : 0)) * 15 + k) * minute,
        raw: i + k / 100,
      })),
    );
    for (const { key } of read.sensors()) {
      const all = read.readingsBetween(key, quantity, 0, Number.MAX_SAFE_INTEGER);
      const found = new Map(all.map(({ at, raw }) => [at, raw]));
      expect(found.size).toBe(all.length);
      // One group may be on disk that nobody was told of.
      expect([0, 15]).toContain(all.length - expected.length);
      expect(expected.filter(({ at, raw }) => found.get(at) !== raw)).toEqual([]);
    }
    expect(read.sensors()).toHaveLength(sensors.length);
    read.close();
  }
});
