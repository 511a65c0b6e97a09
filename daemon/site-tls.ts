import { readFileSync } from 'node:fs';
import type { Server } from 'node:https';
import { hostname, networkInterfaces } from 'node:os';
import { join } from 'node:path';
import { authorityOf, madeCertificate, type TlsPair } from './access/made-certificate.ts';
import type { MessagePort } from './ingest/message-port.ts';
import { certificateNames } from './rules/certificate-names.ts';
import type { Settings } from './settings/schema.ts';

/** The certificate of this computer, where the pages or the broker speak TLS. */
export interface SiteTls {
  /** @throws Error when there is none: nothing asked for TLS */
  pair(): TlsPair;
  /** Certificate of the authority that was made here, as PEM; null where none was. */
  authority(): string | null;
  /** Looks whether the certificate has to be made or read anew, and takes it into use. */
  renew(port: MessagePort, pages: { server: object }): Promise<void>;
}

/**
 * Reads the certificate of the settings, or makes one.
 *
 * @throws Error saying what to do when there is none to be had
 */
export async function siteTls(settings: Settings): Promise<SiteTls> {
  const { http, mqtt, data, site } = settings;
  const isWanted = http.tls || (mqtt.tlsPort !== null && mqtt.external === null);
  const folder = join(data, 'tls');
  const look = async (): Promise<TlsPair | null> => {
    if (!isWanted) return null;
    const { certFile, keyFile } = settings.tls;
    if (certFile !== null && keyFile !== null) return { cert: read(certFile), key: read(keyFile) };
    const addresses = Object.values(networkInterfaces()).flatMap((cards) =>
      (cards ?? []).map(({ address }) => address),
    );
    return madeCertificate({
      folder,
      title: `Boardcure ${site}`.slice(0, 64),
      names: certificateNames(hostname(), addresses),
      now: Date.now(),
    });
  };
  let pair = await look();
  return {
    pair() {
      if (pair === null) throw new Error('There is no certificate: nothing asked for TLS.');
      return pair;
    },
    authority: () => authorityOf(folder),
    async renew(port, pages) {
      const fresh = await look();
      if (fresh === null || fresh.cert === pair?.cert) return;
      pair = fresh;
      port.renewTls?.(fresh);
      if (http.tls) (pages.server as Server).setSecureContext(fresh);
    },
  };
}

function read(file: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch (cause) {
    throw new Error(
      `The certificate file ${file} cannot be read: ${(cause as NodeJS.ErrnoException).code}. Check tls.certFile and tls.keyFile, and that the daemon may read them.`,
      { cause },
    );
  }
}
