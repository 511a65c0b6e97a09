import type { Phrases } from '../phrase.ts';
import type { AddressFault, DeliverySentences } from '../subject/delivery.ts';

const addressFaults: Readonly<Record<AddressFault, string>> = {
  secrets: 'Dort geben gemietete Rechner ihre Geheimnisse heraus',
  'not-ip': 'Das ist keine IP-Adresse',
  'no-host': 'Das ist keine Adresse eines Rechners',
  'link-local': 'Sie gilt nur auf der Leitung selbst (link-local)',
  multicast: 'Das ist eine Multicast-Adresse',
  reserved: 'Das ist eine Multicast-Adresse oder eine reservierte',
};

export const delivery: Phrases<DeliverySentences> = {
  'mail-failed/log-in': () => 'Der SMTP-Server nahm Name und Passwort nicht an.',
  'mail-failed/late': () => 'Der SMTP-Server antwortete nicht rechtzeitig.',
  'mail-failed/tls': () => 'Die Verbindung zum SMTP-Server ließ sich nicht verschlüsseln.',
  'mail-failed/refused': ({ status }) => `Der SMTP-Server wies die Nachricht ab (${status}).`,
  'mail-failed/away': ({ because }) => `Der SMTP-Server ist nicht erreichbar (${because}).`,
  'webhook-failed/answer': ({ status }) => `Der Empfänger antwortete mit ${status}.`,
  'webhook-failed/redirect': ({ status }) =>
    `Der Empfänger antwortete mit ${status}; Umleitungen wird nicht gefolgt.`,
  'webhook-failed/late': () => 'Der Empfänger antwortete nicht rechtzeitig.',
  'webhook-failed/away': ({ because }) => `Der Empfänger ist nicht erreichbar (${because}).`,
  'webhook-failed/address': ({ address, fault }) =>
    `Der Name des Empfängers führt zu ${address}: ${addressFaults[fault]}.`,
  'delivery-failed': ({ because }) => `Es wurde nicht angenommen: „${because}“`,
  'broker-unconnected': () => 'Zum MQTT-Broker besteht keine Verbindung.',
};
