import type { Server } from 'node:http';
import type { Socket } from 'node:net';
import rateLimit from '@fastify/rate-limit';
import type { FastifyInstance } from 'fastify';
import { BoardcureError } from '../contract/problem.ts';
import { addressGroup } from '../rules/address-group.ts';
import { sentence } from '../wording/english.ts';
import { isFromHere } from './write-access.ts';

/** What clients may ask of the server. */
export interface ServerLimits {
  maxRequestsPerMinute: number;
  maxConnections: number;
  /** For a request to come in whole. */
  requestSeconds: number;
}

/** Addresses that requests are counted for at once. */
const mostCounted = 5000;
/** A connection may stay open unused for so long, ms. */
const keepAliveMs = 20_000;
/** Share of the connections that one device may hold. */
const ofOne = 0.25;

/** Times within which a request has to come in: one that trickles in is cut off. */
export function serverTimes({ requestSeconds }: ServerLimits) {
  return { requestTimeout: requestSeconds * 1000, keepAliveTimeout: keepAliveMs };
}

/** The same for Node’s own server. */
export function nodeTimes({ requestSeconds }: ServerLimits) {
  return {
    headersTimeout: requestSeconds * 500,
    // How often node looks for those that are late.
    connectionsCheckingInterval: Math.min(5000, requestSeconds * 250),
    maxHeaderSize: 16_384,
  };
}

/** Bounds requests and connections of one device; the computer itself is not counted. */
export async function limitRequests(app: FastifyInstance, limits: ServerLimits): Promise<void> {
  await app.register(rateLimit, {
    max: limits.maxRequestsPerMinute,
    timeWindow: 60_000,
    cache: mostCounted,
    keyGenerator: (request) => addressGroup(request.socket.remoteAddress ?? ''),
    allowList: (request) => isFromHere(request),
    errorResponseBuilder: (_request, { max, ttl }) =>
      new BoardcureError(
        'BC_TOO_MANY_REQUESTS',
        sentence('too-many-requests', { perMinute: max, seconds: Math.ceil(ttl / 1000) }),
      ),
  });
  boundConnections(app.server, limits.maxConnections);
}

/** One device that opens connection after connection leaves room for the others. */
function boundConnections(server: Server, most: number): void {
  server.maxConnections = most;
  const mostOfOne = Math.ceil(most * ofOne);
  const open = new Map<string, number>();
  server.on('connection', (socket: Socket) => {
    const whose = addressGroup(socket.remoteAddress ?? '');
    const count = (open.get(whose) ?? 0) + 1;
    open.set(whose, count);
    socket.once('close', () => {
      const left = (open.get(whose) ?? 1) - 1;
      if (left > 0) open.set(whose, left);
      else open.delete(whose);
    });
    if (count > mostOfOne && !/^127\.|^::1?$|^0:0:0:0::/.test(whose)) socket.destroy();
  });
}
