import type { IPublishPacket } from 'mqtt-packet';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { startBroker } from '../../daemon/ingest/broker.ts';
import { filterMatches } from '../../daemon/ingest/listeners.ts';
import type { MessagePort } from '../../daemon/ingest/message-port.ts';
import { quiet } from './held-store.ts';
import { type WireClient, wireClient } from './wire-client.ts';

describe('a topic filter', () => {
  /*
   * The examples of MQTT 3.1.1 (2014), sections 4.7.1.2 and 4.7.1.3.
   */
  it.each([
    ['sport/tennis/player1/#', 'sport/tennis/player1', true],
    ['sport/tennis/player1/#', 'sport/tennis/player1/ranking', true],
    ['sport/tennis/player1/#', 'sport/tennis/player1/score/wimbledon', true],
    ['sport/#', 'sport', true],
    ['#', 'sport/tennis', true],
    ['sport/tennis/+', 'sport/tennis/player1', true],
    ['sport/tennis/+', 'sport/tennis/player1/ranking', false],
    ['sport/+', 'sport', false],
    ['sport/+', 'sport/', true],
    ['+/+', '/finance', true],
    ['/+', '/finance', true],
    ['+', '/finance', false],
    ['sport/tennis', 'sport', false],
  ])('%s for %s: %s', (filter, topic, wanted) => {
    expect(filterMatches(filter, topic.split('/'))).toBe(wanted);
  });
});

describe('a message that somebody may listen to', () => {
  const topic = 'boardcure/shed/sensor/rack-1/air-temperature';
  let broker: MessagePort;
  let wires: WireClient[];
  beforeEach(async () => {
    wires = [];
    const take = (_: unknown, done: (failure: Error | null) => void) => setImmediate(done, null);
    broker = await startBroker({ host: '127.0.0.1', port: 0, take, log: quiet });
  });
  afterEach(async () => {
    for (const wire of wires) wire.close();
    await broker.close();
  });
  async function client(clientId: string): Promise<WireClient> {
    const wire = await wireClient(broker.port ?? 0, { clientId, clean: true });
    wires.push(wire);
    return wire;
  }
  let messageId = 0;
  const publish = async (wire: WireClient, payload: string, more: object = {}) => {
    const id = ++messageId;
    const packet = { cmd: 'publish', topic, payload, qos: 1, messageId: id, dup: false } as const;
    wire.send({ ...packet, retain: false, ...more } as IPublishPacket);
    await wire.hear('puback', (one) => 'messageId' in one && one.messageId === id);
    await wire.ping();
  };
  const heard = (wire: WireClient) =>
    wire.heard.flatMap((one) => (one.cmd === 'publish' ? [String(one.payload)] : []));
  const listen = async (wire: WireClient, filter: string) => {
    const subscriptions = [{ topic: filter, qos: 0 as const }];
    wire.send({ cmd: 'subscribe', messageId: 1, subscriptions });
    await wire.hear('suback');
  };

  it('reaches whoever began to listen after others of its topic had been heard by nobody', async () => {
    const [node, listener, other] = [await client('n'), await client('l'), await client('o')];
    await publish(node, '1');
    await listen(other, 'somewhere/else');
    await publish(node, '2');
    await listen(listener, 'boardcure/+/sensor/#');
    await publish(node, '3');
    await listener.ping();
    await other.ping();
    expect(heard(listener)).toEqual(['3']);
    expect(heard(other)).toEqual([]);
  });

  it('reaches nobody once its listener is gone, and is kept for later ones where it says so', async () => {
    const [node, first] = [await client('n'), await client('l')];
    await listen(first, '#');
    first.close();
    await first.closed;
    await publish(node, '1', { retain: true });
    const later = await client('later');
    await listen(later, topic);
    await later.hear('publish');
    expect(heard(later)).toEqual(['1']);
  });
});
