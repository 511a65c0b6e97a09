import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { connectAsync } from 'mqtt';
import { expect, it, vi } from 'vitest';
import type { startDaemon as StartDaemon } from '../../daemon/main.ts';
import { Settings } from '../../daemon/settings/schema.ts';
import { databaseFile, openForReading } from '../../daemon/store/open.ts';
import { storeReader } from '../../daemon/store/store.ts';
import { siteApi } from '../journey/site-api.ts';
import { fakeComputer } from './fake-computer.ts';

const built = new URL('../../.build/daemon/main.js', import.meta.url).href;
const minute = 60_000;
const now = Date.UTC(2026, 4, 4, 8);

/* The fault injected: the computer starts in 1970, and its clock is set while nodes send. */
it('a daemon in 1970 acknowledges, says what is amiss, and dates everything once it can', async () => {
  const { startDaemon } = (await import(built)) as { startDaemon: typeof StartDaemon };
  const folder = await mkdtemp(join(tmpdir(), 'boardcure-1970-'));
  const computer = fakeComputer(60_000);
  const quiet = { info() {}, warn() {}, error() {} };
  const settings = Settings.parse({
    data: folder,
    http: { host: '127.0.0.1', port: 0 },
    mqtt: { host: '127.0.0.1', port: 0 },
  });
  const daemon = await startDaemon({ settings, clock: computer.clock(), log: quiet });
  const reader = storeReader(openForReading(databaseFile(folder)));
  try {
    const api = siteApi(daemon.ready.http);
    const node = await connectAsync(`mqtt://127.0.0.1:${daemon.ready.mqtt}`);
    const topic = 'boardcure/shed/sensor/n1/air-temperature';
    for (let count = 0; count < 3; count++) {
      await node.publishAsync(topic, String(20 + count), { qos: 1 });
      computer.pass(minute);
    }
    await node.publishAsync(topic, JSON.stringify({ value: 30, time: now - 90_000 }), { qos: 1 });
    expect((await api.health()).reasons.join()).toMatch(/clock has not been set/);
    expect(await api.sensors()).toEqual([]);

    computer.set(now - computer.wallMs);
    await vi.waitFor(async () => expect(await api.sensors()).toHaveLength(1), 10_000);
    expect((await api.health()).reasons.join()).not.toMatch(/clock has not been set/);
    const stored = reader.readingsBetween(1, 'air-temperature', 0, Number.MAX_SAFE_INTEGER);
    expect(stored.map(({ at, raw }) => [at - now, raw])).toEqual([
      [-3 * minute, 20],
      [-2 * minute, 21],
      [-90_000, 30],
      [-minute, 22],
    ]);
    expect((await api.health()).intake).toMatchObject({ accepted: 4, duplicates: 0 });
    await node.endAsync();
  } finally {
    reader.close();
    await daemon.close();
    await rm(folder, { recursive: true, force: true });
  }
});
