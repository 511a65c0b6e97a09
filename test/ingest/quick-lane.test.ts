import type { IPublishPacket } from 'mqtt-packet';
import { generate } from 'mqtt-packet';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { startBroker } from '../../daemon/ingest/broker.ts';
import type { MessagePort } from '../../daemon/ingest/message-port.ts';
import { heldStore, quiet } from './held-store.ts';
import { type WireClient, wireClient } from './wire-client.ts';

const topicOf = (sensor: string) => `boardcure/shed/sensor/${sensor}/air-temperature`;
const rawOf = (i: number) => (i % 500) / 10;
const raws = (count: number) => Array.from({ length: count }, (_, i) => rawOf(i));

let store: ReturnType<typeof heldStore>;
let broker: MessagePort;
let wires: WireClient[];

beforeEach(async () => {
  store = heldStore();
  wires = [];
  broker = await startBroker({ host: '127.0.0.1', port: 0, take: store.take, log: quiet });
});
afterEach(async () => {
  store.release();
  for (const wire of wires) wire.close();
  await broker.close();
});

async function wire(options: object = {}): Promise<WireClient> {
  const client = await wireClient(broker.port ?? 0, options);
  wires.push(client);
  return client;
}

const publish = (id: number, more: Partial<IPublishPacket> = {}): IPublishPacket => ({
  ...{ cmd: 'publish', topic: topicOf('a'), payload: String(rawOf(id - 1)), qos: 1 },
  ...{ messageId: id, retain: false, dup: false, ...more },
});

const acknowledged = (client: WireClient) =>
  client.heard.flatMap((packet) => (packet.cmd === 'puback' ? [packet.messageId] : []));

describe('readings that pass by the broker', () => {
  // MQTT 3.1.1 (2014), section 4.6: acknowledgements in the order of the messages.
  it.each([1, 7, 1460, 100_000])(
    'are taken and acknowledged in their order among those that do not, in pieces of %i bytes',
    async (piece) => {
      const [listener, node] = [await wire(), await wire()];
      const subscriptions = [{ topic: topicOf('heard'), qos: 0 as const }];
      listener.send({ cmd: 'subscribe', messageId: 1, subscriptions });
      await listener.hear('suback');
      const kinds = [{}, {}, { topic: topicOf('heard') }, {}, { retain: true }, { dup: true }];
      const packets = raws(150).map((_, i) =>
        generate(publish(i + 1, kinds[(i * 7 + (i >> 3)) % kinds.length])),
      );
      const bytes = Buffer.concat(packets);
      for (let at = 0; at < bytes.length; at += piece) {
        node.sendBytes(bytes.subarray(at, at + piece));
      }
      await node.hear('puback', (packet) => packet.messageId === 150);
      expect(acknowledged(node)).toEqual(raws(150).map((_, i) => i + 1));
      expect(store.readings().map(({ raw }) => raw)).toEqual(raws(150));
      await node.ping();
      await listener.ping();
      const passedOn = listener.heard.filter(({ cmd }) => cmd === 'publish').length;
      expect(passedOn).toBe(store.readings().filter(({ sensor }) => sensor === 'heard').length);
    },
  );

  it('keep nothing else of their connection waiting for the disk', async () => {
    store.hold();
    const node = await wire();
    node.sendBytes(Buffer.concat(raws(60).map((_, i) => generate(publish(i + 1)))));
    await store.commitBegun(1);
    await node.ping();
    expect(acknowledged(node)).toEqual([]);
  });

  it('are held back beyond a number, and all come once the disk writes', async () => {
    store.hold();
    const node = await wire();
    for (let id = 1; id <= 5000; id++) node.send(publish(id));
    await store.commitBegun(1);
    store.release();
    await node.hear('puback', (packet) => packet.messageId === 5000);
    expect(store.readings().map(({ raw }) => raw)).toEqual(raws(5000));
  });

  it('let their sender go where they could not be written', async () => {
    store.break(new Error('the disk is broken'));
    const node = await wire();
    node.send(publish(1));
    await node.closed;
    expect(acknowledged(node)).toEqual([]);
  });
});

// MQTT 3.1.1 (2014), section 3.1.2.10: one and a half times what it said.
describe('who keeps silent for longer than it said', () => {
  it('is let go, and its will is told; who sends nothing but readings stays', async () => {
    const will = { topic: 'gone', payload: Buffer.from('silent'), qos: 0, retain: false };
    const [listener, busy] = [await wire(), await wire({ keepalive: 1 })];
    const subscriptions = [{ topic: 'gone', qos: 0 as const }];
    listener.send({ cmd: 'subscribe', messageId: 1, subscriptions });
    await listener.hear('suback');
    const silent = await wire({ keepalive: 1, will });
    let isOver = false;
    void listener.hear('publish').then(() => {
      isOver = true;
    });
    for (let id = 1; !isOver; id++) {
      busy.send(publish(id));
      await busy.hear('puback', (packet) => packet.messageId === id);
    }
    await silent.closed;
    await busy.ping();
  });
});
