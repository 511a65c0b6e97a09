import { once } from 'node:events';
import { connect } from 'node:net';
import { expect, it } from 'vitest';
import { startBroker } from '../../daemon/ingest/broker.ts';
import { build } from '../http/built-site.ts';
import { heldStore, quiet } from '../ingest/held-store.ts';

/** A client that sends a byte now and then, so that it is never done; settles when it is cut off. */
function trickle(port: number, first: string): Promise<void> {
  const socket = connect(port, '127.0.0.1');
  socket.on('error', () => {});
  socket.write(first);
  const drip = setInterval(() => socket.write('x'), 20);
  return once(socket.resume(), 'close').then(() => clearInterval(drip));
}

it('who sends a request byte by byte is cut off, and others are answered meanwhile', async () => {
  const limits = { maxRequestsPerMinute: 1000, maxConnections: 100, requestSeconds: 0.4 };
  const site = await build({ limits });
  await site.app.listen({ host: '127.0.0.1', port: 0 });
  const address = site.app.server.address();
  const port = typeof address === 'object' && address ? address.port : 0;
  const head = 'GET / HTTP/1.1\r\nHost: localhost\r\nX-Slow: ';
  const body =
    'POST /api/v1/places HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\nContent-Length: 100000\r\n\r\n{';
  const slow = [...Array(20)].flatMap(() => [trickle(port, head), trickle(port, body)]);
  const reply = await fetch(`http://127.0.0.1:${port}/healthz`);
  expect(reply.status).toBe(200);
  await Promise.all(slow);
});

it('who connects to the broker and never says CONNECT is cut off', async () => {
  const store = heldStore();
  const broker = await startBroker({
    host: '127.0.0.1',
    port: 0,
    limits: { connectSeconds: 0.2 },
    take: store.take,
    log: quiet,
  });
  // The first byte of CONNECT and a length that promises more.
  await trickle(broker.port ?? 0, '\x10\x7f');
  expect(broker.traffic()?.cutOff['no-connect']).toBe(1);
  await broker.close();
});
