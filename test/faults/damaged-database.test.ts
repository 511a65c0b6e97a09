import {
  closeSync,
  existsSync,
  openSync,
  readFileSync,
  rmSync,
  statSync,
  truncateSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { copyFile, mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { connectAsync } from 'mqtt';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { damageWatch } from '../../daemon/store/damage-watch.ts';
import { databaseFile, openForWriting } from '../../daemon/store/open.ts';
import { storeWriter } from '../../daemon/store/store.ts';
import { runCommand, startDaemon } from '../journey/running-daemon.ts';
import { day1, group, place, reading } from '../store/site-of-facts.ts';
import { timeUnknown } from '../store/store-sides.ts';

/*
 * The fault injected: the database file, or what lies beside it, is damaged while the daemon is off,
 * as a failing card or a careless hand would. It must be refused in words, and left as it is.
 */
const checker = new URL('../../.build/daemon/store/damage-process.js', import.meta.url);
const hours = 400;

let folder: string;
let file: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'boardcure-damaged-'));
  file = databaseFile(folder);
});
afterEach(() => rm(folder, { recursive: true, force: true }));

/** A database with readings enough for many pages, some of them packed; closed in order. */
function season(): void {
  const write = storeWriter(openForWriting(file), timeUnknown);
  write.createPlace(place());
  for (let hour = 0; hour < hours; hour++) {
    const from = day1 + hour * 3_600_000;
    const readings = Array.from({ length: 60 }, (_, minute) =>
      reading('n1', from + minute * 60_000, 18 + Math.sin(hour + minute)),
    );
    write.commitReadings(group(...readings));
  }
  while (write.packClosedHours(day1 + (hours / 2) * 3_600_000, 10_000).more);
  write.checkpoint();
  write.close();
}

function flip(at: number, length: number): void {
  const opened = openSync(file, 'r+');
  writeSync(opened, Buffer.alloc(length, 0xa5), 0, length, at);
  closeSync(opened);
}

/** What the daemon says when it will not start on the file. */
async function refusal(): Promise<string> {
  const before = existsSync(file) ? readFileSync(file) : null;
  const started = runCommand(['--data', folder, '--http', '127.0.0.1:0', '--mqtt', '127.0.0.1:0']);
  const code = await Promise.race([
    started.ended,
    new Promise<'ready'>((resolve) => started.process.once('line', () => resolve('ready'))),
  ]);
  if (code === 'ready') {
    started.process.kill('SIGKILL');
    await started.ended;
    throw new Error('The daemon started.');
  }
  expect(code).toBe(1);
  const after = existsSync(file) ? readFileSync(file) : null;
  expect(after === null || before === null ? after === before : after.equals(before)).toBe(true);
  return started.err();
}

const restoring = /boardcure restore <file> --replace/;

describe('a damaged database is refused at the start, in words, and left as it is', () => {
  it.each([
    { what: 'its first bytes', at: 0, length: 16 },
    { what: 'its page size', at: 16, length: 2 },
    { what: 'the root of its schema', at: 100, length: 40 },
  ])('flipped bytes in its header: $what', async ({ at, length }) => {
    season();
    flip(at, length);
    const said = await refusal();
    expect(said).toContain(file);
    expect(said).toMatch(restoring);
  });

  it('cut off in the middle', async () => {
    season();
    truncateSync(file, Math.floor(statSync(file).size / 2 / 2048) * 2048);
    expect(await refusal()).toMatch(restoring);
  });

  it('empty, where it was not', async () => {
    season();
    truncateSync(file, 0);
    expect(await refusal()).toMatch(/it is empty, though this folder held one.*boardcure restore/s);
  });

  it('gone', async () => {
    season();
    rmSync(file);
    expect(await refusal()).toMatch(/it is gone, though this folder held one/);
    expect(existsSync(file)).toBe(false);
  });

  it('something that is no database', async () => {
    writeFileSync(file, 'Dear diary, '.repeat(5000));
    expect(await refusal()).toMatch(restoring);
  });

  it('a first start that was cut off before anything was written is none', async () => {
    writeFileSync(file, '');
    const daemon = await startDaemon(folder);
    expect(await daemon.stop()).toBe(0);
  });
});

describe('a page of readings that is damaged', () => {
  it('is found by the nightly check at the latest; the next start refuses, and a backup goes', async () => {
    season();
    await copyFile(file, join(folder, 'backup'));
    // Every page in the last fifth: readings, which the start looks at by chance only.
    const pages = statSync(file).size / 2048;
    for (let page = Math.floor(pages * 0.8); page < pages; page++) flip(page * 2048, 64);
    const watch = damageWatch(file, checker);
    const faults = await watch.look();
    expect(faults.length).toBeGreaterThan(0);
    expect(watch.doubts()[0]?.text).toMatch(/database is damaged.*boardcure restore/);
    expect(await refusal()).toMatch(restoring);

    await copyFile(join(folder, 'backup'), file);
    const daemon = await startDaemon(folder);
    expect(await daemon.stop()).toBe(0);
    // Once it was found whole, nothing is left of the finding.
    expect(await readdir(folder)).not.toContain('boardcure.sqlite-damaged');
  });

  it('one that is whole is found whole', async () => {
    season();
    const watch = damageWatch(file, checker);
    expect(await watch.look()).toEqual([]);
    expect(watch.doubts()).toEqual([]);
  });
});

describe('a log that is lost', () => {
  async function killed(): Promise<void> {
    const daemon = await startDaemon(folder);
    const node = await connectAsync(`mqtt://127.0.0.1:${daemon.mqtt}`, { reconnectPeriod: 0 });
    await node.publishAsync('boardcure/shed/sensor/n1/air-temperature', '20', { qos: 1 });
    node.end(true);
    await daemon.kill();
  }

  it('after a kill, with what was acknowledged in it: refused', async () => {
    await killed();
    rmSync(`${file}-wal`);
    expect(await refusal()).toMatch(/its log .*-wal is gone.*put it back, or remove .*-state/s);
  });

  it('that another program has put into the file is none', async () => {
    await killed();
    const { default: BetterSqlite3 } = await import('better-sqlite3');
    const other = new BetterSqlite3(file);
    expect(other.prepare('select count(*) from sensor').pluck().get()).toBe(1);
    other.close();
    expect(existsSync(`${file}-wal`)).toBe(false);
    const daemon = await startDaemon(folder);
    expect(await daemon.stop()).toBe(0);
  });

  it('that lies beside a file which is gone: refused, and the log is kept', async () => {
    await killed();
    rmSync(file);
    const bytes = readFileSync(`${file}-wal`);
    expect(await refusal()).toMatch(/it is gone, though its log .*-wal is there/);
    expect(readFileSync(`${file}-wal`).equals(bytes)).toBe(true);
  });

  it('an orderly stop leaves none, and is no fault', async () => {
    season();
    expect(existsSync(`${file}-wal`)).toBe(false);
    const daemon = await startDaemon(folder);
    expect(await daemon.stop()).toBe(0);
  });
});
