import type { Phrases } from '../phrase.ts';
import type { NoticeSentences } from '../subject/notice.ts';
import { gateNouns } from './gate-names.ts';

export const notice: Phrases<NoticeSentences> = {
  'notice-title/rags': () => 'Ölige Lappen',
  'notice-title/vapour': () => 'Lösemittel in der Luft',
  'notice-title/overheating': () => 'Zu heiß',
  'notice-title/place-silent': () => 'Keine Messwerte',
  'notice-title/batch-without-air': () => 'Nichts wird gezählt',
  'notice-title/sensor-fault': () => 'Nach einem Sensor sehen',
  'notice-title/gate-ready': () => 'Genug gehärtet',
  'notice-title/look-again': () => 'Sehen, was noch glänzt',
  'notice-title/mounting-open': () => 'Schnitte und Nagelköpfe zu grundieren',
  'notice-title/sensor-unplaced': () => 'Ein Sensor ohne Platz',
  'sensor-unplaced': ({ sensor }) =>
    `Sensor ${sensor} sendet Messwerte, hat aber noch keinen Platz: sagen, wo er hängt.`,
  'sensor-fault': ({ faults }, _speak, say) => faults.map(say).join(' '),
  'place-silent': ({ placeName }) =>
    `${placeName}: seit Stunden stumm. Nach dem Sensor dort sehen; Härtung wird so lange nicht gezählt.`,
  'batch-without-air': ({ batchName, placeName }) =>
    `${batchName}: Am Platz (${placeName}) misst kein Sensor die Luft; es lässt sich nichts zählen.`,
  'look-again': ({ batchName, placeName, look }, _speak, say) =>
    `${batchName} (${placeName}): ${say(look)}`,
  'mounting-open': ({ batchName, placeName }) =>
    `Angebracht: ${batchName} (${placeName}). Nicht alles, was am selben Tag grundiert wird, ist abgehakt.`,
  'gate-ready': ({ batchName, placeName, gate }) =>
    `${batchName} (${placeName}): genug gehärtet zum ${gateNouns[gate]}.`,
  vapour: ({ placeName, nowPpm, limitPpm }, speak) =>
    `${placeName}: geschätzt etwa ${speak.concentration(nowPpm)} Terpentinöl in der Luft, nahe den Brettern mehr; der Grenzwert hier ist ${speak.concentration(limitPpm, 'as-set')}. Öffnen, draußen bleiben, keine Flamme, kein Funke, kein glühendes Heizgerät. Dies ist kein Gaswarner.`,
  overheating: ({ placeName, tempC }, speak) =>
    `${placeName}: ${speak.temperature(tempC, 0)}. Zuerst von außen sehen: Rauch, das Heizgerät, ölige Lappen, die sich von selbst erhitzen. Bei Rauch draußen bleiben und die Feuerwehr rufen. Dies ist kein Brandmelder.`,
  rags: () =>
    'Ölige Lappen erhitzen sich von selbst und können Feuer fangen: in einem Blecheimer mit Deckel unter Wasser, oder flach und einlagig im Freien, fern von Gebäuden, bis sie steif sind, und dann in diesen Eimer. Nie zusammengeknüllt, in einer Tüte, im Auto oder drinnen. Auf der Feierabendliste abhaken. Örtliche Vorschriften gehen vor.',
  'message-title': ({ title, again }, _speak, say) =>
    again ? `${say(title)}, noch einmal gemeldet` : say(title),
  'message-title/held-back': ({ notices }) =>
    `Meldungen, die über die Ruhezeit zurückgehalten wurden: ${notices}`,
  'message-title/nothing': () => 'Nichts zu melden',
  'message-entry': ({ text, at }, speak) => `${text} (${speak.day(at)} ${speak.clock(at)})`,
  'message-entry/over': ({ text, at, overAt }, speak) =>
    `${text} (${speak.day(at)} ${speak.clock(at)}, vorbei seit ${speak.clock(overAt)})`,
};
