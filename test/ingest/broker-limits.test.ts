import { once } from 'node:events';
import { connect, type Socket } from 'node:net';
import type { IPublishPacket } from 'mqtt-packet';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { startBroker } from '../../daemon/ingest/broker.ts';
import { byteBudget } from '../../daemon/ingest/byte-budget.ts';
import type { BrokerLimits } from '../../daemon/ingest/guard-sockets.ts';
import type { BrokerTraffic, IngestLog, MessagePort } from '../../daemon/ingest/message-port.ts';
import { retainedTopics } from '../../daemon/ingest/retained-topics.ts';
import { heldStore } from './held-store.ts';
import { type WireClient, wireClient } from './wire-client.ts';

/* The faults injected: clients that ask more of the embedded broker than it may give. */

const topic = 'boardcure/shed/sensor/rack-1/air-temperature';
const soon = { timeout: 10_000, interval: 10 };

let store: ReturnType<typeof heldStore>;
let broker: MessagePort;
let wires: WireClient[];
let sockets: Socket[];
let warned: string[];

beforeEach(() => {
  store = heldStore();
  wires = [];
  sockets = [];
  warned = [];
});
afterEach(async () => {
  store.release();
  for (const wire of wires) wire.close();
  for (const socket of sockets) socket.destroy();
  await broker.close();
});

async function start(limits: Partial<BrokerLimits>): Promise<void> {
  const log: IngestLog = { info() {}, warn: (_, text) => warned.push(text) };
  broker = await startBroker({ host: '127.0.0.1', port: 0, limits, take: store.take, log });
}

async function wire(options: object = {}): Promise<WireClient> {
  const client = await wireClient(broker.port ?? 0, options);
  wires.push(client);
  return client;
}

async function stranger(): Promise<Socket> {
  const socket = connect(broker.port ?? 0, '127.0.0.1');
  socket.on('error', () => {});
  sockets.push(socket);
  await once(socket, 'connect');
  return socket;
}

const publish = (messageId: number, more: Partial<IPublishPacket> = {}): IPublishPacket => ({
  ...{ cmd: 'publish', topic, payload: '20', qos: 1, messageId, retain: false, dup: false },
  ...more,
});

const traffic = (): BrokerTraffic => {
  const now = broker.traffic();
  if (!now) throw new Error('the broker is ours');
  return now;
};

describe('too many connections', () => {
  it('are refused and counted, and those that are there go on', async () => {
    await start({ maxConnections: 3 });
    const [first] = [await wire(), await wire(), await wire()];
    const further = await stranger();
    await once(further, 'close');
    expect(traffic()).toMatchObject({ connections: 3, cutOff: { 'too-many-connections': 1 } });
    first.send(publish(1));
    await first.hear('puback');
  });

  it('that never say CONNECT make way for one that does', async () => {
    await start({ maxConnections: 3 });
    const halfOpen = [await stranger(), await stranger(), await stranger()];
    const closed = halfOpen.map((socket) => once(socket, 'close'));
    const sensor = await wire();
    await closed[0];
    sensor.send(publish(1));
    await sensor.hear('puback');
    expect(traffic()).toMatchObject({ connections: 3, cutOff: { 'no-connect': 1 } });
  });

  it('a connection that does not say CONNECT in time is cut', async () => {
    await start({ connectSeconds: 1 });
    const [halfOpen, sensor] = [await stranger(), await wire()];
    await once(halfOpen, 'close');
    expect(traffic().cutOff['no-connect']).toBe(1);
    sensor.send(publish(1));
    await sensor.hear('puback');
  });
});

describe('an oversized packet', () => {
  it('is cut off when its length is announced, before its bytes come', async () => {
    await start({ maxPacketBytes: 10_000 });
    const culprit = await wire();
    culprit.sendBytes(Uint8Array.of(0x32, 0xff, 0xff, 0xff, 0x7f));
    await culprit.closed;
    expect(traffic().cutOff['packet-too-large']).toBe(1);
    expect(warned).toEqual([expect.stringContaining('mqtt.maxPacketBytes')]);
  });

  it('is cut off as the first thing that is said, at a lower limit', async () => {
    await start({});
    const culprit = await stranger();
    culprit.write(Uint8Array.of(0x10, 0xff, 0xff, 0x7f));
    await once(culprit, 'close');
    expect(traffic().cutOff['packet-too-large']).toBe(1);
  });
});

describe('messages that wait for the disk', () => {
  it('are held back beyond a number, and all arrive once it writes', async () => {
    await start({ maxUnderWay: 100 });
    store.hold();
    const flooders = await Promise.all(Array.from({ length: 8 }, () => wire()));
    for (const flooder of flooders) {
      for (let id = 1; id <= 3000; id++) flooder.send(publish(id));
    }
    await store.commitBegun(1);
    await expect(Promise.race([flooders[7]?.ping(), pauseMs(200)])).resolves.toBe('late');
    store.release();
    for (const flooder of flooders) {
      await flooder.hear('puback', (packet) => packet.messageId === 3000);
    }
    expect(store.readings()).toHaveLength(24_000);
    // One read of a stream’s buffer, 128 KB at most, may pass the limit by itself.
    expect(Math.max(...store.groups())).toBeLessThan(100 + 131_072 / 50);
  });

  it('of one that floods do not keep another waiting', async () => {
    await start({ maxUnderWay: 100 });
    const flooder = await wire();
    for (let id = 1; id <= 10_000; id++) flooder.send(publish(id));
    const sensor = await wire();
    sensor.send(publish(1, { topic: topic.replace('rack-1', 'bystander') }));
    await sensor.hear('puback');
    const before = store.readings().length;
    await flooder.hear('puback', (packet) => packet.messageId === 10_000);
    expect(before).toBeLessThan(8000);
  });
});

describe('a listener', () => {
  it('that does not read is cut off, and keeps no publisher waiting', async () => {
    await start({ maxUnreadBytes: 65_536 });
    const listener = await stranger();
    const names = Buffer.from('MQTTdeaf');
    listener.write(
      Buffer.from([
        0x10,
        16,
        0,
        4,
        ...names.subarray(0, 4),
        4,
        2,
        0,
        0,
        0,
        4,
        ...names.subarray(4),
      ]),
    );
    listener.write(Uint8Array.of(0x82, 6, 0, 1, 0, 1, 0x23, 0));
    await once(listener, 'data');
    listener.pause();
    const publisher = await wire();
    const payload = Buffer.alloc(50_000, '1');
    for (let id = 1; id <= 400; id++) {
      publisher.send(publish(id, { topic: 'chat/room', payload }));
      await publisher.hear('puback', (packet) => packet.messageId === id);
      if (traffic().cutOff['does-not-read'] > 0) break;
    }
    expect(traffic().cutOff['does-not-read']).toBe(1);
    await vi.waitFor(() => expect(traffic().connections).toBe(1), soon);
  });

  it('that is away is kept nothing for: its session ends with the connection', async () => {
    await start({});
    const lasting = { clean: false, clientId: 'lasting' };
    const listener = await wire(lasting);
    listener.send({ cmd: 'subscribe', messageId: 1, subscriptions: [{ topic: 'a/#', qos: 1 }] });
    expect(await listener.hear('suback')).toMatchObject({ granted: [1] });
    listener.close();
    await vi.waitFor(() => expect(traffic().connections).toBe(0), soon);
    const publisher = await wire();
    publisher.send(publish(1, { topic: 'a/b' }));
    await publisher.hear('puback');
    const back = await wire(lasting);
    expect(await back.hear('connack')).toMatchObject({ sessionPresent: false });
    await back.ping();
    expect(back.heard.filter(({ cmd }) => cmd === 'publish')).toEqual([]);
  });

  it('has a hundred subscriptions at most', async () => {
    await start({});
    const listener = await wire();
    const subscriptions = Array.from({ length: 101 }, (_, i) => ({
      topic: `a/${i}`,
      qos: 0 as const,
    }));
    listener.send({ cmd: 'subscribe', messageId: 1, subscriptions });
    const suback = await listener.hear('suback');
    expect(suback.cmd === 'suback' && suback.granted).toEqual([...Array(100).fill(0), 128]);
  });
});

describe('messages that the broker is to keep', () => {
  it('are kept up to a number of topics, and passed on beyond it', async () => {
    await start({ maxRetained: 2 });
    const publisher = await wire();
    for (let id = 1; id <= 3; id++) {
      publisher.send(publish(id, { topic: `kept/${id}`, retain: true }));
      await publisher.hear('puback', (packet) => packet.messageId === id);
    }
    expect(traffic().retainDropped).toBe(1);
    const listener = await wire();
    listener.send({ cmd: 'subscribe', messageId: 1, subscriptions: [{ topic: 'kept/#', qos: 0 }] });
    await listener.hear(
      'publish',
      (packet) => packet.cmd === 'publish' && packet.topic === 'kept/2',
    );
    await listener.ping();
    expect(listener.heard.filter(({ cmd }) => cmd === 'publish')).toHaveLength(2);
  });

  it('a topic that is cleared makes room for another, and bytes count too', () => {
    const topics = retainedTopics(1);
    expect([topics.mayKeep('a', 5), topics.mayKeep('a', 9), topics.mayKeep('b', 5)]).toEqual([
      ...[true, true, false],
    ]);
    expect([topics.mayKeep('a', 0), topics.mayKeep('b', 5)]).toEqual([true, true]);
    expect(topics.mayKeep('b', 10_000_000)).toBe(false);
  });
});

it('messages at QoS 0 are taken as best effort, and counted', async () => {
  await start({});
  const publisher = await wire();
  for (let i = 0; i < 3; i++) publisher.send(publish(0, { qos: 0 }));
  publisher.send(publish(1));
  await publisher.hear('puback');
  expect(traffic().bestEffort).toBe(3);
  expect(store.readings()).toHaveLength(4);
});

it('what all keep together has a limit: the one that keeps most goes', () => {
  const [a, b, c] = [{ bytes: 40 }, { bytes: 50 }, { bytes: 5 }];
  const dropped: unknown[] = [];
  const budget = byteBudget<{ bytes: number }>(
    100,
    ({ bytes }) => bytes,
    (one) => dropped.push(one),
  );
  for (const one of [a, b, c]) budget.changed(one);
  expect(dropped).toEqual([]);
  c.bytes = 20;
  budget.changed(c);
  expect(dropped).toEqual([b]);
  // What was told before may be gone by now.
  a.bytes = 0;
  c.bytes = 90;
  budget.changed(c);
  expect(dropped).toEqual([b]);
});

const pauseMs = (ms: number) => new Promise((resolve) => setTimeout(() => resolve('late'), ms));
