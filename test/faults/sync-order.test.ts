import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { connectAsync } from 'mqtt';
import type { IPublishPacket } from 'mqtt-packet';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { needs } from '../house/needs.ts';
import { type Mosquitto, startMosquitto } from '../ingest/mosquitto.ts';
import { wireClient } from '../ingest/wire-client.ts';
import { type RunningDaemon, startDaemon } from '../journey/running-daemon.ts';
import { siteApi } from '../journey/site-api.ts';
import { type Plant, plantedBuild } from './planted-build.ts';
import { syncTrace, type TracedAck, tracedAcks } from './sync-order.ts';

/*
 * A killed process cannot tell whether the disk was waited for: what it wrote is in the system's
 * memory. So the system calls of a real daemon are watched: the database's log is synced after the
 * commit was written to it, and before its acknowledgement is written to the socket.
 *
 * The faults injected: an acknowledgement before the commit, and a database that does not sync.
 */
const oneByOne = 6;
const burst = 20;
const messages = 3 * (oneByOne + 2 * burst);

const patiently = { timeout: 20_000, interval: 50 };

let folder: string;
let trace: string;
let daemon: RunningDaemon | null;
let mosquitto: Mosquitto | null;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'boardcure-sync-'));
  trace = join(folder, 'calls');
  daemon = null;
  mosquitto = null;
});
afterEach(async () => {
  await daemon?.kill();
  await mosquitto?.remove();
  rmSync(folder, { recursive: true, force: true });
});

const sensorOf = (messageId: number) => `traced-${String(messageId).padStart(5, '0')}`;
const topicOf = (messageId: number) =>
  `boardcure/shed/sensor/${sensorOf(messageId)}/air-temperature`;

async function startTraced(plant?: Plant): Promise<RunningDaemon> {
  mkdirSync(join(folder, 'planted'));
  const build = plant ? { build: plantedBuild(join(folder, 'planted'), plant) } : {};
  const how = { tracer: syncTrace(trace), ...build };
  return startDaemon(join(folder, 'data'), {}, how);
}

/** Sends messages one by one and in bursts, over two connections, until all are acknowledged. */
async function publishAll(port: number, qos: 1 | 2): Promise<void> {
  const clients = [await wireClient(port), await wireClient(port), await wireClient(port)];
  await Promise.all(
    clients.map(async (client, index) => {
      let id = index * (oneByOne + 2 * burst);
      const publish = (): number => {
        id++;
        const packet: IPublishPacket = {
          ...{ cmd: 'publish', topic: topicOf(id), payload: '18.5', qos, messageId: id },
          ...{ retain: false, dup: false },
        };
        client.send(packet);
        return id;
      };
      const told = (messageId: number) =>
        client.hear(qos === 1 ? 'puback' : 'pubrec', (packet) => packet.messageId === messageId);
      for (let i = 0; i < oneByOne; i++) await told(publish());
      for (let i = 0; i < 2; i++) {
        await Promise.all(Array.from({ length: burst }, () => told(publish())));
      }
      client.close();
    }),
  );
}

/** What the trace of a daemon says that was sent all messages. */
async function traced(qos: 1 | 2, plant?: Plant): Promise<TracedAck[]> {
  daemon = await startTraced(plant);
  await publishAll(daemon.mqtt ?? 0, qos);
  await daemon.stop();
  return tracedAcks(trace);
}

needs('strace')('what is acknowledged has reached the disk', () => {
  it.each([1, 2] as const)('at QoS %i the log is synced before it is said', async (qos) => {
    const acks = await traced(qos);
    expect(acks).toHaveLength(messages);
    expect(acks.filter(({ isSynced }) => !isSynced)).toEqual([]);
  });

  it('an acknowledgement before the commit would be seen', async () => {
    const acks = await traced(1, {
      file: 'daemon/ingest/incoming-publishes.js',
      from: 'underWay.begun();',
      to: 'underWay.begun(); told(null); told = () => {};',
    });
    expect(acks).toHaveLength(messages);
    expect(acks.filter(({ isWritten }) => !isWritten).length).toBeGreaterThan(messages / 2);
  });

  it('a database that does not sync would be seen', async () => {
    const acks = await traced(1, {
      file: 'daemon/store/open.js',
      from: "db.pragma('synchronous = FULL');",
      to: "db.pragma('synchronous = OFF');",
    });
    expect(acks).toHaveLength(messages);
    expect(acks.filter(({ isWritten }) => isWritten)).toHaveLength(messages);
    expect(acks.filter(({ isSynced }) => isSynced)).toEqual([]);
  });

  it('a database that syncs at checkpoints only would be seen', async () => {
    const acks = await traced(1, {
      file: 'daemon/store/open.js',
      from: "db.pragma('synchronous = FULL');",
      to: "db.pragma('synchronous = NORMAL');",
    });
    expect(acks.filter(({ isSynced }) => !isSynced).length).toBeGreaterThan(messages / 2);
  });
});

needs('strace', 'mosquitto')('what is acknowledged to another broker has reached the disk', () => {
  it('the log is synced before the session says it', async () => {
    mosquitto = await startMosquitto();
    const how = { tracer: syncTrace(trace) };
    daemon = await startDaemon(
      join(folder, 'data'),
      { mqtt: `mqtt://127.0.0.1:${mosquitto.port}` },
      how,
    );
    const publisher = await connectAsync(`mqtt://127.0.0.1:${mosquitto.port}`);
    // What is published before the session has subscribed is meant for nobody.
    await vi.waitFor(
      async () => expect((await health()).reasons.join()).not.toMatch(/out of reach/),
      patiently,
    );
    const sent = 60;
    for (let i = 1; i <= sent; i++) publisher.publish(topicOf(i), '18.5', { qos: 1 });
    await vi.waitFor(async () => expect((await health()).intake.accepted).toBe(sent), patiently);
    await publisher.endAsync(true);
    await daemon.stop();
    const acks = tracedAcks(trace, 5);
    expect(acks).toHaveLength(sent);
    expect(acks.filter(({ isSynced }) => !isSynced)).toEqual([]);
  });
});

const health = () => siteApi(daemon?.http ?? 0).health();
