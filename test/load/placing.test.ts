import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { type RunningDaemon, startDaemon } from '../journey/running-daemon.ts';
import { siteApi } from '../journey/site-api.ts';
import { peakMemoryMB } from './peak-memory.ts';
import { packedFlood, rawClient } from './raw-client.ts';

/*
 * The fault injected: sensors that hang nowhere yet send a flood within one hour, and are then placed one
 * after the other where boards cure, so that the whole hour is reckoned again and again. The daemon's memory
 * stays bounded, and each of the sums is that of all that was sent. How long it takes is printed, and not
 * asserted.
 */
const mostMB = 250;
const hourMs = 3_600_000;
const sensors = 6;
const each = 70_000;
const stepMs = 51;

let folder: string;
let daemon: RunningDaemon;

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'boardcure-load-'));
  daemon = await startDaemon(join(folder, 'data'));
});
afterEach(async () => {
  await daemon.kill();
  rmSync(folder, { recursive: true, force: true });
});

it('placing the sensors of an hour with 420,000 readings', { timeout: 600_000 }, async () => {
  const api = siteApi(daemon.http);
  const start = (Math.floor(Date.now() / hourMs) - 3) * hourMs;
  for (let i = 0; i < sensors; i++) {
    const flooder = await rawClient(daemon.mqtt ?? 0, `flood-${i}`);
    flooder.socket.write(packedFlood(`flood-${i}`, each, start + i, stepMs));
    await flooder.heard(each / 1000);
    flooder.socket.destroy();
  }
  const { id } = await api.createRoom('Room');
  const batch = await api.createBatch('Boards', id);
  await api.recordCoat(batch.id, start);
  const begun = performance.now();
  for (let i = 0; i < sensors; i++) {
    await api.placeSensor(`flood-${i}`, id);
    const coat = await api.settledCoat(batch.id);
    // From 15 °C·h an hour at 20 °C: the coldest of sensors that go from 18 to 23 °C is never above 20.5.
    expect(coat.degreeHours).toBeGreaterThan(12);
    expect(coat.degreeHours).toBeLessThan(15.6);
  }
  const seconds = (performance.now() - begun) / 1000;
  const peak = peakMemoryMB(daemon.process.pid);
  process.stderr.write(
    `420,000 readings of an hour placed: at most ${peak.toFixed(0)} MB resident, ${seconds.toFixed(1)} s\n`,
  );
  expect(peak).toBeLessThan(mostMB);
  expect(daemon.err()).not.toMatch(/uncaught|heap/i);
});
