import { once } from 'node:events';
import { connect } from 'node:net';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import fc from 'fast-check';
import { generate } from 'mqtt-packet';
import { expect } from 'vitest';
import { startBroker } from '../../daemon/ingest/broker.ts';
import { groupCommit } from '../../daemon/ingest/group-commit.ts';
import { createIntake } from '../../daemon/ingest/intake.ts';
import { heldStore, quiet } from '../ingest/held-store.ts';
import { wireClient } from '../ingest/wire-client.ts';
import { anyMessage } from './payload-arbitraries.ts';

/** What may be added to the memory after the first ten slices, whatever is sent, bytes. Assumption. */
const mostGrownBytes = 64 * 1_048_576;
const perSlice = 500;
const goodTopic = 'boardcure/shed/sensor/steady/air-temperature';

/** Payloads as bytes: what the decoder takes, and what is no text. */
const payloads = fc.oneof(
  {
    weight: 9,
    arbitrary: anyMessage.map(({ topic, text }) => ({
      topic,
      bytes: Buffer.from(text ?? '\xff', 'utf8'),
    })),
  },
  fc.record({
    topic: fc.constant('boardcure/shed/sensor/odd'),
    bytes: fc.uint8Array({ maxLength: 300 }).map((x) => Buffer.from(x)),
  }),
);

/** Hands so many messages to the intake; each is answered once, and good readings are kept on the way. */
export async function takeAnything(runs: number): Promise<void> {
  let steadyRaw: number | null = null;
  let steadyCount = 0;
  // Keeps what is asked about and lets the rest go: what grows then is the intake’s own.
  const queue = groupCommit<null>({
    async commit({ readings }) {
      for (const { sensor, raw } of readings) {
        if (sensor !== 'steady') continue;
        steadyRaw = raw;
        steadyCount++;
      }
      return null;
    },
    committed() {},
    failed(cause) {
      throw cause;
    },
    now: Date.now,
    spacingMs: 5,
    groupSize: 400,
  });
  const intake = createIntake({
    site: 'shed',
    maxPayloadBytes: 65_536,
    now: Date.now,
    clockTrusted: () => true,
    queue,
  });
  const take = (topic: string, payload: Buffer) =>
    new Promise<void>((resolve, reject) => {
      let answers = 0;
      intake.take({ topic, payload, retained: false, backlog: false, from: 'fuzz' }, (failure) => {
        if (++answers > 1) reject(new Error('It was answered twice.'));
        else if (failure) reject(failure);
        else resolve();
      });
    });
  const slices = Math.ceil(runs / perSlice);
  let afterFirst = 0;
  for (let slice = 1; slice <= slices; slice++) {
    const messages = fc.sample(payloads, Math.min(perSlice, runs));
    const answers = messages.map(({ topic, bytes }) => take(topic, bytes));
    await Promise.all([...answers, take(goodTopic, Buffer.from(String(slice % 30)))]);
    expect(steadyRaw).toBe(slice % 30);
    expect(steadyCount).toBe(slice);
    if (slice === Math.min(10, slices)) afterFirst = heldBytes();
  }
  const grownBytes = heldBytes() - afterFirst;
  expect(grownBytes).toBeLessThan(mostGrownBytes);
}

/** What is still held after everything that can be cleared away was. */
function heldBytes(): number {
  collectGarbage();
  const { heapUsed, external } = process.memoryUsage();
  return heapUsed + external;
}

setFlagsFromString('--expose-gc');
const collectGarbage = runInNewContext('gc') as () => void;

const connectBytes = generate({
  cmd: 'connect',
  protocolId: 'MQTT',
  protocolVersion: 4,
  clientId: 'stranger',
  clean: true,
  keepalive: 60,
});
const publishBytes = (topic: string, payload: Buffer) =>
  generate({ cmd: 'publish', topic, payload, qos: 1, messageId: 1, retain: false, dup: false });

/** Packets as they should be, with bytes changed, cut out or put in. */
const streams = fc
  .record({
    payload: fc.uint8Array({ maxLength: 100 }),
    topic: fc.stringMatching(/^[\w/ é]{1,30}$/),
    at: fc.nat(),
    put: fc.uint8Array({ maxLength: 8 }),
    drop: fc.nat({ max: 4 }),
    whole: fc.boolean(),
  })
  .map(({ payload, topic, at, put, drop, whole }) => {
    const bytes = Buffer.concat([connectBytes, publishBytes(topic, Buffer.from(payload))]);
    if (whole) return Buffer.from(put);
    const place = at % bytes.length;
    return Buffer.concat([
      bytes.subarray(0, place),
      Buffer.from(put),
      bytes.subarray(place + drop),
    ]);
  });

/** Sends such bytes to a broker, and after each few sees a good reading acknowledged. */
export async function sendAnyBytes(runs: number): Promise<void> {
  const store = heldStore();
  const broker = await startBroker({ host: '127.0.0.1', port: 0, take: store.take, log: quiet });
  const port = broker.port ?? 0;
  const steady = await wireClient(port);
  let messageId = 0;
  try {
    for (const [index, bytes] of fc.sample(streams, runs).entries()) {
      const socket = connect(port, '127.0.0.1');
      socket.on('error', () => {});
      socket.resume();
      await once(socket, 'connect');
      socket.end(bytes);
      if (index % 20 !== 19) continue;
      const id = ++messageId;
      steady.send({
        ...{ cmd: 'publish', topic: goodTopic, payload: '20', qos: 1, messageId: id },
        ...{ retain: false, dup: false },
      });
      await steady.hear('puback', (packet) => packet.messageId === id);
    }
    expect(store.readings().filter(({ sensor }) => sensor === 'steady')).toHaveLength(messageId);
  } finally {
    steady.close();
    await broker.close();
  }
}
