import type { AddressInfo } from 'node:net';
import { expect, it } from 'vitest';
import { Problem } from '../../daemon/contract/problem.ts';
import { build } from './built-site.ts';

/* The fault injected: more pages that listen than there is room for. */
it('a page too many is told so, and one that leaves makes room', async () => {
  const site = await build({ maxStreams: () => 2 });
  await site.app.listen({ host: '127.0.0.1', port: 0 });
  const { port } = site.app.server.address() as AddressInfo;
  const address = `http://127.0.0.1:${port}/api/v1/stream`;
  const [first, second] = [await fetch(address), await fetch(address)];
  expect([first.status, second.status]).toEqual([200, 200]);
  const third = await fetch(address);
  expect(third.status).toBe(429);
  expect(Problem.parse(await third.json())).toMatchObject({ code: 'BC_TOO_MANY_STREAMS' });
  await first.body?.cancel();
  let again = await fetch(address);
  for (let i = 0; i < 100 && again.status === 429; i++) again = await fetch(address);
  expect(again.status).toBe(200);
  await Promise.all([second.body?.cancel(), again.body?.cancel()]);
});
