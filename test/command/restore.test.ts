import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { cp, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import BetterSqlite3 from 'better-sqlite3';
import { connectAsync } from 'mqtt';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { databaseFile } from '../../daemon/store/open.ts';
import { randomFromWords } from '../../sensors/shed/physics/random.ts';
import { type RunningDaemon, runCommand, startDaemon } from '../journey/running-daemon.ts';
import { siteApi } from '../journey/site-api.ts';
import { fillSite, finished, isWhole, readingsIn } from './backup-site.ts';

const hourMs = 3_600_000;

let folder: string;
let data: string;
let daemons: RunningDaemon[];

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'boardcure-restore-'));
  data = join(folder, 'data');
  daemons = [];
});
afterEach(async () => {
  for (const daemon of daemons) await daemon.kill();
  await rm(folder, { recursive: true, force: true });
});

async function daemonOn(where: string): Promise<RunningDaemon> {
  const daemon = await startDaemon(where);
  daemons.push(daemon);
  return daemon;
}

async function publish(daemon: RunningDaemon, readings: { at: number; value: number }[]) {
  const client = await connectAsync(`mqtt://127.0.0.1:${daemon.mqtt}`);
  for (const { at, value } of readings) {
    const payload = JSON.stringify({ value, time: at });
    await client.publishAsync('boardcure/shed/sensor/rack-1/air-temperature', payload, { qos: 1 });
  }
  await client.endAsync();
}

/** What a person would compare: the coat's sums, and the curve of the readings. */
async function answers(http: number, batchId: string, from: number, to: number) {
  const api = siteApi(http);
  const { gates, ...coat } = await api.settledCoat(batchId);
  const iso = (at: number) => new Date(at).toISOString();
  const query = `sensor=rack-1&quantity=air-temperature&from=${iso(from)}&to=${iso(to)}&points=500`;
  const series = await api.ask('GET', `/api/v1/series?${query}`);
  expect(series.status).toBe(200);
  return {
    coat: { ...coat, gapHours: null },
    verdicts: Object.values(gates).map(({ verdict }) => verdict),
    series: series.body,
    places: (await api.ask('GET', '/api/v1/places')).body,
  };
}

/** A file of every kind that may lie beside a database, by name. */
const namesOf = (where: string) => readdirSync(where).sort();

describe('boardcure restore', () => {
  it('a backup put into an empty folder gives the same answers', async () => {
    const first = await daemonOn(data);
    const api = siteApi(first.http);
    const room = await api.createRoom('Drying room');
    const batch = await api.createBatch('North wall', room.id);
    const coatedAt = Math.floor(Date.now() / hourMs) * hourMs - 60 * hourMs;
    await api.recordCoat(batch.id, coatedAt);
    const readings = Array.from({ length: 350 }, (_, index) => ({
      at: coatedAt + index * 600_000,
      value: Math.round((14 + 7 * Math.sin(index / 23)) * 100) / 100,
    }));
    await publish(first, readings);
    await api.placeSensor('rack-1', room.id);
    const to = coatedAt + 59 * hourMs;
    const before = await answers(first.http, batch.id, coatedAt, to);
    expect(before.coat.degreeHours).toBeGreaterThan(100);
    const file = join(folder, 'copy.sqlite');
    expect((await finished('backup', file, '--data', data)).code).toBe(0);
    await first.stop();

    const elsewhere = join(folder, 'elsewhere');
    const restored = await finished('restore', file, '--data', elsewhere);
    expect(restored.code, restored.err).toBe(0);
    expect(JSON.parse(restored.out[0] ?? '')).toMatchObject({ event: 'restored', aside: null });
    const second = await daemonOn(elsewhere);
    expect(await answers(second.http, batch.id, coatedAt, to)).toEqual(before);
  });

  it('data that are there stay unless told otherwise, and are kept aside whole then', async () => {
    fillSite(data, { readings: 50 });
    const file = join(folder, 'copy.sqlite');
    expect((await finished('backup', file, '--data', data)).code).toBe(0);
    const older = readingsIn(file);
    // The newest readings lie in the log only: a killed daemon has not put it back.
    const daemon = await daemonOn(data);
    await publish(daemon, [{ at: Date.UTC(2026, 5, 1), value: 21 }]);
    await daemon.kill();
    expect(existsSync(`${databaseFile(data)}-wal`)).toBe(true);

    const refused = await finished('restore', file, '--data', data);
    expect(refused.code).toBe(1);
    expect(refused.err).toContain('--replace');
    const done = await finished('restore', file, '--data', data, '--replace');
    expect(done.code, done.err).toBe(0);
    // Nothing of the old log was played into the restored database.
    expect(readingsIn(databaseFile(data))).toEqual(older);
    const { aside } = JSON.parse(done.out[0] ?? '');
    expect(aside).toMatch(/boardcure\.sqlite\.replaced-\d{4}-\d\d-\d\dT\d{6}Z$/);
    expect(readingsIn(aside)).toHaveLength(older.length + 1);
    expect(namesOf(data).filter((name) => name.includes('.part'))).toEqual([]);
  });

  it('the old log is not played into the restored database while something still reads the old one', async () => {
    fillSite(data, { readings: 50 });
    const file = join(folder, 'copy.sqlite');
    expect((await finished('backup', file, '--data', data)).code).toBe(0);
    const daemon = await daemonOn(data);
    await publish(daemon, [{ at: Date.UTC(2026, 5, 1), value: 21 }]);
    await daemon.kill();
    // An export, say: it keeps the log from being put back into its file.
    const reader = new BetterSqlite3(databaseFile(data), { readonly: true });
    reader.exec('begin');
    expect(reader.prepare('select count(*) from sensor').pluck().get()).toBe(2);
    const done = await finished('restore', file, '--data', data, '--replace');
    expect(done.code, done.err).toBe(0);
    reader.close();
    expect(readingsIn(databaseFile(data))).toEqual(readingsIn(file));
    const { aside } = JSON.parse(done.out[0] ?? '');
    expect(readingsIn(aside)).toHaveLength(101);
  });

  it('while a daemon works on the folder nothing is restored', async () => {
    const made = join(folder, 'made');
    fillSite(made);
    const daemon = await daemonOn(data);
    const refused = await finished('restore', databaseFile(made), '--data', data, '--replace');
    expect(refused.code).toBe(1);
    expect(refused.err).toContain('stop it first');
    await siteApi(daemon.http).healthy();
    expect(await daemon.stop()).toBe(0);
  });

  it('neither a strange file, nor a newer database, nor a damaged one comes in', async () => {
    fillSite(data, { readings: 3000 });
    const before = readFileSync(databaseFile(data));
    const text = join(folder, 'notes.txt');
    writeFileSync(text, 'not a database at all');
    const newer = join(folder, 'newer.sqlite');
    await cp(databaseFile(data), newer);
    const db = new BetterSqlite3(newer);
    db.pragma('user_version = 999');
    db.close();
    const damaged = join(folder, 'damaged.sqlite');
    const bytes = Buffer.from(before);
    bytes.fill(0x5a, 8 * 4096, 9 * 4096);
    writeFileSync(damaged, bytes);
    const half = join(folder, 'half.sqlite');
    writeFileSync(half, before.subarray(0, Math.floor(before.length / 2)));
    for (const file of [text, newer, damaged, half, join(folder, 'missing.sqlite')]) {
      const { code, err } = await finished('restore', file, '--data', data, '--replace');
      expect(code, file).toBe(1);
      expect(err).toMatch(/was not restored, because .+Choose another/s);
    }
    expect(readFileSync(databaseFile(data)).equals(before)).toBe(true);
  });

  it('a damaged database is put aside with its log, and the backup takes its place', async () => {
    fillSite(data);
    const file = join(folder, 'copy.sqlite');
    expect((await finished('backup', file, '--data', data)).code).toBe(0);
    writeFileSync(databaseFile(data), 'spoilt beyond all reading'.repeat(400));
    writeFileSync(`${databaseFile(data)}-wal`, 'and its log too');
    const done = await finished('restore', file, '--data', data, '--replace');
    expect(done.code, done.err).toBe(0);
    const { aside } = JSON.parse(done.out[0] ?? '');
    expect(readFileSync(aside, 'utf8')).toContain('spoilt beyond');
    expect(readingsIn(databaseFile(data))).toEqual(readingsIn(file));
  });

  it('killed at any moment (SIGKILL), the folder holds the old database or the new one, whole', async () => {
    const made = join(folder, 'made');
    fillSite(made, { readings: 60_000, sensors: ['new-1'] });
    fillSite(data, { readings: 60_000, sensors: ['old-1', 'old-2'] });
    const random = randomFromWords([5, 6, 7, 8]);
    const file = databaseFile(data);
    const part = `${file}.restoring.part`;
    let caughtHalfWay = 0;
    for (let kill = 0; kill < 8; kill++) {
      const command = runCommand(['restore', databaseFile(made), '--data', data, '--replace']);
      while (!existsSync(part) && command.process.exitCode === null) await pause(1);
      await pause(random.between(0, 250));
      if (existsSync(part)) caughtHalfWay++;
      command.process.kill('SIGKILL');
      await command.ended;
      expect(isWhole(file)).toBe(true);
      expect([60_000, 120_000]).toContain(readingsIn(file).length);
    }
    expect(caughtHalfWay).toBeGreaterThan(0);
    const last = await finished('restore', databaseFile(made), '--data', data, '--replace');
    expect(last.code, last.err).toBe(0);
    expect(readingsIn(file)).toHaveLength(60_000);
    expect(existsSync(part)).toBe(false);
  });
});
