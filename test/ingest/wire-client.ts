import { once } from 'node:events';
import { connect } from 'node:net';
import { generate, type Packet, parser } from 'mqtt-packet';

/** An MQTT client that does nothing by itself: it sends what it is told and keeps what it hears. */
export interface WireClient {
  /** All packets heard so far, in order. */
  readonly heard: readonly Packet[];
  send(packet: Packet): void;
  sendBytes(bytes: Uint8Array): void;
  /** Settles with the first packet of a kind, heard before or still to come. */
  hear<C extends Packet['cmd']>(cmd: C, matches?: (packet: Packet) => boolean): Promise<Packet>;
  /** Settles when the other side has answered a ping: whatever it had to say before, it has said. */
  ping(): Promise<void>;
  closed: Promise<void>;
  close(): void;
}

/**
 * Connects to a port of this computer and says CONNECT in MQTT 3.1.1.
 *
 * @param port - of the broker
 * @param options - further fields of the CONNECT packet
 */
export async function wireClient(port: number, options: object = {}): Promise<WireClient> {
  const socket = connect(port, '127.0.0.1');
  const packets = parser({ protocolVersion: 4 });
  const heard: Packet[] = [];
  const waiting = new Set<() => void>();
  const wake = () => {
    for (const look of waiting) look();
  };
  socket.on('error', () => {});
  socket.on('data', (bytes: Buffer) => packets.parse(bytes));
  packets.on('packet', (packet: Packet) => {
    heard.push(packet);
    wake();
  });
  const closed = new Promise<void>((resolve) => socket.once('close', () => resolve()));
  let isClosed = false;
  void closed.then(() => {
    isClosed = true;
    wake();
  });
  const send = (packet: Packet) => {
    socket.write(generate(packet, { protocolVersion: 4 }));
  };
  const hear = (
    cmd: Packet['cmd'],
    matches: (packet: Packet) => boolean = () => true,
  ): Promise<Packet> =>
    new Promise((resolve, reject) => {
      const look = () => {
        const found = heard.find((packet) => packet.cmd === cmd && matches(packet));
        if (found) resolve(found);
        else if (isClosed) reject(new Error(`The connection ended before a ${cmd}.`));
        else return;
        waiting.delete(look);
      };
      waiting.add(look);
      look();
    });
  await once(socket, 'connect');
  send({
    cmd: 'connect',
    protocolId: 'MQTT',
    protocolVersion: 4,
    clientId: `wire-${port}-${Math.random().toString(36).slice(2, 8)}`,
    clean: true,
    keepalive: 60,
    ...options,
  });
  await hear('connack');
  return {
    heard,
    send,
    sendBytes: (bytes) => {
      socket.write(bytes);
    },
    hear,
    async ping() {
      const before = heard.filter(({ cmd }) => cmd === 'pingresp').length;
      send({ cmd: 'pingreq' });
      await hear('pingresp', () => heard.filter(({ cmd }) => cmd === 'pingresp').length > before);
    },
    closed,
    close: () => socket.destroy(),
  };
}
