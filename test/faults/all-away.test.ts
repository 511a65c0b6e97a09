import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { freePort } from '../ingest/mosquitto.ts';
import { type RunningDaemon, startDaemon } from '../journey/running-daemon.ts';
import { siteApi } from '../journey/site-api.ts';

let folder: string;
let daemon: RunningDaemon | undefined;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'boardcure-away-'));
});
afterEach(async () => {
  await daemon?.kill();
  await rm(folder, { recursive: true, force: true });
});

const soon = { timeout: 20_000 };

// What each looks like from inside is tested where it belongs; here all are away at once, at the start.
it('a daemon whose broker, mail server and webhook are all away starts, records by hand, says what is missing, and ends in order', async () => {
  const nobody = await freePort();
  const config = join(folder, 'boardcure.toml');
  await writeFile(
    config,
    `[notices.mail]\nhost = "127.0.0.1"\nport = ${nobody}\nsecurity = "none"\nfrom = "shed@shed.example"\nto = ["owner@shed.example"]\n[notices.webhook]\nurl = "http://127.0.0.1:${nobody}/"\nsecret = "sixteen letters or more"\n`,
  );
  daemon = await startDaemon(join(folder, 'data'), { mqtt: `mqtt://127.0.0.1:${nobody}`, config });
  const api = siteApi(daemon.http);
  await vi.waitFor(async () => {
    const { status, reasons } = await api.health();
    expect(status).toBe('degraded');
    expect(reasons.join(' ')).toMatch(/broker is out of reach/);
  }, soon);
  const figures = await (await fetch(`http://127.0.0.1:${daemon.http}/metrics`)).text();
  expect(figures).toContain('boardcure_broker_connected{broker="external"} 0');
  const room = await api.createRoom('Shed');
  const batch = await api.createBatch('South gable', room.id);
  await api.recordCoat(batch.id, Date.now() - 3_600_000);
  expect((await api.batch(batch.id)).coats).toHaveLength(1);
  expect(await daemon.stop(), daemon.err()).toBe(0);
});
