import { createServer } from 'node:net';
import { connectAsync, type MqttClient } from 'mqtt';
import type { IPublishPacket } from 'mqtt-packet';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { startBroker } from '../../daemon/ingest/broker.ts';
import type { MessagePort, TakeMessage } from '../../daemon/ingest/message-port.ts';
import { heldStore, quiet } from './held-store.ts';
import { type WireClient, wireClient } from './wire-client.ts';

const topic = 'boardcure/shed/sensor/rack-1/air-temperature';

let store: ReturnType<typeof heldStore>;
let broker: MessagePort;
let wires: WireClient[];
let clients: MqttClient[];

beforeEach(async () => {
  store = heldStore();
  wires = [];
  clients = [];
  broker = await start(store.take);
});
afterEach(async () => {
  store.break(null);
  store.release();
  for (const wire of wires) wire.close();
  for (const client of clients) await client.endAsync(true);
  await broker.close();
});

const start = (take: TakeMessage) => startBroker({ host: '127.0.0.1', port: 0, take, log: quiet });

async function wire(options: object = {}, to: MessagePort = broker): Promise<WireClient> {
  const client = await wireClient(to.port ?? 0, options);
  wires.push(client);
  return client;
}

async function client(options: object = {}): Promise<MqttClient> {
  const one = await connectAsync(`mqtt://127.0.0.1:${broker.port}`, {
    reconnectPeriod: 50,
    ...options,
  });
  clients.push(one);
  return one;
}

const publish = (qos: 0 | 1 | 2, messageId: number, payload = '20'): IPublishPacket => ({
  cmd: 'publish',
  topic,
  payload,
  qos,
  messageId,
  retain: false,
  dup: false,
});

const acknowledgements = ({ heard }: WireClient): number =>
  heard.filter(({ cmd }) => cmd === 'puback' || cmd === 'pubrec').length;

/** What a publisher was told while its reading was not on disk yet. */
async function toldTooEarly(to: MessagePort, qos: 1 | 2): Promise<number> {
  store.hold();
  const publisher = await wire({}, to);
  publisher.send(publish(qos, 1));
  await store.commitBegun(1);
  await publisher.ping();
  return acknowledgements(publisher);
}

describe('the embedded broker acknowledges a reading once it is on disk', () => {
  it.each([1, 2] as const)('at QoS %i not before', async (qos) => {
    expect(await toldTooEarly(broker, qos)).toBe(0);
    expect(store.readings()).toEqual([]);
    store.release();
    await wires[0]?.hear(qos === 1 ? 'puback' : 'pubrec');
    expect(store.readings()).toHaveLength(1);
  });

  it.each([1, 2] as const)(
    'at QoS %i, and one that is told too early would be seen',
    async (qos) => {
      const hasty = await start((message, acknowledge) => {
        store.take(message, () => {});
        acknowledge(null);
      });
      try {
        expect(await toldTooEarly(hasty, qos)).toBe(1);
      } finally {
        store.release();
        await hasty.close();
      }
    },
  );

  it('at QoS 2 completes the handshake, and the reading is there once', async () => {
    const publisher = await client();
    await publisher.publishAsync(topic, '20', { qos: 2 });
    expect(store.readings()).toHaveLength(1);
  });

  it('at QoS 0 takes it, although nobody is told', async () => {
    const publisher = await client();
    await publisher.publishAsync(topic, '21', { qos: 0 });
    await vi.waitFor(() => expect(store.readings()).toHaveLength(1));
  });

  it('many of one publisher wait together and are committed together', async () => {
    store.hold();
    const publisher = await wire();
    for (let id = 1; id <= 60; id++) publisher.send(publish(1, id, String(id / 10)));
    await store.commitBegun(1);
    await publisher.ping();
    expect(acknowledgements(publisher)).toBe(0);
    store.release();
    await publisher.hear('puback', (packet) => packet.messageId === 60);
    expect(store.groups().length).toBeLessThan(10);
    expect(store.readings().map(({ raw }) => raw)).toEqual(
      Array.from({ length: 60 }, (_, index) => (index + 1) / 10),
    );
  });

  it('in the order in which each of two publishers sent', async () => {
    const [a, b] = [await wire(), await wire()];
    for (let id = 1; id <= 200; id++) {
      a.send({ ...publish(1, id, String(id / 10)), topic: topic.replace('rack-1', 'a') });
      b.send({ ...publish(1, id, String(id / 10)), topic: topic.replace('rack-1', 'b') });
    }
    for (const each of [a, b]) {
      await each.hear('puback', (packet) => packet.messageId === 200);
      const ids = each.heard.flatMap((packet) =>
        packet.cmd === 'puback' ? [packet.messageId] : [],
      );
      expect(ids).toEqual(Array.from({ length: 200 }, (_, index) => index + 1));
    }
    for (const sensor of ['a', 'b']) {
      const raws = store.readings().flatMap((one) => (one.sensor === sensor ? [one.raw] : []));
      expect(raws).toEqual(Array.from({ length: 200 }, (_, index) => (index + 1) / 10));
    }
  });
});

describe('a store that cannot write', () => {
  it('lets the connection go unacknowledged, and what is sent again arrives once it can', async () => {
    store.break(new Error('the disk is full'));
    const publisher = await client();
    let lost = 0;
    publisher.on('close', () => lost++);
    let acknowledged = false;
    const sent = publisher.publishAsync(topic, '20', { qos: 1 }).then(() => {
      acknowledged = true;
    });
    await vi.waitFor(() => expect(lost).toBeGreaterThan(1));
    expect(acknowledged).toBe(false);
    expect(store.readings()).toEqual([]);
    store.break(null);
    await sent;
    expect(store.readings()).toHaveLength(1);
  });
});

describe('what is no reading of now', () => {
  it('a retained reading is of now when it is sent, and goes on to later listeners', async () => {
    const publisher = await client();
    await publisher.publishAsync(topic, '20', { qos: 1, retain: true });
    expect(store.readings()).toHaveLength(1);
    const listener = await wire();
    listener.send({ cmd: 'subscribe', messageId: 1, subscriptions: [{ topic: '#', qos: 0 }] });
    expect(await listener.hear('publish')).toMatchObject({ topic, retain: true });
    expect(store.readings()).toHaveLength(1);
  });

  it('a will reaches those who listen when its client is gone', async () => {
    const listener = await wire();
    listener.send({ cmd: 'subscribe', messageId: 1, subscriptions: [{ topic: 'node/#', qos: 1 }] });
    await listener.hear('suback');
    const node = await wire({
      will: { topic: 'node/rack-1', payload: Buffer.from('gone'), qos: 1, retain: false },
    });
    node.close();
    expect(await listener.hear('publish')).toMatchObject({ topic: 'node/rack-1' });
    expect(store.readings()).toEqual([]);
  });

  it('our own state is published, kept for later listeners, and not taken in', async () => {
    broker.publish('boardcure/shed/status', '{"status":"online"}', { retain: true });
    const listener = await wire();
    listener.send({
      cmd: 'subscribe',
      messageId: 1,
      subscriptions: [{ topic: 'boardcure/shed/status', qos: 1 }],
    });
    expect(await listener.hear('publish')).toMatchObject({ retain: true });
    expect(store.intake.counts).toMatchObject({ accepted: 0, refused: 0, dropped: 0 });
  });
});

describe('malformed messages stop nothing', () => {
  it.each([
    [
      'bytes that are no MQTT',
      (one: WireClient) => one.sendBytes(Buffer.from('GET / HTTP/1.1\r\n')),
    ],
    [
      'a packet cut short',
      (one: WireClient) => {
        one.sendBytes(Uint8Array.of(0x32, 0x7f, 0x00));
        one.close();
      },
    ],
    [
      'a wildcard in a topic',
      (one: WireClient) => one.sendBytes(Uint8Array.of(0x30, 0x05, 0x00, 0x03, 0x61, 0x2f, 0x23)),
    ],
    [
      'a topic that belongs to the broker',
      (one: WireClient) => one.send({ ...publish(1, 1), topic: '$SYS/broker/uptime' }),
    ],
  ])('%s', async (_, misbehave) => {
    const bystander = await wire();
    const culprit = await wire();
    misbehave(culprit);
    await culprit.closed;
    bystander.send(publish(1, 7));
    await bystander.hear('puback');
    expect(store.readings()).toHaveLength(1);
  });

  it('payloads that are no reading are acknowledged, kept, and the next one is taken', async () => {
    const publisher = await client();
    const bad = ['warm', 'NaN', '1e9', '', '{"value":', Buffer.from([0xff, 0xfe])];
    for (const payload of bad) await publisher.publishAsync(topic, payload, { qos: 1 });
    await publisher.publishAsync(topic, Buffer.alloc(1_048_576, '1'), { qos: 1 });
    await publisher.publishAsync('boardcure/shed/sensor/rack-1/heat', '20', { qos: 1 });
    await publisher.publishAsync(topic, '20', { qos: 1 });
    expect(store.refused().map(({ code }) => code)).toEqual([
      'payload-not-a-number',
      'value-not-finite',
      'value-out-of-range',
      'payload-empty',
      'payload-not-json',
      'payload-not-text',
      'payload-too-large',
      'quantity-unknown',
    ]);
    expect(store.readings()).toHaveLength(1);
    expect(publisher.connected).toBe(true);
  });
});

describe('starting and closing', () => {
  it('a taken port is named, with what to do', async () => {
    const other = createServer();
    await new Promise<void>((resolve) => other.listen(0, '127.0.0.1', resolve));
    const address = other.address();
    const port = typeof address === 'object' && address ? address.port : 0;
    const refused = startBroker({ host: '127.0.0.1', port, take: store.take, log: quiet });
    await expect(refused).rejects.toThrow(
      new RegExp(`Port ${port} for MQTT is taken.*--mqtt mqtt://localhost:${port}`),
    );
    await new Promise((resolve) => other.close(resolve));
  });

  it('closing acknowledges what is being committed, and takes nothing more', async () => {
    store.hold();
    const publisher = await wire();
    publisher.send(publish(1, 1));
    await store.commitBegun(1);
    const closed = broker.close();
    publisher.send(publish(1, 2));
    await publisher.ping();
    store.release();
    await closed;
    await publisher.closed;
    const ids = publisher.heard.flatMap((one) => (one.cmd === 'puback' ? [one.messageId] : []));
    expect(ids).toEqual([1]);
    await store.queue.drained();
    expect(store.readings()).toHaveLength(1);
  });
});
