import type { Phrases } from '../phrase.ts';
import type { AddressFault, DeliverySentences } from '../subject/delivery.ts';

const addressFaults: Readonly<Record<AddressFault, string>> = {
  secrets: 'där lämnar hyrda datorer ut sina hemligheter',
  'not-ip': 'det är ingen IP-adress',
  'no-host': 'det är ingen dators adress',
  'link-local': 'den är länklokal',
  multicast: 'det är en multicast-adress',
  reserved: 'det är en multicast-adress eller en reserverad adress',
};

export const delivery: Phrases<DeliverySentences> = {
  'mail-failed/log-in': () => 'SMTP-servern godtog inte namn och lösenord.',
  'mail-failed/late': () => 'SMTP-servern svarade inte i tid.',
  'mail-failed/tls': () => 'Anslutningen till SMTP-servern kunde inte krypteras.',
  'mail-failed/refused': ({ status }) => `SMTP-servern avvisade meddelandet (${status}).`,
  'mail-failed/away': ({ because }) => `SMTP-servern är utom räckhåll (${because}).`,
  'webhook-failed/answer': ({ status }) => `Mottagaren svarade med ${status}.`,
  'webhook-failed/redirect': ({ status }) =>
    `Mottagaren svarade med ${status}; omdirigeringar följs inte.`,
  'webhook-failed/late': () => 'Mottagaren svarade inte i tid.',
  'webhook-failed/away': ({ because }) => `Mottagaren är utom räckhåll (${because}).`,
  'webhook-failed/address': ({ address, fault }) =>
    `Mottagarens namn leder till ${address}: ${addressFaults[fault]}.`,
  'delivery-failed': ({ because }) => `Det togs inte emot: ”${because}”`,
  'broker-unconnected': () => 'Det finns ingen anslutning till MQTT-servern.',
};
