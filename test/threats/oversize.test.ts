import { describe, expect, it } from 'vitest';
import { codeOf, deviceAt, ownerPin, siteWithPin } from '../http/access-site.ts';
import { build, fromHere } from '../http/built-site.ts';
import { heldStore } from '../ingest/held-store.ts';

describe('something far too large', () => {
  it('as a body is refused, before a log-in as well as after', async () => {
    const { device } = await siteWithPin();
    const phone = device('192.168.1.20');
    const large = `{"name":"${'x'.repeat(1_100_000)}"}`;
    const send = (url: string) =>
      phone.send({
        method: 'POST',
        url,
        headers: { 'content-type': 'application/json' },
        payload: large,
      });
    expect(codeOf(await send('/api/v1/places'))).toBe('BC_LOGIN_NEEDED');
    expect(codeOf(await send('/api/v1/session'))).toBe('BC_REQUEST_TOO_LARGE');
    await phone.logIn(ownerPin);
    expect(codeOf(await send('/api/v1/places'))).toBe('BC_REQUEST_TOO_LARGE');
  });

  it('as a packed body is not unpacked (zip bomb)', async () => {
    const site = await build();
    const reply = await site.ask({
      method: 'POST',
      url: '/api/v1/places',
      headers: { 'content-type': 'application/json', 'content-encoding': 'gzip' },
      // The first bytes of a gzip member; RFC 1952.
      payload: Buffer.from('1f8b0800000000000003', 'hex'),
    });
    expect(codeOf(reply)).toBe('BC_REQUEST_UNREADABLE');
  });

  it('as a name, a list or a query is refused for the field that it is in', async () => {
    const site = await build();
    const body = { name: 'x'.repeat(100_000), kind: 'room' };
    expect(await site.refused('createPlace', { body })).toMatchObject({ pointer: '/name' });
    const query = { sensor: 'x'.repeat(5000), quantity: 'air-temperature' };
    expect((await site.refused('series', { query })).status).toBe(400);
  });

  it('as a chart is bounded, whatever span it is asked for', async () => {
    const site = await build();
    const query = {
      sensor: 'n1',
      quantity: 'air-temperature',
      from: '0001-01-01T00:00:00Z',
      to: '9999-12-31T00:00:00Z',
      points: '1000000000',
    };
    expect((await site.refused('series', { query })).status).toBe(400);
  });

  it('as a message is kept as its beginning, with the reason', async () => {
    const store = heldStore();
    const payload = Buffer.alloc(200_000, 0x31);
    const topic = 'boardcure/shed/sensor/n1/air-temperature';
    await new Promise((done) =>
      store.take({ topic, payload, retained: false, backlog: false }, done),
    );
    expect(store.readings()).toEqual([]);
    const [refused] = store.refused();
    expect(refused?.code).toBe('payload-too-large');
    expect(refused?.payloadStart.length).toBeLessThan(2000);
  });
});

describe('far too many', () => {
  it('requests of one device are refused, and those of others and of the computer are not', async () => {
    const limits = { maxRequestsPerMinute: 30, maxConnections: 100, requestSeconds: 30 };
    const site = await build({ limits });
    const flood = deviceAt(site, '192.168.1.66');
    const statuses = [];
    for (let i = 0; i < 40; i++) statuses.push((await flood.look()).statusCode);
    expect(statuses.filter((status) => status === 200)).toHaveLength(30);
    expect(codeOf(await flood.look())).toBe('BC_TOO_MANY_REQUESTS');
    expect((await deviceAt(site, '192.168.1.67').look()).statusCode).toBe(200);
    const computer = deviceAt(site, fromHere.remoteAddress, fromHere.headers);
    for (let i = 0; i < 40; i++) expect((await computer.look()).statusCode).toBe(200);
  });
});
