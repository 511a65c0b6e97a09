import type { Phrases } from '../phrase.ts';
import type { AddressFault, DeliverySentences } from '../subject/delivery.ts';

const addressFaults: Readonly<Record<AddressFault, string>> = {
  secrets: 'sieltä vuokratut tietokoneet antavat salaisuutensa',
  'not-ip': 'se ei ole IP-osoite',
  'no-host': 'se ei ole minkään tietokoneen osoite',
  'link-local': 'se on linkkikohtainen',
  multicast: 'se on monilähetysosoite',
  reserved: 'se on monilähetysosoite tai varattu osoite',
};

export const delivery: Phrases<DeliverySentences> = {
  'mail-failed/log-in': () => 'SMTP-palvelin ei hyväksynyt nimeä ja salasanaa.',
  'mail-failed/late': () => 'SMTP-palvelin ei vastannut ajoissa.',
  'mail-failed/tls': () => 'Yhteyttä SMTP-palvelimeen ei voitu salata.',
  'mail-failed/refused': ({ status }) => `SMTP-palvelin hylkäsi viestin (${status}).`,
  'mail-failed/away': ({ because }) => `SMTP-palvelimeen ei saada yhteyttä (${because}).`,
  'webhook-failed/answer': ({ status }) => `Vastaanottaja vastasi ${status}.`,
  'webhook-failed/redirect': ({ status }) =>
    `Vastaanottaja vastasi ${status}; uudelleenohjauksia ei seurata.`,
  'webhook-failed/late': () => 'Vastaanottaja ei vastannut ajoissa.',
  'webhook-failed/away': ({ because }) => `Vastaanottajaan ei saada yhteyttä (${because}).`,
  'webhook-failed/address': ({ address, fault }) =>
    `Vastaanottajan nimi johtaa osoitteeseen ${address}: ${addressFaults[fault]}.`,
  'delivery-failed': ({ because }) => `Sitä ei otettu vastaan: ”${because}”`,
  'broker-unconnected': () => 'MQTT-välittäjään ei ole yhteyttä.',
};
