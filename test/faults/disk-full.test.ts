import { execFileSync } from 'node:child_process';
import { closeSync, existsSync, openSync, readdirSync, rmSync, statSync, writeSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setImmediate as nextTurn, setTimeout as pause } from 'node:timers/promises';
import { SqliteError } from 'better-sqlite3';
import { connect } from 'mqtt';
import { afterAll, afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { BackupRefusal, copyDatabase } from '../../daemon/store/backup-copy.ts';
import { isDiskFull } from '../../daemon/store/disk-full.ts';
import { databaseFile, openForReading } from '../../daemon/store/open.ts';
import { storeReader } from '../../daemon/store/store.ts';
import { fillSite } from '../command/backup-site.ts';
import { freePort } from '../ingest/mosquitto.ts';
import { apart, handSum } from '../journey/hand-sum.ts';
import { type RunningDaemon, startDaemon } from '../journey/running-daemon.ts';
import { siteApi } from '../journey/site-api.ts';
import { persistentNode, type SentReading } from './persistent-node.ts';

/*
 * The fault injected: the disk that the database lies on is full, a small tmpfs filled by another
 * file, while nodes send; later there is space again.
 */
const diskMiB = 8;
const start = Date.UTC(2025, 5, 1, 6);
const minute = 60_000;

function mounted(folder: string, sizeMiB: number): string | null {
  try {
    execFileSync('mount', ['-t', 'tmpfs', '-o', `size=${sizeMiB}m`, 'tmpfs', folder], {
      stdio: 'pipe',
    });
    return null;
  } catch (cause) {
    return `no small disk can be mounted here: ${String((cause as Error).message).trim()}`;
  }
}

const disk = await mkdtemp(join(tmpdir(), 'boardcure-disk-'));
const why = mounted(disk, diskMiB);
const unmount = () => {
  if (why === null) execFileSync('umount', [disk]);
};
if (why !== null) process.stderr.write(`\n*** SKIPPED, NOT TESTED (small disk): ${why}\n`);
const onSmallDisk = why === null ? describe : describe.skip;

/** Takes all the space that is left, to the last byte. */
function fill(on = disk): void {
  const file = openSync(join(on, 'ballast'), 'a');
  for (const size of [1_048_576, 65_536, 4096, 1]) {
    try {
      for (;;) writeSync(file, Buffer.alloc(size));
    } catch (cause) {
      if ((cause as NodeJS.ErrnoException).code !== 'ENOSPC') throw cause;
    }
  }
  closeSync(file);
}
const free = () => rmSync(join(disk, 'ballast'));

let daemon: RunningDaemon | null = null;
beforeEach(() => {
  daemon = null;
});
afterEach(async () => {
  await daemon?.kill();
});
afterAll(async () => {
  unmount();
  await rm(disk, { recursive: true, force: true });
});

/** A reading a minute, warmer by day than by night. */
function readings(): () => SentReading {
  let count = 0;
  return () => {
    count++;
    const value = Math.round((15 + 6 * Math.sin(count / 200)) * 100) / 100;
    return { at: start + count * minute, value };
  };
}

/** What the closed file holds, found whole. */
function readingsIn(file: string): SentReading[] {
  const db = openForReading(file);
  expect(db.pragma('integrity_check', { simple: true })).toBe('ok');
  const reader = storeReader(db);
  const key = reader.sensorById('node')?.key ?? 0;
  const stored = reader.readingsBetween(key, 'air-temperature', 0, Number.MAX_SAFE_INTEGER);
  reader.close();
  return stored.map(({ at, raw }) => ({ at, value: raw }));
}

onSmallDisk('a disk that is full', () => {
  it('stops acknowledgements, says so, and goes on by itself when there is space', async () => {
    const mqtt = await freePort();
    const data = join(disk, 'data');
    daemon = await startDaemon(data, { mqtt });
    const api = siteApi(daemon.http);
    const node = persistentNode(mqtt, 'node', readings(), 20);
    await vi.waitFor(() => expect(node.acknowledged.size).toBeGreaterThan(200), 20_000);
    const { id: placeId } = await api.createRoom('Loft');
    await api.placeSensor('node', placeId);
    const { id: batchId } = await api.createBatch('Boards', placeId);
    await api.recordCoat(batchId, start);

    fill();
    await vi.waitFor(async () => expect((await api.health()).intake.refusing).toBe(true), {
      timeout: 30_000,
      interval: 100,
    });
    const health = await api.health();
    expect(health.status).toBe('degraded');
    expect(health.reasons.join()).toMatch(/disk is full.*Free some space/);
    const acknowledgedThen = node.acknowledged.size;
    // One more node, which comes back at once whenever it is let go.
    const hasty = connect(`mqtt://127.0.0.1:${mqtt}`, { reconnectPeriod: 50 });
    hasty.on('error', () => {});
    let connects = 0;
    hasty.on('packetreceive', ({ cmd }) => {
      if (cmd === 'connack') connects++;
    });
    const toldHasty = hasty.publishAsync('boardcure/shed/sensor/hasty/battery', '80', { qos: 1 });
    await pause(12_000);
    expect(node.acknowledged.size).toBe(acknowledgedThen);
    // Held, and let go once at most: who is cut off at once comes back 20 times a second.
    expect(connects).toBeLessThanOrEqual(3);
    expect((await api.health()).intake.refusing).toBe(true);

    free();
    await vi.waitFor(() => expect(node.acknowledged.size).toBeGreaterThan(acknowledgedThen + 200), {
      timeout: 30_000,
      interval: 100,
    });
    expect((await api.health()).intake.refusing).toBe(false);
    expect((await api.health()).reasons.join()).not.toMatch(/disk is full/);
    await toldHasty;
    await hasty.endAsync();
    await node.finish();
    const seen = (await api.settledCoat(batchId)).degreeHours;
    expect(await daemon.stop()).toBe(0);

    const stored = readingsIn(databaseFile(data));
    daemon = await startDaemon(data, { mqtt });
    const again = siteApi(daemon.http);
    const byTime = new Map(stored.map(({ at, value }) => [at, value]));
    expect([...node.acknowledged].filter(([at, value]) => byTime.get(at) !== value)).toEqual([]);
    expect(stored).toHaveLength(node.acknowledged.size);
    const expected = handSum(stored, start, Number.MAX_SAFE_INTEGER);
    expect(apart(seen, expected)).toBeLessThan(1e-9);
    expect(apart((await again.settledCoat(batchId)).degreeHours, expected)).toBeLessThan(1e-9);
    process.stderr.write(
      `disk full: ${node.acknowledged.size} readings acknowledged, none lost; ` +
        `a node that comes back at once connected ${connects} times in 12 s\n`,
    );
  });

  it('at the start: either it starts and holds what comes, or it says what to do', async () => {
    const data = join(disk, 'late');
    daemon = await startDaemon(data);
    await daemon.kill();
    fill();
    const said = await startDaemon(data).then(
      async (started) => {
        daemon = started;
        return 'started';
      },
      (cause: Error) => cause.message,
    );
    expect(said).toMatch(/^started$|the disk is full. Free some space/);
    process.stderr.write(`start on a full disk: ${said.slice(0, 200)}\n`);
    await daemon?.kill();
    free();
    daemon = await startDaemon(data);
    expect(await daemon.stop()).toBe(0);
  });

  it('is told from other input and output errors, whatever SQLite calls it', () => {
    // SQLite, result codes: a log that cannot grow is SQLITE_IOERR_SHMSIZE, a quota SQLITE_IOERR_WRITE.
    const file = join(disk, 'any');
    const failures = ['SQLITE_IOERR_SHMSIZE', 'SQLITE_IOERR_WRITE'].map(
      (code) => new SqliteError('disk I/O error', code),
    );
    expect(failures.map((cause) => isDiskFull(cause, file))).toEqual([false, false]);
    fill();
    expect(failures.map((cause) => isDiskFull(cause, file))).toEqual([true, true]);
    expect(isDiskFull(new SqliteError('constraint', 'SQLITE_CONSTRAINT'), file)).toBe(false);
    free();
    expect(isDiskFull(new SqliteError('full', 'SQLITE_FULL'), file)).toBe(true);
  });
});

onSmallDisk('a disk that gets full in the middle of a backup', () => {
  /** Room for a database, its copy, and what a copy has to leave free. */
  const roomMiB = 96;
  let room: string;
  beforeEach(async () => {
    room = await mkdtemp(join(tmpdir(), 'boardcure-room-'));
    expect(mounted(room, roomMiB)).toBeNull();
  });
  afterEach(async () => {
    await daemon?.kill();
    execFileSync('umount', [room]);
    await rm(room, { recursive: true, force: true });
  });

  it('loses the half copy only: it is said why, and the daemon beside it goes on', async () => {
    const mqtt = await freePort();
    const data = join(room, 'data');
    fillSite(data, { readings: 100_000 });
    const file = databaseFile(data);
    // Several steps of a copy, of 500 pages each.
    expect(statSync(file).size).toBeGreaterThan(4 * 1_048_576);
    daemon = await startDaemon(data, { mqtt });
    const node = persistentNode(mqtt, 'node', readings(), 20);
    await vi.waitFor(() => expect(node.acknowledged.size).toBeGreaterThan(50), 20_000);

    const target = join(room, 'copy.sqlite');
    const told = copyDatabase(file, target).then(
      () => 'copied',
      (cause: Error) => cause,
    );
    // Between two steps of a copy; what it has gathered in memory by then finds no room.
    for (let turn = 0; turn < 1000 && !existsSync(`${target}.part`); turn++) await nextTurn();
    fill(room);
    const failure = await told;
    expect(failure).toBeInstanceOf(BackupRefusal);
    expect(String(failure)).toMatch(/disk of .* became full.*Make room/s);
    expect(readdirSync(room).sort()).toEqual(['ballast', 'data']);

    rmSync(join(room, 'ballast'));
    const before = node.acknowledged.size;
    await vi.waitFor(() => expect(node.acknowledged.size).toBeGreaterThan(before + 50), 20_000);
    expect((await copyDatabase(file, target)).file).toBe(target);
    await node.finish();
    expect(await daemon.stop()).toBe(0);
    const stored = new Map(readingsIn(file).map(({ at, value }) => [at, value]));
    expect([...node.acknowledged].filter(([at, value]) => stored.get(at) !== value)).toEqual([]);
  });
});
