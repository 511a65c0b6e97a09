import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { apiAt } from '../../daemon/command/demo-api.ts';
import { RECORDED_MS } from '../../daemon/command/demo-history.ts';
import type { Series } from '../../daemon/contract/series.ts';
import { silences } from '../../daemon/rules/counted-stays.ts';
import { databaseFile, openForReading } from '../../daemon/store/open.ts';
import { storeReader } from '../../daemon/store/store.ts';
import { SIMULATED_SENSORS } from '../../sensors/shed/cart-shed.ts';
import { runCommand } from '../journey/running-daemon.ts';
import {
  type PlainDoubt,
  type PlainReading,
  type PlainStay,
  plainDegreeHours,
} from '../monitor/independent-sum.ts';

/** Simulated days, and how fast they pass. */
const days = Number(process.env.SOAK_DAYS ?? 30);
const speed = 5000;
const dayMs = 86_400_000;
/**
 * What a database takes, bytes: empty; for each reading (test/bench/RESULTS.md); and for each hour
 * that is kept as a row, of a series or of the cure of a place, keys and indexes included. Measured.
 */
const TAKES = { empty: 300_000, reading: 3.9, row: 60 } as const;
const seriesCount = SIMULATED_SENSORS.flatMap(({ measures }) => measures).length;
const cureModels = 2;

function predictedBytes(readings: number, places: number): number {
  const hours = days * 24 + RECORDED_MS / 3_600_000;
  const rows = hours * (seriesCount + cureModels * places);
  return TAKES.empty + TAKES.reading * readings + TAKES.row * rows;
}

const folder = mkdtempSync(join(tmpdir(), 'boardcure-soak-'));
const demo = runCommand([
  'demo',
  ...['--http', '127.0.0.1:0', '--mqtt', '127.0.0.1:0'],
  ...['--speed', String(speed), '--faults', '8', '--data', join(folder, 'data')],
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

/** Open files, sockets and pipes of the daemon. */
const handles = () => readdirSync(`/proc/${demo.process.pid}/fd`).length;

/** What the daemon found wrong with air temperatures, as its database has it. */
function doubtsOnRecord(): PlainDoubt[] {
  const db = openForReading(databaseFile(join(folder, 'data')));
  try {
    const reader = storeReader(db);
    const names = new Map(reader.sensors().map(({ key, id }) => [key, id]));
    return reader
      .faults()
      .filter((fault) => silences(fault, 'air-temperature'))
      .map(({ sensorKey, fromAt, untilAt }) => ({
        sensor: names.get(sensorKey) ?? '',
        fromAt,
        untilAt: untilAt ?? Number.POSITIVE_INFINITY,
      }));
  } finally {
    db.close();
  }
}

const line = () =>
  new Promise<string>((resolve) => {
    if (demo.out[0] !== undefined) resolve(demo.out[0]);
    else demo.process.once('line', resolve);
  });

interface Compared {
  name: string;
  degreeHours: number;
  from: number;
  to: number;
  stays: PlainStay[];
  readings: PlainReading[];
}

it(`lives through ${days} simulated days with failing sensors`, async () => {
  const { http } = JSON.parse(await line()) as { http: number };
  const api = apiAt(`http://127.0.0.1:${http}`);
  const startAt = Date.parse((await api('overview', {})).now);
  const memoryMb: number[] = [];
  const open: number[] = [];
  for (;;) {
    const { now } = await api('overview', {});
    memoryMb.push(residentMb());
    open.push(handles());
    if (Date.parse(now) - startAt >= days * dayMs) break;
    await new Promise((resolve) => setTimeout(resolve, 1000));
  }

  const { intake, places } = await api('overview', {});
  const sensors = await api('listSensors', {});
  const batches = await api('listBatches', {});
  const room = places.find(({ kind }) => kind === 'room')?.id;
  const toCompare: Compared[] = [];
  for (const { id, placeId } of batches) {
    const place = places.find((one) => one.id === placeId);
    if (place?.kind !== 'rack') continue;
    const stays: PlainStay[] = sensors.flatMap((one) => {
      const level = one.placeId === placeId ? 0 : one.placeId === room ? 1 : null;
      return level === null ? [] : [{ sensor: one.id, level, fromAt: Number.NEGATIVE_INFINITY }];
    });
    const batch = await api('readBatch', { params: { id } });
    if (batch.moves.length > 1) continue;
    for (const coat of batch.coats) {
      if (coat.curedUntil === null) continue;
      const [from = 0, to = 0] = [coat.finishedAt, coat.curedUntil].map((at) => Date.parse(at));
      const readings = await readingsBetween(
        http,
        stays.map(({ sensor }) => sensor),
        from - 6 * 3_600_000,
        to + 6 * 3_600_000,
      );
      const name = `${batch.name}, ${coat.name}`;
      toCompare.push({ name, degreeHours: coat.degreeHours, from, to, stays, readings });
    }
  }
  demo.process.kill('SIGTERM');
  expect(await demo.ended).toBe(0);

  const doubts = doubtsOnRecord();
  const rules = { datumC: 5, maxGapHours: 3 };
  const apart = toCompare.map(({ degreeHours, readings, stays, from, to }) => {
    const { low } = plainDegreeHours(readings, stays, from, to, rules, doubts);
    return Math.abs(degreeHours / low - 1);
  });
  const furthest = Math.max(...apart);
  const bytes = statSync(databaseFile(join(folder, 'data'))).size;
  const predicted = predictedBytes(intake.accepted, places.length);
  const [earlyMb, lateMb] = quarters(memoryMb);
  const [earlyOpen, lateOpen] = quarters(open);
  process.stdout.write(
    `${days} days, ${intake.accepted} readings, ${intake.refused} refused, ${intake.duplicates} twice, ${doubts.length} stretches not believed; ${toCompare.length} coats compared, furthest apart ${furthest.toExponential(1)}; resident ${earlyMb.toFixed(0)} MB in the second quarter, ${lateMb.toFixed(0)} MB in the last; ${earlyOpen.toFixed(0)} and ${lateOpen.toFixed(0)} handles; ${(bytes / 1e6).toFixed(2)} MB on disk, ${(predicted / 1e6).toFixed(2)} predicted\n`,
  );
  expect(toCompare.length).toBeGreaterThan(0);
  for (const [index, share] of apart.entries()) {
    expect(`${toCompare[index]?.name} ${share < 1e-9 ? 'equal' : share}`).toMatch(/equal$/);
  }
  // a sensor that fails is refused and found, and costs no other a reading
  expect(intake.refused).toBeLessThan(0.01 * intake.accepted);
  // a leak of a few kilobytes a reading would show as a multiple of this
  expect(lateMb).toBeLessThan(earlyMb + 60);
  expect(lateOpen).toBeLessThan(earlyOpen + 10);
  expect(bytes).toBeGreaterThan(predicted / 1.6);
  expect(bytes).toBeLessThan(predicted * 1.6);
});

async function readingsBetween(
  http: number,
  sensors: readonly string[],
  from: number,
  to: number,
): Promise<PlainReading[]> {
  const readings: PlainReading[] = [];
  for (const sensor of sensors) {
    const query = new URLSearchParams({
      ...{ sensor, quantity: 'air-temperature' },
      ...{ from: new Date(from).toISOString(), to: new Date(to).toISOString() },
    });
    const reply = await fetch(`http://127.0.0.1:${http}/api/v1/series?${query}`);
    expect(reply.status).toBe(200);
    const series = (await reply.json()) as Series;
    series.at.forEach((at, i) => {
      const value = series.value[i];
      if (value === null || value === undefined) return;
      readings.push({ sensor, at: Math.round(at * 1000), value });
    });
  }
  return readings;
}

/** Means over the second and the last quarter. */
function quarters(values: readonly number[]): [number, number] {
  const quarter = Math.max(1, Math.floor(values.length / 4));
  const mean = (some: readonly number[]) => some.reduce((a, b) => a + b, 0) / some.length;
  return [mean(values.slice(quarter, 2 * quarter)), mean(values.slice(-quarter))];
}
