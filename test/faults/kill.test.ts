import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { databaseFile } from '../../daemon/store/open.ts';
import { randomFromWords } from '../../sensors/shed/physics/random.ts';
import { freePort } from '../ingest/mosquitto.ts';
import { apart, handSum } from '../journey/hand-sum.ts';
import { type RunningDaemon, runCommand, startDaemon } from '../journey/running-daemon.ts';
import { siteApi } from '../journey/site-api.ts';
import { killCount } from './kill-count.ts';
import { persistentNode, type SentReading } from './persistent-node.ts';
import { storedReadings } from './stored-readings.ts';

/*
 * The fault injected: the daemon's process is killed (SIGKILL) at random moments, during start-up,
 * intake and recomputation alike, while nodes send.
 */
const kills = killCount(20);
const sensors = ['north', 'south', 'loft', 'cellar'];
const window = 40;
const start = Date.UTC(2025, 5, 1, 6, 0, 0);
const minute = 60_000;
const hourMs = 60 * minute;
/** Degree-hours in an hour at 20 °C over a datum of 5 °C. */
const perHour = 15;

let folder: string;
let daemon: RunningDaemon | null;

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'boardcure-kill-'));
  daemon = null;
});
afterEach(async () => {
  await daemon?.kill();
  await rm(folder, { recursive: true, force: true });
});

/**
 * What a node sends: a reading a minute or so, colder than the datum at times, a gap of hours now
 * and then, and one in twelve late by up to a day.
 */
function recording(seed: number): () => SentReading {
  const random = randomFromWords([seed, 2, 3, 4]);
  let at = start;
  const late: { due: number; at: number }[] = [];
  let count = 0;
  const valueAt = (when: number) =>
    Math.round((11 + 9 * Math.sin((when - start) / (4 * hourMs) + seed)) * 1000) / 1000;
  return () => {
    count++;
    const overdue = late.findIndex(({ due }) => due <= count);
    if (overdue >= 0) {
      const [reading] = late.splice(overdue, 1);
      if (reading) return { at: reading.at, value: valueAt(reading.at) };
    }
    at += Math.round(random.between(40, 80) * 1000);
    if (random.uniform() < 1 / 500) at += Math.round(random.between(2, 5) * hourMs);
    if (random.uniform() < 1 / 12) {
      late.push({ due: count + Math.round(random.between(1, 1440)), at });
      at += Math.round(random.between(40, 80) * 1000);
    }
    return { at, value: valueAt(at) };
  };
}

describe('a daemon that is killed again and again under load', () => {
  it('has every reading that it acknowledged, once, and sums that agree with them', {
    timeout: 600_000,
  }, async () => {
    const random = randomFromWords([7, 20, 300, 4000]);
    const mqtt = await freePort();
    const data = join(folder, 'data');
    daemon = await startDaemon(data, { mqtt });
    let api = siteApi(daemon.http);
    const nodes = sensors.map((sensor, index) =>
      persistentNode(mqtt, sensor, recording(index + 1), window),
    );
    const batches = new Map<string, { batchId: string; placeId: string; finishedAt: number }>();
    for (const [index, sensor] of sensors.entries()) {
      const { id: placeId } = await api.createRoom(sensor);
      await api.placeSensor(sensor, placeId);
      const { id: batchId } = await api.createBatch(`Boards in ${sensor}`, placeId);
      const finishedAt = start + index * 37 * minute + 12_345;
      await api.recordCoat(batchId, finishedAt);
      batches.set(sensor, { batchId, placeId, finishedAt });
    }
    await daemon.kill();

    for (let kill = 1; kill < kills; kill++) {
      const args = ['--data', data, '--http', '127.0.0.1:0', '--mqtt', `127.0.0.1:${mqtt}`];
      const victim = runCommand(args);
      // Every other time starting up may be cut short as well.
      if (kill % 2 === 0) {
        const ready = new Promise((resolve) => victim.process.once('line', resolve));
        await Promise.race([ready, victim.ended]);
      }
      await pause(random.between(100, 2000));
      victim.process.kill('SIGKILL');
      expect(await victim.ended, victim.err()).toBeNull();
    }

    daemon = await startDaemon(data, { mqtt });
    await pause(300);
    for (const node of nodes) await node.finish();
    api = siteApi(daemon.http);
    const seen = new Map<string, number>();
    for (const [sensor, { batchId }] of batches) {
      seen.set(sensor, (await api.settledCoat(batchId)).degreeHours);
    }
    const { intake } = await api.health();
    expect(intake.refused).toBe(0);
    expect(await daemon.stop()).toBe(0);

    const file = storedReadings(databaseFile(data));
    expect(file.check).toBe('ok');
    expect(file.dirty).toBe(0);
    let acknowledged = 0;
    let worst = 0;
    for (const node of nodes) {
      const readings = file.readings.get(node.sensor) ?? [];
      const byTime = new Map(readings.map(({ at, value }) => [at, value]));
      const lost = [...node.acknowledged].filter(([at, value]) => byTime.get(at) !== value);
      expect(lost, `acknowledged readings of ${node.sensor} that are not in the file`).toEqual([]);
      // All that was sent was acknowledged in the end, and nothing else is there.
      expect(readings).toHaveLength(node.acknowledged.size);
      acknowledged += node.acknowledged.size;

      const { placeId, finishedAt } = batches.get(node.sensor) ?? { placeId: '', finishedAt: 0 };
      const expected = handSum(readings, finishedAt, Number.MAX_SAFE_INTEGER);
      worst = Math.max(worst, apart(seen.get(node.sensor) ?? 0, expected));

      const hours = file.hours.filter((row) => row.placeId === placeId);
      expect(hours.length).toBeGreaterThan(24);
      const from = Math.min(...hours.map(({ hour }) => hour)) * hourMs;
      const to = (Math.max(...hours.map(({ hour }) => hour)) + 1) * hourMs;
      const kept = hours.reduce((sum, { low }) => sum + low * perHour, 0);
      worst = Math.max(worst, apart(kept, handSum(readings, from, to)));
      for (const { hour, low } of hours) {
        const exact = handSum(readings, hour * hourMs, (hour + 1) * hourMs);
        expect(Math.abs(low * perHour - exact), `hour ${hour} of ${node.sensor}`).toBeLessThan(
          1e-9,
        );
      }
    }
    const interrupted = nodes.reduce((sum, node) => sum + node.interrupted(), 0);
    expect(interrupted).toBeGreaterThan(0);

    daemon = await startDaemon(data, { mqtt });
    api = siteApi(daemon.http);
    for (const [sensor, { batchId, finishedAt }] of batches) {
      const readings = file.readings.get(sensor) ?? [];
      const expected = handSum(readings, finishedAt, Number.MAX_SAFE_INTEGER);
      worst = Math.max(worst, apart((await api.settledCoat(batchId)).degreeHours, expected));
    }
    expect(worst).toBeLessThan(1e-9);
    process.stderr.write(
      `${kills} kills: ${acknowledged} readings acknowledged, ${interrupted} of them sent again, ` +
        `sums at most ${worst.toExponential(1)} apart\n`,
    );
  });
});
