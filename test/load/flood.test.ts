import { mkdtempSync, rmSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { type RunningDaemon, startDaemon } from '../journey/running-daemon.ts';
import { siteApi } from '../journey/site-api.ts';
import { bystander } from './bystander.ts';
import { peakMemoryMB } from './peak-memory.ts';
import { type RawClient, rawClient, readingFlood } from './raw-client.ts';

/*
 * The faults injected: floods, connections that say nothing, packets that never end, listeners that
 * do not read. The daemon runs in a process of its own; its memory stays bounded, and another
 * sensor's readings are acknowledged meanwhile. How fast is printed, and not asserted.
 */
const mostMB = 250;
const start = Date.UTC(2025, 5, 1);
const patiently = { timeout: 60_000, interval: 50 };

let folder: string;
let daemon: RunningDaemon;
let other: Awaited<ReturnType<typeof bystander>>;
let clients: RawClient[];

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'boardcure-load-'));
  daemon = await startDaemon(join(folder, 'data'));
  other = await bystander(port());
  clients = [];
});
afterEach(async () => {
  for (const { socket } of clients) socket.destroy();
  await daemon.kill();
  rmSync(folder, { recursive: true, force: true });
});

const port = () => daemon.mqtt ?? 0;

async function raw(clientId: string | null): Promise<RawClient> {
  const client = await rawClient(port(), clientId);
  clients.push(client);
  return client;
}

const many = (count: number, name: string | null) =>
  Promise.all(Array.from({ length: count }, (_, i) => raw(name === null ? null : `${name}-${i}`)));

/** The other sensor goes on; then what it was like for it, and what the daemon took. */
async function sustained(what: string): Promise<void> {
  const before = other.answered();
  await vi.waitFor(() => expect(other.answered()).toBeGreaterThan(before + 3), patiently);
  const waits = await other.finish();
  const at = (share: number) => waits[Math.floor((waits.length - 1) * share)]?.toFixed(0);
  const peak = peakMemoryMB(daemon.process.pid);
  process.stderr.write(
    `${what}: at most ${peak.toFixed(0)} MB resident; another sensor waited ` +
      `${at(0.5)} ms (median), ${at(0.99)} (99 %), ${at(1)} (longest of ${waits.length})\n`,
  );
  expect(peak).toBeLessThan(mostMB);
  expect(daemon.err()).not.toMatch(/uncaught|heap/i);
}

describe('a flood of 50,000 messages', () => {
  it('from one publisher that waits for nothing', async () => {
    const flooder = await raw('flood');
    flooder.socket.write(readingFlood('flood', 50_000, start));
    await flooder.heard(50_000);
    await sustained('50,000 messages from one');
  });

  it('from 200 at once, with 500 idle connections and 100 that never say CONNECT', async () => {
    await many(500, 'idle');
    await many(100, null);
    const flooders = await many(200, 'flood');
    for (const [i, { socket }] of flooders.entries()) {
      socket.write(readingFlood(`flood-${i}`, 250, start));
    }
    await Promise.all(flooders.map((flooder) => flooder.heard(250)));
    await sustained('50,000 messages from 200, 600 idle');
  });

  it('that are no readings, over and over', async () => {
    const flooder = await raw('flood');
    const packets = Array.from({ length: 1000 }, (_, i) => ({
      ...({ cmd: 'publish', qos: 1, retain: true, dup: false } as const),
      ...{ topic: `elsewhere/${i}`, payload: Buffer.alloc(1000, '1'), messageId: i + 1 },
    }));
    for (let i = 0; i < 50; i++) {
      flooder.send(...packets.map((packet) => ({ ...packet, topic: `${packet.topic}/${i}` })));
    }
    await flooder.heard(50_000);
    await sustained('50,000 messages to be kept, of 1 kB');
  });
});

describe('packets that never end', () => {
  it('announced as 256 MB are cut off at once', async () => {
    const culprits = await many(50, 'huge');
    for (const { socket } of culprits) {
      socket.write(Uint8Array.of(0x32, 0xff, 0xff, 0xff, 0x7f));
      socket.write(Buffer.alloc(1_000_000));
    }
    await vi.waitFor(
      () => expect(culprits.every(({ socket }) => socket.closed)).toBe(true),
      patiently,
    );
    await sustained('50 packets announced as 256 MB');
  });

  it('begun on 300 connections and left there have a limit together', async () => {
    const culprits = await many(300, 'half');
    for (const { socket } of culprits) {
      socket.write(Uint8Array.of(0x32, 0x80, 0x80, 0x40));
      socket.write(Buffer.alloc(900_000));
    }
    await vi.waitFor(() => {
      const open = culprits.filter(({ socket }) => !socket.closed);
      const sent = open.every(({ socket }) => socket.writableLength === 0);
      expect(open.length < 60 && sent).toBe(true);
    }, patiently);
    await sustained('300 unfinished packets of 0.9 MB');
  });
});

describe('a listener that does not read', () => {
  it('at the broker is cut off, while a chatterer goes on', async () => {
    const deaf = await many(20, 'deaf');
    for (const { socket, send } of deaf) {
      send({ cmd: 'subscribe', messageId: 1, subscriptions: [{ topic: 'chat/#', qos: 1 }] });
      socket.pause();
    }
    const chatterer = await raw('chatterer');
    const packets = Array.from({ length: 100 }, (_, i) => ({
      ...({ cmd: 'publish', qos: 1, retain: false, dup: false } as const),
      ...{ topic: 'chat/room', payload: Buffer.alloc(10_000, '1'), messageId: i + 1 },
    }));
    for (let i = 1; i <= 20; i++) {
      chatterer.send(...packets);
      await chatterer.heard(i * 100);
    }
    await sustained('20 listeners that do not read, 20 MB each');
  });

  it('at the broker that reads but never acknowledges is kept nothing for', async () => {
    const mute = await raw('mute');
    mute.send({
      ...{ cmd: 'subscribe', messageId: 1 },
      subscriptions: [{ topic: 'boardcure/#', qos: 1 }],
    });
    const flooder = await raw('flood');
    flooder.socket.write(readingFlood('flood', 50_000, start));
    await flooder.heard(50_000);
    await sustained('a listener that acknowledges none of 50,000');
  });

  it('of the stream costs no memory', async () => {
    const api = siteApi(daemon.http);
    for (let i = 0; i < 30; i++) await api.createRoom(`Room ${i}`);
    const streams = Array.from({ length: 20 }, () => {
      const open = request({ port: daemon.http, host: '127.0.0.1', path: '/api/v1/stream' });
      open.on('error', () => {});
      open.on('response', (reply) => reply.pause());
      open.end();
      return open;
    });
    const flooders = await many(20, 'flood');
    for (let round = 0; round < 40; round++) {
      for (const [i, flooder] of flooders.entries()) {
        const fromAt = start + round * 100_000;
        flooder.socket.write(readingFlood(`flood-${i}`, 50, fromAt));
      }
      await Promise.all(flooders.map((flooder) => flooder.heard((round + 1) * 50)));
    }
    await sustained('20 pages that do not read their stream');
    for (const open of streams) open.destroy();
  });
});
