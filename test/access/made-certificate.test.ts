import { X509Certificate } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { request } from 'node:https';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { connect, createServer } from 'node:tls';
import { connectAsync } from 'mqtt';
import { afterAll, beforeAll, expect, it, onTestFinished } from 'vitest';
import {
  authorityOf,
  madeCertificate,
  type TlsPair,
} from '../../daemon/access/made-certificate.ts';
import { startBroker } from '../../daemon/ingest/broker.ts';
import { certificateNames } from '../../daemon/rules/certificate-names.ts';
import { needs } from '../house/needs.ts';
import { build } from '../http/built-site.ts';
import { heldStore, quiet } from '../ingest/held-store.ts';
import { dataFolder } from './open-access.ts';

const dayMs = 86_400_000;
const names = certificateNames('shed-pc.example', ['192.168.1.5', 'fe80::1%eth0', '203.0.113.7']);

const make = (folder: string, more: { names?: string[]; now?: number } = {}) =>
  madeCertificate({ folder, title: 'Boardcure shed', names, now: Date.now(), ...more });

/** Greets a server that shows this certificate, and tells what the client has against it. */
async function greet(pair: TlsPair, ca: string | undefined, servername: string): Promise<string> {
  const server = createServer(pair, (socket) => socket.end());
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  onTestFinished(() => void server.close());
  const address = server.address();
  const port = typeof address === 'object' && address ? address.port : 0;
  return new Promise((resolve) => {
    const socket = connect({ port, host: '127.0.0.1', servername, ...(ca ? { ca } : {}) }, () => {
      socket.destroy();
      resolve('accepted');
    });
    socket.on('error', (error: NodeJS.ErrnoException) => resolve(`${error.code} ${error.message}`));
  });
}

needs('openssl')('a certificate that was made here', () => {
  const outer = mkdtempSync(join(tmpdir(), 'boardcure-tls-'));
  const folder = join(outer, 'tls');
  let pair: TlsPair;
  let ca: string;

  beforeAll(async () => {
    pair = await make(folder);
    ca = authorityOf(folder) ?? '';
  });

  afterAll(() => rmSync(outer, { recursive: true, force: true }));

  it('is taken by who trusts its authority, and by nobody else', async () => {
    expect(await greet(pair, ca, 'localhost')).toBe('accepted');
    expect(await greet(pair, ca, 'shed-pc.local')).toBe('accepted');
    expect(await greet(pair, ca, 'other.local')).toMatch(/^ERR_TLS_CERT_ALTNAME_INVALID/);
    expect(await greet(pair, undefined, 'localhost')).toMatch(/SELF_SIGNED|UNABLE_TO/);
  });

  it('names this computer and no address that all the world sees', () => {
    expect(names).toContain('shed-pc.local');
    expect(names).toContain('192.168.1.5');
    expect(names).toContain('fe80::1');
    expect(names.join()).not.toContain('203.0.113.7');
  });

  it('has keys that nobody else on the computer can read', () => {
    for (const name of ['ca-key.pem', 'key.pem']) {
      expect(statSync(join(folder, name)).mode & 0o777).toBe(0o600);
    }
    expect(pair.cert).not.toContain('PRIVATE');
  });

  it('stays while it is good, and is made anew in time under the same authority', async () => {
    const own = join(dataFolder(), 'tls');
    const first = await make(own);
    expect((await make(own)).cert).toBe(first.cert);
    const later = await make(own, { now: Date.now() + 370 * dayMs });
    expect(later.cert).not.toBe(first.cert);
    const authority = new X509Certificate(authorityOf(own) ?? '');
    expect(new X509Certificate(later.cert).checkIssued(authority)).toBe(true);
  });

  it('is made anew when the computer has another address', async () => {
    const own = join(dataFolder(), 'tls');
    const first = await make(own);
    const moved = await make(own, { names: [...names, '192.168.7.7'] });
    expect(moved.cert).not.toBe(first.cert);
    expect(new X509Certificate(moved.cert).checkIP('192.168.7.7')).toBe('192.168.7.7');
  });

  it('comes from an authority that cannot vouch for a public name: its key is worth little', async () => {
    const own = join(dataFolder(), 'tls');
    const forged = await make(own, { names: ['www.example.org'] });
    const trusted = readFileSync(join(own, 'ca-cert.pem'), 'utf8');
    expect(await greet(forged, trusted, 'www.example.org')).toMatch(/permitted subtree violation/);
  });

  it('serves the pages, with cookies that leave over TLS only', async () => {
    const site = await build({ tls: { pair: () => pair }, authority: () => ca });
    await site.app.listen({ host: '127.0.0.1', port: 0 });
    const address = site.app.server.address();
    const port = typeof address === 'object' && address ? address.port : 0;
    const send = (method: string, path: string, body?: object) =>
      new Promise<{ status: number; cookies: string[]; text: string }>((resolve, reject) => {
        const headers = body ? { 'content-type': 'application/json' } : {};
        const sent = request({ host: 'localhost', port, path, method, ca, headers }, (reply) => {
          let text = '';
          reply.on('data', (part) => {
            text += part;
          });
          reply.on('end', () =>
            resolve({
              status: reply.statusCode ?? 0,
              cookies: reply.headers['set-cookie'] ?? [],
              text,
            }),
          );
        });
        sent.on('error', reject);
        sent.end(body && JSON.stringify(body));
      });
    expect((await send('GET', '/authority.pem')).text).toBe(ca);
    const reply = await send('POST', '/api/v1/pin', { pin: 'larch-27' });
    expect(reply.status).toBe(201);
    for (const cookie of reply.cookies) expect(cookie).toMatch(/; Secure$/);
  });

  it('guards the way of readings to the broker', async () => {
    const store = heldStore();
    const broker = await startBroker({
      host: '127.0.0.1',
      port: null,
      tls: { port: 0, pair },
      take: store.take,
      log: quiet,
    });
    expect(broker.port).toBeNull();
    const url = `mqtts://localhost:${broker.tlsPort}`;
    const client = await connectAsync(url, { ca, reconnectPeriod: 0 });
    const large = '2'.repeat(40_000);
    await client.publishAsync('some/other', large, { qos: 1 });
    await client.publishAsync('boardcure/shed/sensor/n1/air-temperature', '20.5', { qos: 1 });
    expect(store.readings()).toMatchObject([{ sensor: 'n1', raw: 20.5 }]);
    await client.endAsync();
    await expect(connectAsync(url, { reconnectPeriod: 0, connectTimeout: 3000 })).rejects.toThrow();
    await broker.close();
  });
});
