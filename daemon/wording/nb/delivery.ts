import type { Phrases } from '../phrase.ts';
import type { AddressFault, DeliverySentences } from '../subject/delivery.ts';

const addressFaults: Readonly<Record<AddressFault, string>> = {
  secrets: 'der gir leide datamaskiner ut hemmelighetene sine',
  'not-ip': 'det er ingen IP-adresse',
  'no-host': 'det er ikke adressen til en datamaskin',
  'link-local': 'den er lenkelokal',
  multicast: 'det er en multicast-adresse',
  reserved: 'det er en multicast-adresse eller en reservert adresse',
};

export const delivery: Phrases<DeliverySentences> = {
  'mail-failed/log-in': () => 'SMTP-tjeneren godtok ikke navn og passord.',
  'mail-failed/late': () => 'SMTP-tjeneren svarte ikke i tide.',
  'mail-failed/tls': () => 'Forbindelsen til SMTP-tjeneren kunne ikke krypteres.',
  'mail-failed/refused': ({ status }) => `SMTP-tjeneren avviste meldingen (${status}).`,
  'mail-failed/away': ({ because }) => `SMTP-tjeneren er utenfor rekkevidde (${because}).`,
  'webhook-failed/answer': ({ status }) => `Mottakeren svarte med ${status}.`,
  'webhook-failed/redirect': ({ status }) =>
    `Mottakeren svarte med ${status}; omdirigeringer følges ikke.`,
  'webhook-failed/late': () => 'Mottakeren svarte ikke i tide.',
  'webhook-failed/away': ({ because }) => `Mottakeren er utenfor rekkevidde (${because}).`,
  'webhook-failed/address': ({ address, fault }) =>
    `Mottakerens navn fører til ${address}: ${addressFaults[fault]}.`,
  'delivery-failed': ({ because }) => `Det ble ikke tatt imot: «${because}»`,
  'broker-unconnected': () => 'Det er ingen forbindelse til MQTT-tjeneren.',
};
