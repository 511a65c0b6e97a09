import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it, vi } from 'vitest';
import { type RunningDaemon, startDaemon } from './running-daemon.ts';

let folder: string;
let config: string;
let daemon: RunningDaemon;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'boardcure-anew-'));
  config = join(folder, 'boardcure.toml');
  await writeFile(config, '[http]\nmaxStreams = 1\n');
  daemon = await startDaemon(join(folder, 'data'), { config });
});
afterAll(async () => {
  await daemon.kill();
  await rm(folder, { recursive: true, force: true });
});

const get = (path: string) => fetch(`http://127.0.0.1:${daemon.http}${path}`);
const restartFor = async () => (await (await get('/healthz')).json()).restartFor;

it('a daemon asked to read its settings anew goes by them, and says what waits for a start', async () => {
  await writeFile(config, '[http]\nmaxStreams = 2\n[mqtt]\nmaxConnections = 7\n');
  daemon.process.kill('SIGHUP');
  await vi.waitFor(async () => expect(await restartFor()).toEqual(['mqtt.maxConnections']), 10_000);
  const stop = new AbortController();
  const url = `http://127.0.0.1:${daemon.http}/api/v1/stream`;
  const statuses = [];
  for (let page = 0; page < 3; page++) {
    statuses.push((await fetch(url, { signal: stop.signal })).status);
  }
  stop.abort();
  expect(statuses).toEqual([200, 200, 429]);
});

it('settings that do not fit are told with their line, and those of before hold', async () => {
  await writeFile(config, '[http]\nmaxStreams = 0\n[cure]\nreadyAt = 2\n');
  daemon.process.kill('SIGHUP');
  await vi.waitFor(() => {
    expect(daemon.err()).toContain('those of before hold');
  }, 10_000);
  expect(daemon.err()).toMatch(/line 2: http\.maxStreams.*line 4: cure\.readyAt/);
  expect(await restartFor()).toEqual(['mqtt.maxConnections']);
});
