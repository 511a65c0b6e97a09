import type { IPublishPacket } from 'mqtt-packet';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { startBroker } from '../../daemon/ingest/broker.ts';
import type { MessagePort } from '../../daemon/ingest/message-port.ts';
import { longestOpenMs, unreleasedMessages } from '../../daemon/ingest/unreleased-messages.ts';
import type { OpenMessage } from '../../daemon/rules/facts.ts';
import { heldStore, quiet } from './held-store.ts';
import { type WireClient, wireClient } from './wire-client.ts';

/*
 * MQTT 3.1.1 (2014), section 4.3.3: until the receiver has had the PUBREL it answers a PUBLISH of the
 * same number with PUBREC and delivers it to nobody again; section 4.4: a client that comes back sends
 * again what was not acknowledged, with its original number.
 */
const topic = 'boardcure/shed/sensor/rack-1/air-temperature';

let store: ReturnType<typeof heldStore>;
let broker: MessagePort;
let wires: WireClient[];

beforeEach(async () => {
  store = heldStore();
  wires = [];
  broker = await startBroker({ host: '127.0.0.1', port: 0, take: store.take, log: quiet });
});
afterEach(async () => {
  store.break(null);
  store.release();
  for (const wire of wires) wire.close();
  await broker.close();
});

/** A node with a lasting session, as far as it is concerned. */
async function node(options: object = {}): Promise<WireClient> {
  const wire = await wireClient(broker.port ?? 0, { clientId: 'node 1', clean: false, ...options });
  wires.push(wire);
  return wire;
}

const publish = (payload = '20', dup = false): IPublishPacket => ({
  ...{ cmd: 'publish', topic, payload, qos: 2, messageId: 7, retain: false, dup },
});

async function lost(wire: WireClient): Promise<void> {
  wire.close();
  await wire.closed;
}

describe('a QoS 2 message without a time of its own is stored once', () => {
  it('when it is sent again because the answer was lost with the connection', async () => {
    const before = await node();
    before.send(publish());
    await before.hear('pubrec');
    await lost(before);
    const after = await node();
    after.send(publish('20', true));
    await after.hear('pubrec');
    after.send({ cmd: 'pubrel', messageId: 7 });
    await after.hear('pubcomp');
    expect(store.readings()).toHaveLength(1);
  });

  it('when it is sent again while it is still on its way to the disk, and is told after that', async () => {
    store.hold();
    const before = await node();
    before.send(publish());
    await store.commitBegun(1);
    await lost(before);
    const after = await node();
    after.send(publish('20', true));
    await after.ping();
    expect(after.heard.some(({ cmd }) => cmd === 'pubrec')).toBe(false);
    store.release();
    await after.hear('pubrec');
    await store.queue.drained();
    expect(store.readings()).toHaveLength(1);
  });

  it('when it is sent twice on one connection', async () => {
    const wire = await node();
    wire.send(publish());
    await wire.hear('pubrec');
    wire.send(publish('20', true));
    await wire.ping();
    expect(wire.heard.filter(({ cmd }) => cmd === 'pubrec')).toHaveLength(2);
    expect(store.readings()).toHaveLength(1);
  });

  it('and reaches a listener once', async () => {
    const listener = await node({ clientId: 'listener', clean: true });
    listener.send({ cmd: 'subscribe', messageId: 1, subscriptions: [{ topic: '#', qos: 0 }] });
    await listener.hear('suback');
    const before = await node();
    before.send(publish());
    await before.hear('pubrec');
    await lost(before);
    const after = await node();
    after.send(publish('20', true));
    await after.hear('pubrec');
    await listener.ping();
    expect(listener.heard.filter(({ cmd }) => cmd === 'publish')).toHaveLength(1);
  });

  it('when the store failed at first: it is taken when it comes again', async () => {
    store.break(new Error('out of luck'));
    const before = await node();
    before.send(publish());
    await before.closed;
    store.break(null);
    const after = await node();
    after.send(publish('20', true));
    await after.hear('pubrec');
    expect(store.readings()).toHaveLength(1);
  });
});

describe('the same number stands for another message', () => {
  const secondAfter = async (
    between: (wire: WireClient) => Promise<void>,
    options: object = {},
  ) => {
    const before = await node();
    before.send(publish());
    await before.hear('pubrec');
    await between(before);
    await lost(before);
    const after = await node(options);
    after.send(publish());
    await after.hear('pubrec');
    expect(store.readings()).toHaveLength(2);
  };

  it('once it was released', () =>
    secondAfter(async (wire) => {
      wire.send({ cmd: 'pubrel', messageId: 7 });
      await wire.hear('pubcomp');
    }));

  it('in a clean session, which knows nothing of the one before', () =>
    secondAfter(async () => {}, { clean: true }));

  it('of another client', () => secondAfter(async () => {}, { clientId: 'node 2' }));

  it('when it says something else: a node may have forgotten its numbers', async () => {
    const before = await node();
    before.send(publish('20'));
    await before.hear('pubrec');
    await lost(before);
    const after = await node();
    after.send(publish('21'));
    await after.hear('pubrec');
    expect(store.readings().map(({ raw }) => raw)).toEqual([20, 21]);
  });
});

/*
 * The fault injected: the client never returns, and long after another one (or the same, having forgotten its
 * numbers) says the same under that number.
 */
describe('a number that was open for longer than a weekend', () => {
  const message = { client: 'node 1', messageId: 7, topic, payload: Buffer.from('20') };

  function memory(openForMs: number | null = null) {
    let upMs = 1000;
    const seen: string[] = [];
    const letGo: string[] = [];
    let content = '';
    const parts = (kept: (OpenMessage & { openForMs: number })[]) => ({
      ...{ kept, upMs: () => upMs },
      async letGo(messages: readonly OpenMessage[]) {
        for (const one of messages) letGo.push(`${one.client} ${one.messageId}`);
      },
    });
    let messages = unreleasedMessages(parts([]));
    const send = (one = message) =>
      messages.once(
        one,
        (done, keep) => {
          content = keep().content;
          done(null);
        },
        { taken: () => seen.push('taken'), again: () => seen.push('again') },
      );
    send();
    if (openForMs !== null) {
      messages = unreleasedMessages(parts([{ ...message, content, openForMs }]));
    }
    return {
      ...{ seen, letGo, send },
      wait(ms: number) {
        upMs += ms;
      },
    };
  }

  it('stands for another message, and not before', () => {
    const { wait, send, seen, letGo } = memory();
    wait(longestOpenMs);
    send();
    wait(1);
    send();
    expect(seen).toEqual(['taken', 'again', 'taken']);
    expect(letGo).toEqual(['node 1 7']);
  });

  it('also where part of that time was before a restart', () => {
    const { wait, send, seen } = memory(longestOpenMs - 10);
    wait(10);
    send();
    wait(1);
    send();
    expect(seen).toEqual(['taken', 'again', 'taken']);
  });

  it('is let go of on disk when any other message comes', () => {
    const { wait, send, letGo } = memory();
    wait(longestOpenMs + 1);
    send({ ...message, client: 'node 2' });
    expect(letGo).toEqual(['node 1 7']);
  });
});
