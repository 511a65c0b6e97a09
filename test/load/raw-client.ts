import { once } from 'node:events';
import { connect, type Socket } from 'node:net';
import { generate, type Packet } from 'mqtt-packet';

/** A bare socket to the broker that writes without listening, and counts PUBACKs if it reads. */
export interface RawClient {
  readonly socket: Socket;
  /** Acknowledgements heard so far. */
  acknowledged(): number;
  /** Settles when so many acknowledgements were heard. */
  heard(count: number): Promise<void>;
  send(...packets: Packet[]): void;
}

const connectPacket = (clientId: string): Packet => ({
  ...{ cmd: 'connect', protocolId: 'MQTT', protocolVersion: 4, clientId },
  ...{ clean: true, keepalive: 0 },
});

/**
 * Connects; with a name it also says CONNECT and waits for the answer.
 *
 * @param port - of the broker
 * @param clientId - null for one that never says CONNECT
 */
export async function rawClient(port: number, clientId: string | null): Promise<RawClient> {
  const socket = connect(port, '127.0.0.1');
  socket.on('error', () => {});
  await once(socket, 'connect');
  let acknowledged = 0;
  let rest: Buffer = Buffer.alloc(0);
  let cutOff: (cause: Error) => void = () => {};
  socket.once('close', () => cutOff(new Error(`cut off after ${acknowledged} acknowledgements`)));
  let wanted = { count: Number.POSITIVE_INFINITY, reached: () => {} };
  if (clientId !== null) {
    socket.write(generate(connectPacket(clientId)));
    // A CONNACK has four bytes, and nothing follows it before we speak.
    await once(socket, 'data');
  }
  // Only PUBACKs follow, four bytes each: counted, not parsed, so that a flood costs us little.
  socket.on('data', (bytes: Buffer) => {
    const all = rest.length > 0 ? Buffer.concat([rest, bytes]) : bytes;
    acknowledged += Math.floor(all.length / 4);
    rest = all.subarray(all.length - (all.length % 4));
    if (acknowledged >= wanted.count) wanted.reached();
  });
  return {
    socket,
    acknowledged: () => acknowledged,
    heard: (count) =>
      new Promise((resolve, reject) => {
        wanted = { count, reached: resolve };
        if (acknowledged >= count) resolve();
        else if (socket.closed) reject(new Error(`cut off after ${acknowledged} of ${count}`));
        else cutOff = reject;
      }),
    send(...packets) {
      socket.write(Buffer.concat(packets.map((packet) => generate(packet))));
    },
  };
}

/** Readings of one sensor with times of their own, as bytes of PUBLISH packets at QoS 1. */
export function readingFlood(sensor: string, count: number, fromAt: number, stepMs = 1000): Buffer {
  return Buffer.concat(
    Array.from({ length: count }, (_, i) =>
      generate({
        ...{ cmd: 'publish', topic: `boardcure/shed/sensor/${sensor}/air-temperature`, qos: 1 },
        payload: `{"value":18.5,"time":${fromAt + i * stepMs}}`,
        ...{ messageId: (i % 65_535) + 1, retain: false, dup: false },
      }),
    ),
  );
}

/** The same as SenML packs of a thousand readings, so that a long flood is soon sent. */
export function packedFlood(sensor: string, count: number, fromAt: number, stepMs: number): Buffer {
  const perPack = 1000;
  const packs = Array.from({ length: Math.ceil(count / perPack) }, (_, pack) => {
    const first = pack * perPack;
    const records = Array.from({ length: Math.min(perPack, count - first) }, (_, i) => ({
      ...(i === 0
        ? { bn: 'air-temperature', bu: 'Cel', bt: (fromAt + first * stepMs) / 1000 }
        : {}),
      ...{ t: (i * stepMs) / 1000, v: 18 + ((first + i) % 50) / 10 },
    }));
    return generate({
      ...{ cmd: 'publish', topic: `boardcure/shed/sensor/${sensor}`, qos: 1 },
      payload: JSON.stringify(records),
      ...{ messageId: pack + 1, retain: false, dup: false },
    });
  });
  return Buffer.concat(packs);
}
