import { execFile } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { mkdtemp, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { promisify } from 'node:util';
import { describe, expect, it } from 'vitest';
import { needs, programPath, RECORDED_AIR } from '../house/needs.ts';
import { startMosquitto } from '../ingest/mosquitto.ts';
import { freshSite } from './fresh-site.ts';
import { apart, handSum, type Reading } from './hand-sum.ts';
import { type RunningDaemon, runCommand, startDaemon } from './running-daemon.ts';
import { type SiteApi, siteApi } from './site-api.ts';

const execute = promisify(execFile);
const hourMs = 3_600_000;
const dayMs = 24 * hourMs;
const forEver = Number.MAX_SAFE_INTEGER;

const site = freshSite();

/** A room with one batch in it, one coat on, as the operator enters them. */
async function freshBatch(api: SiteApi, finishedAt: number) {
  const { id: placeId } = await api.createRoom('Paint room');
  const { id: batchId } = await api.createBatch('Gable boards', placeId);
  await api.recordCoat(batchId, finishedAt);
  return { placeId, batchId };
}

/** Waits until the store has taken in so many readings; over another broker they trickle in. */
async function accepted(api: SiteApi, count: number): Promise<void> {
  for (let attempt = 0; attempt < 400; attempt++) {
    const { intake } = await api.health();
    if (intake.accepted >= count) return;
    await pause(50);
  }
  throw new Error(`Fewer than ${count} readings came in.`);
}

async function replay(file: string, mqttPort: number, args: string[] = []) {
  const command = runCommand(['replay', file, '--mqtt', `127.0.0.1:${mqttPort}`, ...args]);
  expect(await command.ended, command.err()).toBe(0);
  return JSON.parse(command.out.at(-1) ?? '') as { acknowledged: number; seconds: number };
}

const report = (what: string, seen: number, expected: number) =>
  process.stderr.write(
    `${what}: ${seen.toFixed(6)} °C·h, by hand ${expected.toFixed(6)}, apart ${apart(seen, expected).toExponential(1)}\n`,
  );

/** Temperatures of three days about the datum, with a gap that is too long to count. */
function inventedReadings(from: number): Reading[] {
  const readings: Reading[] = [];
  for (let step = 0; step < 900; step++) {
    if (step > 400 && step < 460) continue;
    const value = 7 + 9 * Math.sin(step / 46) + ((step * 7) % 5) / 10;
    readings.push({ at: from + step * 300_000, value: Math.round(value * 100) / 100 });
  }
  return readings;
}

async function writeTable(readings: readonly Reading[]): Promise<string> {
  const file = site.path('room.csv');
  const rows = readings.map(
    ({ at, value }) => `${new Date(at).toISOString()},rack-1,air-temperature,${value}`,
  );
  await writeFile(file, `time,sensor,quantity,value\n${rows.join('\n')}\n`);
  return file;
}

/** The recorded office, its local times taken for UTC on both sides. */
function recordedRoom(): { file: string; readings: Reading[] } {
  const file = join(RECORDED_AIR, 'office-minute-2015.csv');
  const [, ...rows] = readFileSync(file, 'utf8').trim().split('\n');
  const readings = rows.map((row) => {
    const [time, temp] = row.split(',');
    return { at: Date.parse(`${time}Z`), value: Number(temp) };
  });
  return { file, readings };
}
const officeMap = [
  '--map',
  'temp_c=office/air-temperature',
  '--map',
  'rh_pct=office/relative-humidity',
];

async function judgeRecordedRoom(daemon: RunningDaemon, brokerPort: number, what: string) {
  const { file, readings } = recordedRoom();
  const api = siteApi(daemon.http);
  // Before its first session another broker keeps nothing for us.
  await api.healthy();
  const finishedAt = (readings[0]?.at ?? 0) + 1_234_567;
  const { placeId, batchId } = await freshBatch(api, finishedAt);
  const { acknowledged, seconds } = await replay(file, brokerPort, officeMap);
  expect(acknowledged).toBe(readings.length * 2);
  await accepted(api, readings.length * 2);
  await api.placeSensor('office', placeId);
  const coat = await api.settledCoat(batchId);
  const expected = handSum(readings, finishedAt, forEver);
  report(
    `${what}, ${Math.round(acknowledged / seconds)} readings a second`,
    coat.degreeHours,
    expected,
  );
  expect(apart(coat.degreeHours, expected)).toBeLessThan(1e-6);
  expect(coat.model).toEqual({ rate: 'nurse-saul', datumC: 5, maxGapHours: 3 });
  expect(coat.stage).toBe('dry-through');
}

describe('degree-hours equal what anyone reckons by hand', () => {
  needs('mosquitto')('from a hundred readings', () => {
    it('sent with mosquitto_pub -q 1', async () => {
      const daemon = await site.daemon();
      const api = siteApi(daemon.http);
      const from = Date.now() - 4 * hourMs;
      const readings = Array.from({ length: 100 }, (_, index) => ({
        at: from + index * 137_000,
        value: Math.round((4 + index / 6) * 100) / 100,
      }));
      const finishedAt = from + 10 * 60_000;
      const { placeId, batchId } = await freshBatch(api, finishedAt);
      for (const { at, value } of readings) {
        await execute(programPath('mosquitto_pub') ?? '', [
          ...['-h', '127.0.0.1', '-p', String(daemon.mqtt), '-q', '1'],
          ...['-t', 'boardcure/shed/sensor/rack-1/air-temperature'],
          ...['-m', JSON.stringify({ value, time: new Date(at).toISOString() })],
        ]);
      }
      await api.placeSensor('rack-1', placeId);
      const coat = await api.settledCoat(batchId);
      const expected = handSum(readings, finishedAt, forEver);
      report('mosquitto_pub', coat.degreeHours, expected);
      expect(apart(coat.degreeHours, expected)).toBeLessThan(1e-6);
      expect((await api.health()).intake).toMatchObject({ accepted: 100, refused: 0 });
    });
  });

  it('from a table that is replayed, with cold hours and a gap, and again without doubling', async () => {
    const daemon = await site.daemon();
    const api = siteApi(daemon.http);
    const from = Date.UTC(2024, 9, 3, 5, 30, 0);
    const readings = inventedReadings(from);
    const finishedAt = from + 3 * hourMs + 77_000;
    const { placeId, batchId } = await freshBatch(api, finishedAt);
    const file = await writeTable(readings);
    await replay(file, daemon.mqtt ?? 0);
    await api.placeSensor('rack-1', placeId);
    const coat = await api.settledCoat(batchId);
    const expected = handSum(readings, finishedAt, forEver);
    report('generated table', coat.degreeHours, expected);
    expect(apart(coat.degreeHours, expected)).toBeLessThan(1e-6);
    const across = handSum(readings, finishedAt, forEver, { datumC: 5, maxGapHours: 1000 });
    expect(across).toBeGreaterThan(expected);
    expect(apart(coat.degreeHoursHigh, across)).toBeLessThan(1e-6);

    await replay(file, daemon.mqtt ?? 0);
    expect((await api.settledCoat(batchId)).degreeHours).toBe(coat.degreeHours);
    expect((await api.health()).intake.duplicates).toBe(readings.length);
  });

  needs('recorded-air')('from a recorded room', () => {
    it('replayed into the embedded broker', async () => {
      const daemon = await site.daemon();
      await judgeRecordedRoom(daemon, daemon.mqtt ?? 0, 'recorded room, embedded broker');
    });
  });

  needs('recorded-air', 'mosquitto')('from a recorded room', () => {
    it('replayed into mosquitto as the broker', async () => {
      const mosquitto = await startMosquitto();
      site.atEnd(() => mosquitto.remove());
      const daemon = await site.daemon(`mqtt://127.0.0.1:${mosquitto.port}`);
      await judgeRecordedRoom(daemon, mosquitto.port, 'recorded room, mosquitto');
    });
  });
});

describe('the first forecast of a coat', () => {
  /** Days from the coat to the time by which recoating is as likely as not, at a steady temperature. */
  async function daysToRecoat(tempC: number): Promise<number> {
    const data = await mkdtemp(site.path('steady-'));
    const daemon = await startDaemon(data);
    site.atEnd(() => daemon.kill());
    const api = siteApi(daemon.http);
    const now = Date.now();
    const finishedAt = now - 8 * hourMs;
    const readings: Reading[] = [];
    for (let at = finishedAt - hourMs; at <= now; at += 600_000)
      readings.push({ at, value: tempC });
    const { placeId, batchId } = await freshBatch(api, finishedAt);
    await replay(await writeTable(readings), daemon.mqtt ?? 0);
    await api.placeSensor('rack-1', placeId);
    const { gates } = await api.settledCoat(batchId);
    const { early, likely, late, verdict } = gates.recoat;
    expect(verdict).toBe('wait');
    const days = [early, likely, late].map((at) => (Date.parse(at ?? '') - finishedAt) / dayMs);
    expect(days).toEqual([...days].sort((a, b) => a - b));
    process.stderr.write(
      `steady ${tempC} °C: recoat after ${days.map((one) => one.toFixed(2)).join(' / ')} days\n`,
    );
    return days[1] ?? 0;
  }

  // Common practice, no source: a coat dries in 2 to 3 days under normal conditions.
  it('at a steady 20 °C recoating is likely between 2 and 3 days after it; at 10 °C three times as late', async () => {
    const warm = await daysToRecoat(20);
    expect(warm).toBeGreaterThan(2);
    expect(warm).toBeLessThan(3);
    // Nurse and Saul with a datum of 5 °C: (20 − 5) / (10 − 5) = 3 (ASTM C1074).
    const cold = await daysToRecoat(10);
    expect(apart(cold / warm, 3)).toBeLessThan(0.01);
  });
});
