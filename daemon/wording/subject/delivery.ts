import type { Nothing } from '../phrase.ts';

/** Why an address is none that a webhook may go to. */
export type AddressFault =
  | 'secrets'
  | 'not-ip'
  | 'no-host'
  | 'link-local'
  | 'multicast'
  | 'reserved';

/** Why a message did not leave the house. `because`: what another program said of it. */
export interface DeliverySentences {
  'mail-failed/log-in': Nothing;
  'mail-failed/late': Nothing;
  'mail-failed/tls': Nothing;
  'mail-failed/refused': { status: number };
  'mail-failed/away': { because: string };
  'webhook-failed/answer': { status: number };
  'webhook-failed/redirect': { status: number };
  'webhook-failed/late': Nothing;
  'webhook-failed/away': { because: string };
  'webhook-failed/address': { address: string; fault: AddressFault };
  'delivery-failed': { because: string };
  'broker-unconnected': Nothing;
}
