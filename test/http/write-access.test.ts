import type { InjectOptions } from 'fastify';
import { describe, expect, it } from 'vitest';
import { build, problemOf } from './built-site.ts';

const change = {
  method: 'POST',
  url: '/api/v1/places',
  payload: { name: 'Shed', kind: 'room' },
} as const;

async function status(options: InjectOptions): Promise<number> {
  const { app } = await build();
  const reply = await app.inject({ ...change, ...options });
  if (reply.statusCode >= 400) expect(problemOf(reply).code).toBe('BC_WRITE_NOT_ALLOWED');
  return reply.statusCode;
}

describe('a change is taken from the computer itself', () => {
  it.each([
    { remoteAddress: '127.0.0.1', headers: { host: 'localhost:8080' } },
    { remoteAddress: '127.0.0.2', headers: { host: '127.0.0.1' } },
    { remoteAddress: '::1', headers: { host: '[::1]:8080' } },
    { remoteAddress: '::ffff:127.0.0.1', headers: { host: 'LOCALHOST:8080' } },
    {
      remoteAddress: '127.0.0.1',
      headers: {
        host: 'localhost:8080',
        origin: 'http://localhost:8080',
        'sec-fetch-site': 'same-origin',
      },
    },
  ])('as $remoteAddress under $headers.host', async (options) => {
    expect(await status(options)).toBe(201);
  });
});

describe('a change is refused', () => {
  const remoteAddress = '127.0.0.1';
  const host = 'localhost:8080';

  it.each(['192.168.1.20', '10.0.0.1', '::ffff:192.168.1.20', 'fe80::1', '128.0.0.1', '0.0.0.0'])(
    'from %s',
    async (address) => {
      expect(await status({ remoteAddress: address, headers: { host } })).toBe(403);
    },
  );

  it.each([
    { header: 'forwarded', value: 'for=192.0.2.60' },
    { header: 'via', value: '1.1 proxy' },
    { header: 'x-forwarded-for', value: '127.0.0.1' },
    { header: 'X-Forwarded-For', value: '' },
    { header: 'x-forwarded-host', value: 'localhost' },
    { header: 'x-forwarded-proto', value: 'https' },
    { header: 'x-real-ip', value: '127.0.0.1' },
    { header: 'true-client-ip', value: '192.0.2.60' },
  ])('when $header says that it was passed on', async ({ header, value }) => {
    expect(await status({ remoteAddress, headers: { host, [header]: value } })).toBe(403);
  });

  // A foreign name that was made to lead to this computer (DNS rebinding).
  it.each([
    'shed.example',
    'localhost.shed.example',
    'shed.example:8080',
    '127.0.0.1.shed.example',
    'localhost:8080@shed.example',
    '192.168.1.5:8080',
    '1270.0.0.1',
  ])('under the foreign name %s', async (name) => {
    expect(await status({ remoteAddress, headers: { host: name } })).toBe(403);
  });

  it.each([
    'http://shed.example',
    'http://localhost:3000',
    'http://127.0.0.1:8080',
    'http://localhost:8080.shed.example',
    'null',
    '',
  ])('from a page of %s', async (origin) => {
    expect(await status({ remoteAddress, headers: { host, origin } })).toBe(403);
  });

  it.each(['cross-site', 'same-site'])('when a browser calls it %s', async (site) => {
    expect(await status({ remoteAddress, headers: { host, 'sec-fetch-site': site } })).toBe(403);
  });

  it('before its body is read', async () => {
    const large = { name: 'x'.repeat(2_000_000), kind: 'room' };
    expect(await status({ remoteAddress: '192.168.1.20', headers: { host }, payload: large })).toBe(
      403,
    );
  });
});

describe('looking', () => {
  it('is open to the local network, and says whether changes would be taken', async () => {
    const { app } = await build();
    const look = async (remoteAddress: string) => {
      const reply = await app.inject({
        url: '/api/v1/overview',
        remoteAddress,
        headers: { host: 'localhost:8080' },
      });
      return reply.json().mayWrite;
    };
    expect(await look('192.168.1.20')).toBe(false);
    expect(await look('127.0.0.1')).toBe(true);
  });

  it('lets no other page frame the pages or lend them scripts', async () => {
    const { ask } = await build();
    const { headers } = await ask({ url: '/api/v1/overview' });
    expect(headers['content-security-policy']).toMatch(/default-src 'self'/);
    expect(headers['content-security-policy']).toMatch(/frame-ancestors 'none'/);
    expect(headers['x-content-type-options']).toBe('nosniff');
    expect(headers['access-control-allow-origin']).toBeUndefined();
    // RFC 6797, section 7.2: not over plain HTTP.
    expect(headers['strict-transport-security']).toBeUndefined();
  });
});
