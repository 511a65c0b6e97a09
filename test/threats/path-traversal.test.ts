import { mkdirSync, writeFileSync } from 'node:fs';
import { connect } from 'node:net';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { dataFolder } from '../access/open-access.ts';
import { build } from '../http/built-site.ts';

const secret = 'what-nobody-may-read';

async function servedFolder() {
  const outer = dataFolder();
  const dashboardFolder = join(outer, 'pages');
  mkdirSync(dashboardFolder);
  writeFileSync(join(outer, 'access.json'), secret);
  writeFileSync(join(dashboardFolder, 'index.html'), '<p>the page</p>');
  const site = await build({ dashboardFolder });
  await site.app.listen({ host: '127.0.0.1', port: 0 });
  const address = site.app.server.address();
  if (typeof address !== 'object' || address === null) throw new Error('It does not listen.');
  return address.port;
}

/** The answer to a path as it is: clients tidy it up before they send it. */
function rawGet(port: number, path: string): Promise<string> {
  return new Promise((resolve, reject) => {
    const socket = connect(port, '127.0.0.1');
    let answer = '';
    socket.on('data', (bytes) => {
      answer += bytes;
    });
    socket.on('error', reject);
    socket.on('close', () => resolve(answer));
    socket.write(`GET ${path} HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n\r\n`);
  });
}

describe('a path that leads out of the folder of pages', () => {
  it.each([
    '/../access.json',
    '/..%2faccess.json',
    '/%2e%2e/access.json',
    '/%2e%2e%2faccess.json',
    '/%252e%252e/access.json',
    '/..%5caccess.json',
    '/....//access.json',
    '/assets/../../access.json',
    '/index.html/../../access.json',
    '//../access.json',
    '/access.json%00.html',
    '/%c0%ae%c0%ae/access.json',
  ])('%s shows nothing of it', async (path) => {
    const port = await servedFolder();
    const answer = await rawGet(port, path);
    expect(answer).toMatch(/^HTTP\/1\.1 4\d\d /);
    expect(answer).not.toContain(secret);
    // The way in works: the check above is one of something.
    expect(await rawGet(port, '/index.html')).toContain('the page');
  });
});
