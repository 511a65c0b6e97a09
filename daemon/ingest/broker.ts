import { createServer, type Socket } from 'node:net';
import { setImmediate as nextTurn } from 'node:timers/promises';
import { Aedes, type AedesPublishPacket, type Client } from 'aedes';
import type { IngestLog, MessagePort, TakeMessage } from './message-port.ts';
import { messagesUnderWay } from './under-way.ts';

export interface BrokerParts {
  host: string;
  port: number;
  take: TakeMessage;
  log: IngestLog;
}

/** How long closing waits for commits, so that what is on disk is also acknowledged. */
const longestFarewellMs = 2000;

/**
 * The embedded broker. A publisher’s message is acknowledged only when `take` says that it is on
 * disk: `authorizePublish` is the one hook that runs before the acknowledgement is written.
 *
 * @throws Error saying what to do when the port is taken
 */
export async function startBroker({ host, port, take, log }: BrokerParts): Promise<MessagePort> {
  const underWay = messagesUnderWay();
  let closing = false;
  const broker = await Aedes.createBroker({
    connectTimeout: 30_000,
    authorizePublish(client, packet, callback) {
      if (packet.topic.startsWith('$SYS/')) {
        callback(new Error('Topics under $SYS belong to the broker.'));
        return;
      }
      // Neither taken nor acknowledged: the publisher sends it again when we are back.
      if (closing) return;
      // Without a client it is a packet of our own, or the will of one that is long gone.
      if (!client) {
        callback(null);
        return;
      }
      const payload =
        typeof packet.payload === 'string' ? Buffer.from(packet.payload) : packet.payload;
      // A publisher’s retain flag asks the broker to keep it; the message itself is of now.
      take(
        { topic: packet.topic, payload, retained: false, backlog: false },
        underWay.counted(callback),
      );
    },
  });
  broker.on('clientError', (client: Client, error: Error) => {
    log.warn({ client: client?.id, error: error.message }, 'an MQTT client was cut off');
  });
  broker.on('connectionError', (client: Client, error: Error) => {
    log.warn({ client: client?.id, error: error.message }, 'an MQTT connection failed');
  });

  const sockets = new Set<Socket>();
  const server = createServer((socket) => {
    sockets.add(socket);
    socket.once('close', () => sockets.delete(socket));
    socket.setNoDelay(true);
    broker.handle(socket);
  });
  await new Promise<void>((resolve, reject) => {
    server.once('error', (cause: NodeJS.ErrnoException) => {
      reject(
        new Error(
          cause.code === 'EADDRINUSE'
            ? `Port ${port} for MQTT is taken on ${host}. Stop the other broker, use it with --mqtt mqtt://localhost:${port}, or choose another port with --mqtt.`
            : `The MQTT broker cannot listen on ${host}:${port}: ${cause.message}. Choose another address with --mqtt.`,
          { cause },
        ),
      );
    });
    server.listen(port, host, resolve);
  });
  const address = server.address();

  return {
    kind: 'embedded',
    port: typeof address === 'object' && address ? address.port : port,
    connected: () => true,
    publish(topic, payload, { retain }) {
      const packet = {
        cmd: 'publish',
        topic,
        payload: Buffer.from(payload),
        qos: 1,
        retain,
        dup: false,
      } as AedesPublishPacket;
      broker.publish(packet, (error?: Error) => {
        if (error) log.warn({ topic, error: error.message }, 'a message could not be published');
      });
    },
    async close() {
      closing = true;
      await underWay.settled(longestFarewellMs);
      // Acknowledgements are written at the end of the turn; closing would throw them away.
      await nextTurn();
      const closed = new Promise<void>((resolve) => server.close(() => resolve()));
      await new Promise<void>((resolve) => broker.close(() => resolve()));
      for (const socket of sockets) socket.destroy();
      await closed;
    },
  };
}
