import { networkInterfaces } from 'node:os';
import type { OwnSitePort } from './http/own-site-port.ts';
import type { MessagePort } from './ingest/message-port.ts';
import type { Settings } from './settings/schema.ts';

interface OwnSiteParts {
  settings: Pick<Settings, 'timeZone'>;
  reader: { siteName(): string | null };
  port: Pick<MessagePort, 'kind' | 'port' | 'tlsPort'>;
  simulated: OwnSitePort['simulated'];
}

/** What the site is called, and how a sensor node reaches it. */
export function ownSite({ settings, reader, port, simulated }: OwnSiteParts): OwnSitePort {
  return {
    name: reader.siteName,
    timeZoneFrom: settings.timeZone === null ? 'computer' : 'settings',
    broker: () => ({ kind: port.kind, port: port.port, tlsPort: port.tlsPort ?? null }),
    addresses: ownAddresses,
    simulated,
  };
}

/** IPv4 addresses that others on the network reach this computer by. */
function ownAddresses(): string[] {
  return Object.values(networkInterfaces())
    .flatMap((entries) => entries ?? [])
    .filter(({ family, internal }) => family === 'IPv4' && !internal)
    .map(({ address }) => address);
}
