import { readFile } from 'node:fs/promises';
import { createServer, type ServerResponse } from 'node:http';
import type { AddressInfo, Socket } from 'node:net';
import { extname, join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Overview } from '../../daemon/contract/overview.ts';
import type { StreamEvent } from '../../daemon/contract/stream-event.ts';

const PAGES = fileURLToPath(new URL('../../.build/dashboard', import.meta.url));

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
};

/** The built pages and a stream that says what a test wants: any shed at any pace. */
export interface StubDaemon {
  /** Address of the page, without a slash at its end. */
  readonly page: string;
  /** Shows this overview from now on and sends it to whoever listens. */
  push(overview: Overview): void;
  /** How many pages listen. */
  listeners(): number;
  /** Breaks every stream, as a restart does. */
  breakStreams(): void;
  /** Hands out the start page changed like this, as after an update. */
  changePage(change: (html: string) => string): void;
  close(): Promise<void>;
}

/** @throws ZodError for an overview that the daemon could not send */
export async function stubDaemon(first: Overview): Promise<StubDaemon> {
  let overview = Overview.parse(first);
  let change = (html: string) => html;
  const open = new Set<ServerResponse>();
  const sockets = new Set<Socket>();

  const server = createServer((request, response) => {
    const path = (request.url ?? '/').split('?')[0] ?? '/';
    if (path === '/api/v1/overview') {
      response.setHeader('content-type', 'application/json').end(JSON.stringify(overview));
    } else if (path === '/api/v1/stream') {
      response.writeHead(200, { 'content-type': 'text/event-stream' });
      response.write(eventText({ kind: 'overview', overview }));
      open.add(response);
      response.on('close', () => open.delete(response));
    } else void handOut(path, response);
  });

  async function handOut(path: string, response: ServerResponse): Promise<void> {
    const name = path === '/' ? '/index.html' : normalize(path);
    try {
      const file = await readFile(join(PAGES, name));
      response.setHeader('content-type', types[extname(name)] ?? 'application/octet-stream');
      response.end(name === '/index.html' ? change(file.toString()) : file);
    } catch {
      response.writeHead(404).end();
    }
  }

  server.on('connection', (socket) => {
    sockets.add(socket);
    socket.on('close', () => sockets.delete(socket));
  });
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  const { port } = server.address() as AddressInfo;
  return {
    page: `http://127.0.0.1:${port}`,
    push(next) {
      overview = Overview.parse(next);
      for (const response of open) response.write(eventText({ kind: 'overview', overview }));
    },
    listeners: () => open.size,
    breakStreams() {
      for (const response of open) response.destroy();
    },
    changePage(next) {
      change = next;
    },
    async close() {
      for (const socket of sockets) socket.destroy();
      await new Promise((closed) => server.close(closed));
    },
  };
}

const eventText = (event: StreamEvent) => `data: ${JSON.stringify(event)}\n\n`;
