import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { startBroker } from '../../daemon/ingest/broker.ts';
import type { MessagePort } from '../../daemon/ingest/message-port.ts';
import { type Attached, startAttached } from '../../sensors/attached/attached.ts';
import { listChannels } from '../../sensors/attached/list-channels.ts';
import {
  AttachedSettings,
  AttachedSettingsError,
  loadAttachedSettings,
} from '../../sensors/attached/settings.ts';
import { heldStore, quiet } from '../ingest/held-store.ts';
import { madeTree } from './made-tree.ts';

const soon = { timeout: 15_000, interval: 20 };

let tree: ReturnType<typeof madeTree>;
let folder: string;
let store: ReturnType<typeof heldStore>;
let broker: MessagePort | null;
let attached: Attached | null;
let said: string[];

beforeEach(() => {
  tree = madeTree();
  folder = mkdtempSync(join(tmpdir(), 'boardcure-attached-'));
  store = heldStore();
  broker = null;
  attached = null;
  said = [];
});
afterEach(async () => {
  await attached?.close();
  store.release();
  await broker?.close();
  tree.remove();
  rmSync(folder, { recursive: true, force: true });
});

const listen = async (port: number) => {
  broker = await startBroker({ host: '127.0.0.1', port, take: store.take, log: quiet });
};
const start = async (port: number, given: object = {}) => {
  const settings = AttachedSettings.parse({
    mqtt: `mqtt://127.0.0.1:${port}`,
    periodS: 3600,
    queue: { folder: join(folder, 'queue') },
    ...given,
  });
  attached = await startAttached({ settings, root: tree.root, say: (line) => said.push(line) });
};
const received = () =>
  store
    .readings()
    .map(({ sensor, quantity, raw }) => `${sensor} ${quantity} ${raw}`)
    .sort();
async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', () => resolve()));
  const { port } = server.address() as { port: number };
  await new Promise((resolve) => server.close(resolve));
  return port;
}

describe('sensors wired to the computer', () => {
  it('are recognised by themselves, but no chip’s own temperature is taken for air', async () => {
    await listen(0);
    await start(broker?.port ?? 0);
    await vi.waitFor(() => expect(received()).toHaveLength(3), soon);
    expect(received()).toEqual([
      'wired-1-0044 air-temperature 16.623874',
      'wired-1-0044 relative-humidity 61.5',
      'wired-28-0316a2790b01 air-temperature 21.437',
    ]);
    expect(store.refused()).toEqual([]);
    await vi.waitFor(() => expect(attached?.state()).toMatchObject({ sent: 2, waiting: 0 }), soon);
  });

  it('carry their own time, so that a second sending changes nothing', async () => {
    const before = Date.now();
    await listen(0);
    await start(broker?.port ?? 0);
    await vi.waitFor(() => expect(received()).toHaveLength(3), soon);
    for (const { at } of store.readings()) {
      expect(at).toBeGreaterThanOrEqual(before);
      expect(at).toBeLessThanOrEqual(Date.now());
    }
    // no flag: nothing is doubted about their time
    expect(store.readings().every(({ flags }) => flags === 0)).toBe(true);
  });

  it('go by the names of the settings; two screws become a resistance', async () => {
    await listen(0);
    const divider = { supplyV: 3.3, referenceOhms: 10e6, seriesOhms: 100e3 };
    await start(broker?.port ?? 0, {
      site: 'shed',
      channels: [
        { sensor: 'back', bus: 'iio', device: '1-0044', channel: 'temp' },
        { sensor: 'back', bus: 'iio', device: 'climate', channel: 'humidityrelative' },
        { sensor: 'screws', bus: 'iio', device: '1-0048', channel: 'voltage0', divider },
        {
          sensor: 'board',
          bus: 'one-wire',
          device: '28-0316a2790b01',
          quantity: 'surface-temperature',
        },
      ],
    });
    await vi.waitFor(() => expect(received()).toHaveLength(4), soon);
    // 13,200 counts of 0.125 mV are half of the supply: as much as the reference, less the protection
    expect(received()).toEqual([
      'back air-temperature 16.623874',
      'back relative-humidity 61.5',
      'board surface-temperature 21.437',
      'screws wood-resistance 9900000',
    ]);
  });

  it('that are broken are named once and send nothing, while the others go on', async () => {
    tree.thermometer(85000);
    tree.converterVolts(3.3);
    await listen(0);
    await start(broker?.port ?? 0, {
      periodS: 0.2,
      channels: [
        { sensor: 'back', bus: 'iio', device: '1-0044', channel: 'humidityrelative' },
        { sensor: 'bar', bus: 'one-wire', device: '28-0316a2790b01' },
        { sensor: 'gone', bus: 'one-wire', device: '28-000000000001' },
        {
          sensor: 'screws',
          bus: 'iio',
          device: '1-0048',
          channel: 'voltage0',
          divider: { supplyV: 3.3, referenceOhms: 10e6 },
        },
      ],
    });
    await vi.waitFor(() => expect(received().length).toBeGreaterThan(2), soon);
    expect(new Set(received())).toEqual(new Set(['back relative-humidity 61.5']));
    const about = (what: string) => said.filter((line) => line.startsWith(what));
    expect(about('bar air-temperature')).toHaveLength(1);
    expect(about('gone air-temperature')[0]).toContain('28-0316a2790b01');
    expect(about('screws wood-resistance')[0]).toContain('out of range');
    tree.thermometer(18000);
    await vi.waitFor(() => expect(received()).toContain('bar air-temperature 18'), soon);
    expect(about('bar air-temperature')).toHaveLength(2);
  });

  it('wait on disk while the broker is away, and come in their order when it is back', async () => {
    const port = await freePort();
    await start(port, { periodS: 0.2 });
    const waiting = () => attached?.state().waiting ?? 0;
    await vi.waitFor(() => expect(waiting()).toBeGreaterThanOrEqual(4), soon);
    // the program ends and starts again meanwhile
    await attached?.close();
    await start(port, { periodS: 0.2 });
    expect(waiting()).toBeGreaterThanOrEqual(6);
    await listen(port);
    await vi.waitFor(() => expect(waiting()).toBe(0), soon);
    const thermometer = store.readings().filter(({ sensor }) => sensor.startsWith('wired-28'));
    const times = thermometer.map(({ at }) => at);
    expect(times.length).toBeGreaterThanOrEqual(3);
    expect(times).toEqual([...times].sort((a, b) => a - b));
    expect(new Set(times).size).toBe(times.length);
  });

  it('are let go only once the broker has acknowledged them', async () => {
    store.hold();
    await listen(0);
    await start(broker?.port ?? 0);
    await store.commitBegun(1);
    expect(attached?.state()).toMatchObject({ sent: 0, waiting: 2 });
    store.release();
    await vi.waitFor(() => expect(attached?.state()).toMatchObject({ sent: 2, waiting: 0 }), soon);
  });

  it('are held back until the clock is set', async () => {
    rmSync(join(tree.root, 'run'), { recursive: true });
    await listen(0);
    const before = Date.now() - 1000;
    const clock = vi.spyOn(Date, 'now').mockReturnValue(90_000);
    try {
      await start(broker?.port ?? 0, { periodS: 0.2 });
      await vi.waitFor(() => expect(attached?.state().waiting).toBeGreaterThanOrEqual(4), soon);
      expect(received()).toEqual([]);
    } finally {
      clock.mockRestore();
    }
    const set = Date.now();
    // set forward while it looked on: what waited is dated by how long ago it was taken
    await vi.waitFor(() => expect(received().length).toBeGreaterThanOrEqual(9), soon);
    const first = Math.min(...store.readings().map(({ at }) => at));
    expect(first).toBeLessThan(set);
    expect(first).toBeGreaterThan(before);
  });
});

describe('the list of what can be read', () => {
  it('names each channel, what it shows, and whether it is read by itself', async () => {
    const lines = await listChannels(tree.root);
    expect(lines).toHaveLength(6);
    expect(lines.find((line) => line.includes('humidityrelative'))).toContain('1-0044');
    expect(lines.filter((line) => line.endsWith('read by itself'))).toHaveLength(3);
    expect(lines.find((line) => line.includes('voltage0'))).toContain('divider');
    expect(await listChannels(join(tree.root, 'run'))).toHaveLength(1);
  });
});

describe('the settings for wired sensors', () => {
  const load = (text: string) => {
    const file = join(folder, 'attached.toml');
    writeFileSync(file, text);
    return loadAttachedSettings(file);
  };
  const fault = (text: string) => {
    try {
      load(text);
    } catch (error) {
      if (error instanceof AttachedSettingsError) return error.message;
    }
    return 'taken';
  };

  it('have a default each, and can be as short as one channel', () => {
    expect(loadAttachedSettings(null)).toMatchObject({ site: 'shed', periodS: 60, channels: [] });
    const { channels } = load(
      '[[channels]]\nsensor = "a"\nbus = "iio"\ndevice = "1-0044"\nchannel = "temp"\n',
    );
    expect(channels).toHaveLength(1);
  });

  it('name every fault with its place', () => {
    const channel = '[[channels]]\nsensor = "a b"\nbus = "iio"\ndevice = "x"\n';
    expect(fault(channel)).toContain('channels[0].sensor');
    expect(fault(channel)).toMatch(/channels\[0\]\.channel|1 to 64/);
    expect(fault('perid = 3')).toContain('perid');
    expect(fault('a = = 3')).toContain('line 1');
    const volts = '[[channels]]\nsensor = "a"\nbus = "iio"\ndevice = "x"\nchannel = "voltage0"\n';
    expect(fault(volts)).toContain('divider');
    expect(fault('periodS = 0')).toContain('periodS');
    expect(() => loadAttachedSettings(join(folder, 'none.toml'))).toThrow('Check the name');
  });
});
