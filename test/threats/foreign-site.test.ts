import { describe, expect, it } from 'vitest';
import { codeOf, deviceAt, ownerPin, siteWithPin } from '../http/access-site.ts';
import { build } from '../http/built-site.ts';

describe('a page of another site', () => {
  const place = { method: 'POST', url: '/api/v1/places' } as const;
  const payload = { name: 'Shed', kind: 'room' };

  it.each([
    { origin: 'http://evil.example' },
    { origin: 'http://192.168.1.5:9090' },
    { origin: 'null' },
    { 'sec-fetch-site': 'cross-site' },
    { 'sec-fetch-site': 'same-site', origin: 'http://192.168.1.5:8080' },
  ])('changes nothing with the log-in of its visitor: %o', async (headers) => {
    const { device } = await siteWithPin();
    const phone = device('192.168.1.20');
    await phone.logIn(ownerPin);
    expect(codeOf(await phone.send({ ...place, payload, headers }))).toBe('BC_REQUEST_FOREIGN');
    expect((await phone.look()).json().places).toEqual([]);
  });

  it('changes nothing with a form, which cannot send our header', async () => {
    const { site, device } = await siteWithPin();
    const phone = device('192.168.1.20');
    await phone.logIn(ownerPin);
    const cookie = [...phone.cookies].map(([name, value]) => `${name}=${value}`).join('; ');
    const reply = await site.app.inject({
      ...{ method: 'POST', url: '/api/v1/places', remoteAddress: '192.168.1.20' },
      headers: { host: '192.168.1.5:8080', cookie, 'content-type': 'text/plain' },
      payload: JSON.stringify(payload),
    });
    expect(codeOf(reply)).toBe('BC_REQUEST_FOREIGN');
  });

  it('that makes its own name lead here (DNS rebinding) reads nothing and changes nothing', async () => {
    const site = await build();
    for (const remoteAddress of ['127.0.0.1', '192.168.1.20']) {
      const visitor = deviceAt(site, remoteAddress, { host: 'evil.example:8080' });
      expect(codeOf(await visitor.look())).toBe('BC_HOST_UNKNOWN');
      expect(codeOf(await visitor.send({ url: '/api/v1/stream' }))).toBe('BC_HOST_UNKNOWN');
      expect((await visitor.makePlace()).statusCode).toBe(403);
      expect((await visitor.logIn(ownerPin)).statusCode).toBe(403);
    }
  });

  it('may not be let in by a header of ours', async () => {
    const site = await build();
    const reply = await deviceAt(site, '192.168.1.20').send({
      url: '/api/v1/overview',
      headers: { origin: 'http://evil.example' },
    });
    expect(Object.keys(reply.headers).filter((name) => name.startsWith('access-control'))).toEqual(
      [],
    );
  });

  it.each(['//evil.example', '/%2f%2fevil.example', '/\\evil.example', '//evil.example/%2e%2e'])(
    'is never where we send anyone (open redirect): %s',
    async (url) => {
      const site = await build();
      const reply = await deviceAt(site, '192.168.1.20').send({ url });
      expect(reply.headers.location).toBeUndefined();
      expect(reply.statusCode < 300 || reply.statusCode >= 400).toBe(true);
    },
  );
});
