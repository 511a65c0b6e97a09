import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { apiAt } from '../../daemon/command/demo-api.ts';
import type { Series } from '../../daemon/contract/series.ts';
import { runCommand } from '../journey/running-daemon.ts';
import { type PlainReading, plainDegreeHours } from '../monitor/independent-sum.ts';

/** Simulated days, and how fast they pass. */
const days = Number(process.env.SOAK_DAYS ?? 30);
const speed = 5000;
const dayMs = 86_400_000;

const folder = mkdtempSync(join(tmpdir(), 'boardcure-soak-'));
const demo = runCommand([
  'demo',
  ...['--http', '127.0.0.1:0', '--mqtt', '127.0.0.1:0'],
  ...['--speed', String(speed), '--data', join(folder, 'data')],
]);
afterAll(() => {
  demo.process.kill('SIGKILL');
  rmSync(folder, { recursive: true, force: true });
});

/** Resident memory of the daemon, MB, as the kernel tells it. */
function residentMb(): number {
  const status = readFileSync(`/proc/${demo.process.pid}/status`, 'utf8');
  return Number(/VmRSS:\s+(\d+)/.exec(status)?.[1]) / 1024;
}

const line = () =>
  new Promise<string>((resolve) => {
    if (demo.out[0] !== undefined) resolve(demo.out[0]);
    else demo.process.once('line', resolve);
  });

it(`lives through ${days} simulated days: sums stay exact, memory flat, nothing refused`, async () => {
  const { http } = JSON.parse(await line()) as { http: number };
  const api = apiAt(`http://127.0.0.1:${http}`);
  const startAt = Date.parse((await api('overview', {})).now);
  const memoryMb: number[] = [];
  for (;;) {
    const { now } = await api('overview', {});
    memoryMb.push(residentMb());
    if (Date.parse(now) - startAt >= days * dayMs) break;
    await new Promise((resolve) => setTimeout(resolve, 1000));
  }

  const { intake, places } = await api('overview', {});
  expect(intake.refused).toBe(0);
  expect(intake.duplicates).toBe(0);
  const sensors = await api('listSensors', {});
  const batches = await api('listBatches', {});
  let compared = 0;
  let furthest = 0;
  for (const { id, placeId } of batches) {
    const place = places.find((one) => one.id === placeId);
    const here = sensors.filter((one) => one.placeId === placeId).map((one) => one.id);
    if (place?.kind !== 'rack' || here.length === 0) continue;
    const batch = await api('readBatch', { params: { id } });
    if (batch.moves.length > 1) continue;
    for (const coat of batch.coats) {
      if (coat.curedUntil === null) continue;
      const [from, to] = [coat.finishedAt, coat.curedUntil].map((at) => Date.parse(at));
      if (from === undefined || to === undefined) continue;
      const readings: PlainReading[] = [];
      for (const sensor of here) {
        const query = new URLSearchParams({
          sensor,
          quantity: 'air-temperature',
          from: new Date(from - 6 * 3_600_000).toISOString(),
          to: new Date(to + 6 * 3_600_000).toISOString(),
        });
        const reply = await fetch(`http://127.0.0.1:${http}/api/v1/series?${query}`);
        expect(reply.status).toBe(200);
        const series = (await reply.json()) as Series;
        series.at.forEach((at, i) => {
          const value = series.value[i];
          if (value !== null && value !== undefined) {
            readings.push({ sensor, at: Math.round(at * 1000), value });
          }
        });
      }
      const stays = here.map((sensor) => ({ sensor, level: 0, fromAt: Number.NEGATIVE_INFINITY }));
      const rules = { datumC: 5, maxGapHours: 3 };
      const { low: degreeHours } = plainDegreeHours(readings, stays, from, to, rules);
      furthest = Math.max(furthest, Math.abs(coat.degreeHours / degreeHours - 1));
      compared++;
    }
  }
  const quarter = Math.floor(memoryMb.length / 4);
  const mean = (values: number[]) => values.reduce((a, b) => a + b, 0) / values.length;
  const early = mean(memoryMb.slice(quarter, 2 * quarter));
  const late = mean(memoryMb.slice(-quarter));
  process.stdout.write(
    `${days} days, ${intake.accepted} readings, ${compared} coats compared, furthest apart ${furthest.toExponential(1)}; resident ${early.toFixed(0)} MB in the second quarter, ${late.toFixed(0)} MB in the last\n`,
  );
  expect(compared).toBeGreaterThan(0);
  expect(furthest).toBeLessThan(1e-9);
  // A leak of a few kilobytes a reading would show as a multiple of this.
  expect(late).toBeLessThan(early + 60);
  demo.process.kill('SIGTERM');
  expect(await demo.ended).toBe(0);
});
