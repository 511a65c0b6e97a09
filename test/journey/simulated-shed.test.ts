import { existsSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it, vi } from 'vitest';
import type { Overview } from '../../daemon/contract/overview.ts';
import type { SimulatedShed } from '../../daemon/contract/site.ts';
import { type RunningDaemon, startDaemon } from './running-daemon.ts';

const PATIENCE_MS = 60_000;

let folder: string;
let daemon: RunningDaemon;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'boardcure-simulated-'));
  daemon = await startDaemon(join(folder, 'data'));
});
afterAll(async () => {
  await daemon.kill();
  await rm(folder, { recursive: true, force: true });
});

async function ask<T>(port: number, path: string, method = 'GET', body?: object): Promise<T> {
  const response = await fetch(`http://127.0.0.1:${port}${path}`, {
    method,
    ...(body
      ? { headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) }
      : {}),
  });
  if (!response.ok) throw new Error(`${method} ${path}: ${await response.text()}`);
  return (await response.json()) as T;
}
const shed = (method = 'GET', body?: object) =>
  ask<SimulatedShed>(daemon.http, '/api/v1/simulated-shed', method, body);

async function running(): Promise<number> {
  const found = await vi.waitUntil(async () => (await shed()).port, {
    ...{ timeout: PATIENCE_MS, interval: 200 },
  });
  return found ?? 0;
}
/** Where the simulation keeps what it makes. */
const dataOf = async (port: number): Promise<string> =>
  (
    await ask<{ settings: { name: string; value: string }[] }>(port, '/api/v1/settings')
  ).settings.find(({ name }) => name === 'data')?.value ?? '';
const isGone = (port: number) =>
  vi.waitFor(() => expect(ask(port, '/healthz')).rejects.toThrow(), {
    timeout: PATIENCE_MS,
    interval: 200,
  });

it(
  'a simulated shed runs beside the site, once, marked as one, and takes all it made with it',
  async () => {
    expect((await shed('POST', { speed: 600 })).state).toBe('starting');
    expect((await shed('POST', {})).speed).toBe(600);
    const port = await running();
    expect((await shed('POST', {})).port).toBe(port);

    const there = await ask<Overview>(port, '/api/v1/overview');
    expect(there).toMatchObject({ siteName: 'Simulated shed', speed: 600 });
    expect(there.places.flatMap(({ batches }) => batches).length).toBeGreaterThan(0);
    // One within another helps nobody.
    await expect(ask(port, '/api/v1/simulated-shed', 'POST', {})).rejects.toThrow(/already/);
    const here = await ask<Overview>(daemon.http, '/api/v1/overview');
    expect(here).toMatchObject({ places: [], unplacedSensors: 0, intake: { accepted: 0 } });

    const data = await dataOf(port);
    expect(existsSync(data)).toBe(true);
    expect((await shed('DELETE')).state).toBe('off');
    await isGone(port);
    expect(existsSync(data)).toBe(false);
  },
  PATIENCE_MS * 2,
);

it(
  'it does not outlive the daemon that started it, not even where that is killed',
  async () => {
    await shed('POST', {});
    const port = await running();
    const data = await dataOf(port);
    await daemon.kill();
    await isGone(port);
    await vi.waitFor(() => expect(existsSync(data)).toBe(false), { timeout: PATIENCE_MS });
  },
  PATIENCE_MS * 2,
);
