import { once } from 'node:events';
import { connect, createServer, type Socket } from 'node:net';

/** A line to a port of this computer that can be cut like a cable. */
export async function cutLine(to: number) {
  const sockets = new Set<Socket>();
  let whole = true;
  const server = createServer((near) => {
    if (!whole) {
      near.destroy();
      return;
    }
    const far = connect(to, '127.0.0.1');
    for (const [one, other] of [
      [near, far],
      [far, near],
    ] as const) {
      sockets.add(one);
      one.on('error', () => {});
      one.once('close', () => {
        sockets.delete(one);
        other.destroy();
      });
      one.pipe(other);
    }
  });
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  const address = server.address();
  return {
    port: typeof address === 'object' && address ? address.port : 0,
    cut(): void {
      whole = false;
      for (const socket of sockets) socket.destroy();
    },
    mend(): void {
      whole = true;
    },
    async close(): Promise<void> {
      for (const socket of sockets) socket.destroy();
      server.close();
      await once(server, 'close');
    },
  };
}
