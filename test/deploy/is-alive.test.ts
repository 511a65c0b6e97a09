import { execFile } from 'node:child_process';
import { once } from 'node:events';
import { createServer } from 'node:http';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, expect, it } from 'vitest';

const program = join(import.meta.dirname, '../../deploy/bin/is-alive.mjs');
let status = 200;
const server = createServer((_request, reply) => reply.writeHead(status).end('{}'));

beforeAll(async () => {
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
});
afterAll(() => {
  server.close();
});

async function exitCode(port: number): Promise<number> {
  const env = { ...process.env, BOARDCURE_HTTP: `0.0.0.0:${port}` };
  try {
    await promisify(execFile)(process.execPath, [program], { env });
    return 0;
  } catch (cause) {
    return (cause as { code: number }).code;
  }
}

it('a daemon that answers is alive, one that fails or is not there is not', async () => {
  const { port } = server.address() as { port: number };
  expect(await exitCode(port)).toBe(0);
  status = 401;
  expect(await exitCode(port), 'it asks for a log-in').toBe(0);
  status = 500;
  expect(await exitCode(port)).toBe(1);
  server.close();
  server.closeAllConnections();
  await once(server, 'close');
  expect(await exitCode(port)).toBe(1);
});
