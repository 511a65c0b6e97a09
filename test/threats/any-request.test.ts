import fc from 'fast-check';
import { expect, it } from 'vitest';
import { anyRequest, askAnything, fuzzedSite } from '../fuzz/http-requests.ts';

it('no request whatever is answered as a fault of the daemon, the short run', () =>
  askAnything(400));

it('the generated requests are not all refused at the door: many are taken', async () => {
  const { site, ids } = await fuzzedSite();
  let taken = 0;
  for (const request of fc.sample(anyRequest(ids), { numRuns: 200, seed: 7 })) {
    const reply = await site.ask(request);
    if (reply.statusCode < 300) taken++;
  }
  expect(taken).toBeGreaterThan(20);
});
