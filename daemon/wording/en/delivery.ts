import type { Phrases } from '../phrase.ts';
import type { AddressFault, DeliverySentences } from '../subject/delivery.ts';

/** Why no webhook may go to an address; also said at the terminal while the settings are read. */
export const addressFaults: Readonly<Record<AddressFault, string>> = {
  secrets: 'it is where hosted machines hand out their secrets',
  'not-ip': 'it is no IP address',
  'no-host': 'it is no address of a host',
  'link-local': 'it is link-local',
  multicast: 'it is a multicast address',
  reserved: 'it is a multicast or reserved address',
};

export const delivery: Phrases<DeliverySentences> = {
  'mail-failed/log-in': () => 'The SMTP server did not take name and password.',
  'mail-failed/late': () => 'The SMTP server did not answer in time.',
  'mail-failed/tls': () => 'The connection to the SMTP server could not be encrypted.',
  'mail-failed/refused': ({ status }) => `The SMTP server refused the message (${status}).`,
  'mail-failed/away': ({ because }) => `The SMTP server is out of reach (${because}).`,
  'webhook-failed/answer': ({ status }) => `The receiver answered with ${status}.`,
  'webhook-failed/redirect': ({ status }) =>
    `The receiver answered with ${status}; redirects are not followed.`,
  'webhook-failed/late': () => 'The receiver did not answer in time.',
  'webhook-failed/away': ({ because }) => `The receiver is out of reach (${because}).`,
  'webhook-failed/address': ({ address, fault }) =>
    `The receiver’s name leads to ${address}: ${addressFaults[fault]}.`,
  'delivery-failed': ({ because }) => `It was not taken: “${because}”`,
  'broker-unconnected': () => 'There is no connection to the MQTT broker.',
};
