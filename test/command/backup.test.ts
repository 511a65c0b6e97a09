import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import BetterSqlite3 from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { checkDatabase } from '../../daemon/store/backup-check.ts';
import { databaseFile } from '../../daemon/store/open.ts';
import { randomFromWords } from '../../sensors/shed/physics/random.ts';
import { persistentNode } from '../faults/persistent-node.ts';
import { type RunningDaemon, runCommand, startDaemon } from '../journey/running-daemon.ts';
import { fillSite, finished, isWhole, readingsIn } from './backup-site.ts';

let folder: string;
let data: string;
let daemon: RunningDaemon | null;

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'boardcure-backup-'));
  data = join(folder, 'data');
  daemon = null;
});
afterEach(async () => {
  await daemon?.kill();
  await rm(folder, { recursive: true, force: true });
});

/** Spoils a page in the middle of a file, as a failing memory card does. */
function spoil(file: string): void {
  const bytes = readFileSync(file);
  const page = 4096;
  const middle = Math.floor(bytes.length / page / 2) * page;
  bytes.fill(0x5a, middle, middle + page);
  writeFileSync(file, bytes);
}

describe('boardcure backup', () => {
  it('beside a daemon that takes in readings: whole, with all that was acknowledged before', async () => {
    daemon = await startDaemon(data);
    let at = Date.UTC(2025, 2, 1);
    const next = () => {
      at += 60_000;
      return { at, value: 18 };
    };
    const node = persistentNode(daemon.mqtt ?? 0, 'rack-1', next, 50);
    await vi.waitFor(() => expect(node.acknowledged.size).toBeGreaterThan(2000), {
      timeout: 60_000,
    });
    const before = [...node.acknowledged.keys()];
    const file = join(folder, 'copy.sqlite');
    const { code, out, err } = await finished('backup', file, '--data', data);
    const sentUntil = at;
    await node.finish();
    expect(code, err).toBe(0);
    expect(JSON.parse(out[0] ?? '')).toMatchObject({ event: 'backed-up', file });
    expect(isWhole(file)).toBe(true);
    const copied = new Set(readingsIn(file).map((reading) => reading.at));
    expect(before.filter((time) => !copied.has(time))).toEqual([]);
    expect(Math.max(...copied)).toBeLessThanOrEqual(sentUntil);
    expect(readdirSync(folder).filter((name) => name.includes('.part'))).toEqual([]);
  });

  it('a copy is one file that needs nothing beside it', async () => {
    fillSite(data);
    const file = join(folder, 'copy.sqlite');
    expect((await finished('backup', file, '--data', data)).code).toBe(0);
    const header = readFileSync(file).subarray(18, 20);
    // A 2 would mean that it wants its log. Source: SQLite, Database File Format, section 1.3.3.
    expect([...header]).toEqual([1, 1]);
    expect(readdirSync(folder).sort()).toEqual(['copy.sqlite', 'data']);
    expect(readingsIn(file)).toEqual(readingsIn(databaseFile(data)));
  });

  it('killed at any moment (SIGKILL), it leaves no half file under the name', async () => {
    fillSite(data, { readings: 150_000 });
    const random = randomFromWords([1, 2, 3, 4]);
    const file = join(folder, 'copy.sqlite');
    const part = `${file}.part`;
    let caughtHalfWay = 0;
    for (let kill = 0; kill < 10; kill++) {
      const command = runCommand(['backup', file, '--data', data, '--replace']);
      while (!existsSync(part) && command.process.exitCode === null) await pause(2);
      await pause(random.between(0, 150));
      command.process.kill('SIGKILL');
      await command.ended;
      if (existsSync(part)) caughtHalfWay++;
      if (existsSync(file)) expect(isWhole(file)).toBe(true);
    }
    expect(caughtHalfWay).toBeGreaterThan(0);
    const last = await finished('backup', file, '--data', data, '--replace');
    expect(last.code, last.err).toBe(0);
    expect(checkDatabase(file).kind).toBe('whole');
    expect(readdirSync(folder).sort()).toEqual(['copy.sqlite', 'data']);
  });

  it('a database with a spoilt page is not passed off as a backup', async () => {
    fillSite(data, { readings: 5000 });
    spoil(databaseFile(data));
    const file = join(folder, 'copy.sqlite');
    const { code, err } = await finished('backup', file, '--data', data);
    expect(code).toBe(1);
    expect(err).toMatch(/damaged|malformed/);
    expect(readdirSync(folder)).toEqual(['data']);
  });

  it('neither a file that is there, nor a folder, nor the database itself is written over', async () => {
    fillSite(data);
    const file = join(folder, 'copy.sqlite');
    writeFileSync(file, 'something else');
    const there = await finished('backup', file, '--data', data);
    expect(there.code).toBe(1);
    expect(there.err).toContain('--replace');
    expect(readFileSync(file, 'utf8')).toBe('something else');
    const isFolder = await finished('backup', folder, '--data', data, '--replace');
    expect(isFolder.err).toContain('is a folder');
    const itself = await finished('backup', databaseFile(data), '--data', data, '--replace');
    expect(itself.err).toContain('the database itself');
    expect(isWhole(databaseFile(data))).toBe(true);
  });

  it.skipIf(process.getuid?.() !== 0)(
    'with too little room it says so and leaves the rest of the room alone',
    async ({ skip }) => {
      fillSite(data);
      const small = join(folder, 'small');
      mkdirSync(small);
      // The fault injected: a disk of 8 MB, less than a copy is to leave free.
      const mounted = spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=8m', 'tmpfs', small]);
      if (mounted.status !== 0) skip('no small disk could be mounted here');
      try {
        const full = await finished('backup', join(small, 'copy.sqlite'), '--data', data);
        expect(full.code).toBe(1);
        expect(full.err).toContain('too little room');
        expect(readdirSync(small)).toEqual([]);
      } finally {
        spawnSync('umount', [small]);
      }
    },
  );

  it('without a database, or without a name, it says what to do', async () => {
    mkdirSync(data);
    const none = await finished('backup', join(folder, 'copy.sqlite'), '--data', data);
    expect(none.code).toBe(1);
    expect(none.err).toContain('--data');
    expect((await finished('backup', '--data', data)).code).toBe(2);
    fillSite(data);
    const nowhere = await finished('backup', join(folder, 'usb/copy.sqlite'), '--data', data);
    expect(nowhere.err).toContain('plugged in');
    expect(existsSync(join(folder, 'usb'))).toBe(false);
  });
});

describe('the check of a copy', () => {
  it('tells a missing row, a newer version and a strange database apart', () => {
    fillSite(data);
    const file = databaseFile(data);
    const check = checkDatabase(file);
    if (check.kind !== 'whole') throw new Error(check.because);
    const more = { ...check.counts, remark: 2 };
    expect(checkDatabase(file, more)).toMatchObject({
      because: expect.stringContaining('remark has 1 rows instead of 2'),
    });
    const db = new BetterSqlite3(file);
    db.pragma('user_version = 999');
    db.close();
    expect(checkDatabase(file)).toMatchObject({ because: expect.stringContaining('newer') });
    const strange = join(folder, 'strange.sqlite');
    const other = new BetterSqlite3(strange);
    other.exec('create table anything (a)');
    other.close();
    expect(checkDatabase(strange)).toMatchObject({
      because: expect.stringContaining('not one of Boardcure'),
    });
  });
});
