import { once } from 'node:events';
import { connect, createServer, type Socket } from 'node:net';
import { afterEach, describe, expect, it } from 'vitest';
import { gatherWrites } from '../../daemon/ingest/gathered-writes.ts';

let closers: (() => void)[] = [];
afterEach(() => {
  for (const close of closers) close();
  closers = [];
});

/** Both ends of a connection, and all that the far one hears until it is ended. */
async function line() {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const { port } = server.address() as { port: number };
  const far = connect(port, '127.0.0.1');
  const [near] = (await once(server, 'connection')) as [Socket];
  closers.push(
    () => server.close(),
    () => far.destroy(),
  );
  let passedOn = 0;
  gatherWrites(near, () => passedOn++);
  const heard: Buffer[] = [];
  far.on('data', (bytes: Buffer) => heard.push(bytes));
  const ended = once(far, 'end').then(() => Buffer.concat(heard).toString());
  return { near, ended, passedOn: () => passedOn };
}

describe('writes of one turn', () => {
  it('go out together and in their order, also when the end follows at once', async () => {
    const { near, ended, passedOn } = await line();
    for (const part of ['a', Buffer.from('b'), 'ć']) near.write(part);
    near.write('last');
    near.end('!');
    expect(await ended).toBe('abćlast!');
    expect(passedOn()).toBe(1);
  });

  it('do not wait for the turn’s end when they are much', async () => {
    const { near, ended, passedOn } = await line();
    const large = 'x'.repeat(16_384);
    near.write('first');
    near.write(large);
    expect(passedOn()).toBe(1);
    near.write('rest');
    near.end();
    expect(await ended).toBe(`first${large}rest`);
  });
});
