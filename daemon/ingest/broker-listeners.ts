import { createServer, type Server, type Socket } from 'node:net';
import { createServer as createTlsServer, type Server as TlsServer } from 'node:tls';

/** Certificate and key, as PEM text. */
export interface TlsPair {
  cert: string;
  key: string;
}

export interface ListenerParts {
  host: string;
  /** Null for none without TLS. */
  port: number | null;
  /** Null for none with TLS. */
  tls: { port: number; pair: TlsPair } | null;
  /** For the whole greeting of TLS, ms. */
  handshakeMs: number;
  maxConnections: number;
}

const highWaterMark = 16_384;

/**
 * The doors of the embedded broker: one as it always was, one for TLS.
 *
 * @param enter - given each connection, once it can be spoken over
 * @throws Error saying what to do when a port is taken
 */
export async function listenForClients(parts: ListenerParts, enter: (socket: Socket) => void) {
  const { host, port, tls, handshakeMs, maxConnections } = parts;
  // Before anything else: a socket that is refused may still fail.
  const met = (socket: Socket) => {
    socket.on('error', () => {});
    enter(socket);
  };
  const plain = port === null ? null : createServer({ highWaterMark }, met);
  let secure: TlsServer | null = null;
  if (tls !== null) {
    secure = createTlsServer({
      ...{ ...tls.pair, highWaterMark, handshakeTimeout: handshakeMs, minVersion: 'TLSv1.2' },
    });
    secure.maxConnections = maxConnections;
    secure.on('secureConnection', met);
    secure.on('tlsClientError', (_error, socket) => socket.destroy());
  }
  const opened: Server[] = [];
  const close = () =>
    Promise.all(opened.map((server) => new Promise<void>((done) => server.close(() => done()))));
  try {
    if (plain !== null && port !== null) await open(plain, host, port, '--mqtt');
    if (plain !== null) opened.push(plain);
    if (secure !== null && tls !== null) await open(secure, host, tls.port, 'mqtt.tlsPort');
    if (secure !== null) opened.push(secure);
  } catch (cause) {
    await close();
    throw cause;
  }
  return {
    port: portOf(plain),
    tlsPort: portOf(secure),
    /** Greets new connections with this certificate; those that are open go on. */
    renew: (pair: TlsPair): void => secure?.setSecureContext(pair),
    close,
  };
}

function open(server: Server, host: string, port: number, chosenBy: string): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', (cause: NodeJS.ErrnoException) => {
      reject(
        new Error(
          cause.code === 'EADDRINUSE'
            ? `Port ${port} for MQTT is taken on ${host}. Stop the other broker, use it with --mqtt mqtt://localhost:${port}, or choose another port with ${chosenBy}.`
            : `The MQTT broker cannot listen on ${host}:${port}: ${cause.message}. Choose another address with ${chosenBy}.`,
          { cause },
        ),
      );
    });
    server.listen(port, host, resolve);
  });
}

function portOf(server: Server | null): number | null {
  const address = server?.address();
  return typeof address === 'object' && address ? address.port : null;
}
