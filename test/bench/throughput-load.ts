import { once } from 'node:events';
import { connect, type Socket } from 'node:net';
import { connectAsync } from 'mqtt';
import { generate } from 'mqtt-packet';

/** So many connections, each with so many messages under way. */
export interface Shape {
  connections: number;
  inFlight: number;
}

export interface LoadResult {
  /** From the first message sent to the last one acknowledged. */
  elapsedMs: number;
  /** From publish to acknowledgement, each, ms, ascending. */
  waitsMs: number[];
}

/** Sends readings at QoS 1, each connection as many at once as its shape allows. */
export type Load = (port: number, shape: Shape, total: number) => Promise<LoadResult>;

/** Each run sends newer readings than the one before, of an hour that is not over for long. */
let startAt = Date.now() - 300_000;

/** A PUBLISH of which only the time and the packet’s number change from reading to reading. */
function template(sensor: string, fromAt: number) {
  let at = fromAt;
  const topic = `boardcure/shed/sensor/${sensor}/air-temperature`;
  const packet = generate({
    ...{ cmd: 'publish', topic, payload: `{"value":18.5,"time":${at}}`, qos: 1 },
    ...{ messageId: 1, retain: false, dup: false },
  });
  const idAt = 2 + 2 + topic.length;
  const timeAt = packet.length - 1 - String(at).length;
  let id = 0;
  return (): Buffer => {
    const copy = Buffer.from(packet);
    id = (id % 65_535) + 1;
    copy.writeUInt16BE(id, idAt);
    copy.write(String(at++), timeAt, 'latin1');
    return copy;
  };
}

async function introduced(port: number, clientId: string): Promise<Socket> {
  const socket = connect(port, '127.0.0.1');
  socket.setNoDelay(true);
  await once(socket, 'connect');
  const names = { protocolId: 'MQTT', protocolVersion: 4, clientId } as const;
  socket.write(generate({ cmd: 'connect', ...names, clean: true, keepalive: 0 }));
  await once(socket, 'data');
  return socket;
}

/**
 * Over bare sockets, with packets made beforehand: what is measured is the other side.
 *
 * @param port - of the broker
 * @param shape - connections, and messages under way on each
 * @param total - readings in all; a whole number for each connection
 */
export const bareLoad: Load = async (port, shape, total) => {
  const each = total / shape.connections;
  const sockets = await Promise.all(
    Array.from({ length: shape.connections }, (_, i) => introduced(port, `load-${i}`)),
  );
  const fromAt = startAt;
  startAt += each;
  const waitsMs: number[] = [];
  const began = performance.now();
  await Promise.all(
    sockets.map(async (socket, i) => {
      const next = template(`node-${i}`, fromAt);
      const sentAt: number[] = [];
      let sent = 0;
      let heard = 0;
      let loose = 0;
      const send = (count: number) => {
        const packets = Array.from({ length: Math.min(count, each - sent) }, next);
        if (packets.length === 0) return;
        sent += packets.length;
        const now = performance.now();
        for (const _ of packets) sentAt.push(now);
        socket.write(Buffer.concat(packets));
      };
      const done = new Promise<void>((resolve, reject) => {
        socket.once('close', () => reject(new Error('The broker closed the connection.')));
        socket.on('data', (bytes: Buffer) => {
          // Only PUBACKs come, four bytes each.
          const got = Math.floor((loose + bytes.length) / 4);
          loose = (loose + bytes.length) % 4;
          const now = performance.now();
          for (let k = 0; k < got; k++) waitsMs.push(now - (sentAt[heard + k] ?? now));
          heard += got;
          if (heard >= each) resolve();
          else send(got);
        });
      });
      send(shape.inFlight);
      await done;
    }),
  );
  const elapsedMs = performance.now() - began;
  for (const socket of sockets) {
    socket.removeAllListeners('close');
    socket.destroy();
  }
  return { elapsedMs, waitsMs: waitsMs.sort((a, b) => a - b) };
};

/** With the usual client library, as most who publish do; same parameters as `bareLoad`. */
export const clientLoad: Load = async (port, shape, total) => {
  const each = total / shape.connections;
  const clients = await Promise.all(
    Array.from({ length: shape.connections }, (_, i) =>
      connectAsync(`mqtt://127.0.0.1:${port}`, { clientId: `load-${i}`, keepalive: 0 }),
    ),
  );
  const fromAt = startAt;
  startAt += each;
  const waitsMs: number[] = [];
  const began = performance.now();
  await Promise.all(
    clients.map(
      (client, i) =>
        new Promise<void>((resolve, reject) => {
          const topic = `boardcure/shed/sensor/node-${i}/air-temperature`;
          let sent = 0;
          let heard = 0;
          const send = () => {
            const sentAt = performance.now();
            const payload = `{"value":18.5,"time":${fromAt + sent++}}`;
            client.publish(topic, payload, { qos: 1 }, (error) => {
              if (error) reject(error);
              waitsMs.push(performance.now() - sentAt);
              if (++heard === each) resolve();
              else if (sent < each) send();
            });
          };
          while (sent < Math.min(each, shape.inFlight)) send();
        }),
    ),
  );
  const elapsedMs = performance.now() - began;
  await Promise.all(clients.map((client) => client.endAsync(true)));
  return { elapsedMs, waitsMs: waitsMs.sort((a, b) => a - b) };
};
