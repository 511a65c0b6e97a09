import type { Phrases } from '../phrase.ts';
import type { NoticeSentences } from '../subject/notice.ts';
import { gateVerbs } from './gate-names.ts';

export const notice: Phrases<NoticeSentences> = {
  'notice-title/rags': () => 'Oljiga trasor',
  'notice-title/vapour': () => 'Lösningsmedel i luften',
  'notice-title/overheating': () => 'För hett',
  'notice-title/place-silent': () => 'Inga mätvärden',
  'notice-title/batch-without-air': () => 'Ingenting räknas',
  'notice-title/sensor-fault': () => 'En givare att se till',
  'notice-title/gate-ready': () => 'Härdat nog',
  'notice-title/look-again': () => 'Se efter vad som ännu blänker',
  'notice-title/mounting-open': () => 'Kapytor och spikskallar att grunda',
  'notice-title/sensor-unplaced': () => 'En givare utan plats',
  'sensor-unplaced': ({ sensor }) =>
    `Givare ${sensor} skickar mätvärden men har ingen plats än: säg var den hänger.`,
  'sensor-fault': ({ faults }, _speak, say) => faults.map(say).join(' '),
  'place-silent': ({ placeName }) =>
    `${placeName}: tyst i timmar. Se till givaren där; härdningen räknas inte under tiden.`,
  'batch-without-air': ({ batchName, placeName }) =>
    `${batchName}: ingen givare mäter luften på ${placeName}, så ingenting kan räknas.`,
  'look-again': ({ batchName, placeName, look }, _speak, say) =>
    `${batchName} på ${placeName}: ${say(look)}`,
  'mounting-open': ({ batchName, placeName }) =>
    `${batchName} sattes upp på ${placeName}: allt som grundas samma dag är inte avprickat.`,
  'gate-ready': ({ batchName, placeName, gate }) =>
    `${batchName} på ${placeName}: härdat nog för att ${gateVerbs[gate]}.`,
  vapour: ({ placeName, nowPpm, limitPpm }, speak) =>
    `${placeName}: omkring ${speak.concentration(nowPpm)} terpentin i luften enligt uppskattning, mer nära brädorna; gränsen här är ${speak.concentration(limitPpm, 'as-set')}. Öppna, håll dig ute, ingen låga, ingen gnista, ingen glödande värmare. Det här är inget gaslarm.`,
  overheating: ({ placeName, tempC }, speak) =>
    `På ${placeName} är det ${speak.temperature(tempC, 0)}. Titta utifrån först: rök, värmaren, oljiga trasor som blir varma av sig själva. Finns där rök, håll dig ute och ring räddningstjänsten. Det här är inget brandlarm.`,
  rags: () =>
    'Oljiga trasor blir varma av sig själva och kan ta eld: under vatten i en plåtburk med lock, eller plant i ett enda lager utomhus, på avstånd från byggnader, tills de är styva och sedan i burken. Aldrig hopknölade, i en påse, i en bil eller inomhus. Pricka av det på stänglistan. Lokala regler går före.',
  'message-title': ({ title, again }, _speak, say) =>
    again ? `${say(title)}, påminnelse` : say(title),
  'message-title/held-back': ({ notices }) =>
    `${notices} besked som hölls inne under de tysta timmarna`,
  'message-title/nothing': () => 'Inget att meddela',
  'message-entry': ({ text, at }, speak) => `${text} (${speak.day(at)} ${speak.clock(at)})`,
  'message-entry/over': ({ text, at, overAt }, speak) =>
    `${text} (${speak.day(at)} ${speak.clock(at)}, över sedan ${speak.clock(overAt)})`,
};
