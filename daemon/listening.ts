import { setTimeout as pause } from 'node:timers/promises';
import type { buildServer } from './http/server.ts';
import { startBroker } from './ingest/broker.ts';
import type { ClientAccess } from './ingest/client-access.ts';
import type { IngestLog, MessagePort } from './ingest/message-port.ts';
import { startSubscriber } from './ingest/subscriber.ts';
import type { KeptMessages } from './ingest/unreleased-messages.ts';
import type { Settings } from './settings/schema.ts';
import type { SiteTls } from './site-tls.ts';

/** Our own broker, or a session at another one. */
export function openMessagePort(
  settings: Settings,
  take: Parameters<typeof startBroker>[0]['take'],
  filters: readonly string[],
  { access, tls, openMessages }: { access: ClientAccess; tls: SiteTls; openMessages: KeptMessages },
  log: IngestLog,
): Promise<MessagePort> | MessagePort {
  const { host, port, plain, tlsPort, external, clientId } = settings.mqtt;
  if (external === null) {
    return startBroker({
      host,
      port: plain ? port : null,
      tls: tlsPort === null ? null : { port: tlsPort, pair: tls.pair() },
      limits: settings.mqtt,
      access,
      take,
      openMessages,
      log,
    });
  }
  return startSubscriber({
    url: external,
    clientId: clientId ?? `boardcure-${settings.site}`,
    site: settings.site,
    filters,
    take,
    log,
  });
}

/** How long the ready line waits for another broker; it tries on by itself after that, ms. */
const brokerPatienceMs = 5000;

/**
 * Waits until readings can come in: what is sent to another broker before our first session there
 * is lost.
 */
export async function listening(port: MessagePort): Promise<void> {
  const until = performance.now() + brokerPatienceMs;
  while (!port.connected() && performance.now() < until) await pause(20);
}

/** Serves the pages; @throws Error saying what to do when that cannot be. */
export async function listen(
  app: Awaited<ReturnType<typeof buildServer>>,
  { host, port }: Settings['http'],
): Promise<number> {
  try {
    await app.listen({ host, port });
  } catch (cause) {
    const { code, message } = cause as NodeJS.ErrnoException;
    throw new Error(
      code === 'EADDRINUSE'
        ? `Port ${port} for the pages is taken on ${host}. Stop what uses it, or choose another with --http.`
        : `The pages cannot be served on ${host}:${port}: ${message}. Choose another address with --http.`,
      { cause },
    );
  }
  const address = app.server.address();
  return typeof address === 'object' && address ? address.port : port;
}
