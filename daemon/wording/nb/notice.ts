import type { Phrases } from '../phrase.ts';
import type { NoticeSentences } from '../subject/notice.ts';
import { gateVerbs } from './gate-names.ts';

export const notice: Phrases<NoticeSentences> = {
  'notice-title/rags': () => 'Oljefiller',
  'notice-title/vapour': () => 'Løsemiddel i luften',
  'notice-title/overheating': () => 'For varmt',
  'notice-title/place-silent': () => 'Ingen målinger',
  'notice-title/batch-without-air': () => 'Ingenting telles',
  'notice-title/sensor-fault': () => 'En sensor å se til',
  'notice-title/gate-ready': () => 'Herdet nok',
  'notice-title/look-again': () => 'Se etter hva som ennå skinner',
  'notice-title/mounting-open': () => 'Kutt og spikerhoder å grunne',
  'notice-title/sensor-unplaced': () => 'En sensor uten sted',
  'sensor-unplaced': ({ sensor }) =>
    `Sensor ${sensor} sender målinger, men har ikke noe sted ennå: si hvor den henger.`,
  'sensor-fault': ({ faults }, _speak, say) => faults.map(say).join(' '),
  'place-silent': ({ placeName }) =>
    `${placeName}: taust i timevis. Se til sensoren der; herdingen telles ikke i mellomtiden.`,
  'batch-without-air': ({ batchName, placeName }) =>
    `${batchName}: ingen sensor måler luften på ${placeName}, så ingenting kan telles.`,
  'look-again': ({ batchName, placeName, look }, _speak, say) =>
    `${batchName} på ${placeName}: ${say(look)}`,
  'mounting-open': ({ batchName, placeName }) =>
    `${batchName} ble satt opp på ${placeName}: ikke alt som grunnes samme dag, er krysset av.`,
  'gate-ready': ({ batchName, placeName, gate }) =>
    `${batchName} på ${placeName}: herdet nok til å ${gateVerbs[gate]}.`,
  vapour: ({ placeName, nowPpm, limitPpm }, speak) =>
    `${placeName}: omtrent ${speak.concentration(nowPpm)} terpentin i luften etter et anslag, mer nær bordene; grensen her er ${speak.concentration(limitPpm, 'as-set')}. Luft ut, hold deg ute, ingen flamme, ingen gnist, ingen glødende varmeovn. Dette er ingen gassalarm.`,
  overheating: ({ placeName, tempC }, speak) =>
    `På ${placeName} er det ${speak.temperature(tempC, 0)}. Se utenfra først: røyk, varmeovnen, oljefiller som blir varme av seg selv. Er det røyk, hold deg ute og ring brannvesenet. Dette er ingen brannalarm.`,
  rags: () =>
    'Oljefiller blir varme av seg selv og kan ta fyr: under vann i en metallboks med lokk, eller flatt i ett enkelt lag utendørs, på avstand fra bygninger, til de er stive, og deretter i den boksen. Aldri sammenkrøllet, i en pose, i en bil eller innendørs. Kryss det av på stengelisten. Lokale regler går foran.',
  'message-title': ({ title, again }, _speak, say) =>
    again ? `${say(title)}, gjentatt` : say(title),
  'message-title/held-back': ({ notices }) =>
    `${notices} varsler som ble holdt tilbake i de stille timene`,
  'message-title/nothing': () => 'Ingenting å melde',
  'message-entry': ({ text, at }, speak) => `${text} (${speak.day(at)} ${speak.clock(at)})`,
  'message-entry/over': ({ text, at, overAt }, speak) =>
    `${text} (${speak.day(at)} ${speak.clock(at)}, over siden ${speak.clock(overAt)})`,
};
