import type { Phrases } from '../phrase.ts';
import type { NoticeSentences } from '../subject/notice.ts';
import { gateTo } from './gate-names.ts';

export const notice: Phrases<NoticeSentences> = {
  'notice-title/rags': () => 'Öljyiset rätit',
  'notice-title/vapour': () => 'Liuotinta ilmassa',
  'notice-title/overheating': () => 'Liian kuumaa',
  'notice-title/place-silent': () => 'Ei lukemia',
  'notice-title/batch-without-air': () => 'Mitään ei lasketa',
  'notice-title/sensor-fault': () => 'Katso anturi',
  'notice-title/gate-ready': () => 'Kovettunut tarpeeksi',
  'notice-title/look-again': () => 'Katso, mikä yhä kiiltää',
  'notice-title/mounting-open': () => 'Sahauspintoja ja naulankantoja pohjamaalattavana',
  'notice-title/sensor-unplaced': () => 'Anturi ilman paikkaa',
  'sensor-unplaced': ({ sensor }) =>
    `Anturi ${sensor} lähettää lukemia, mutta sillä ei ole vielä paikkaa: kerro, missä se roikkuu.`,
  'sensor-fault': ({ faults }, _speak, say) => faults.map(say).join(' '),
  'place-silent': ({ placeName }) =>
    `${placeName}: hiljaista jo tunteja. Katso anturi. Kovettumista ei lasketa sillä aikaa.`,
  'batch-without-air': ({ batchName, placeName }) =>
    `${batchName}: mikään anturi ei mittaa paikan ilmaa (${placeName}), joten mitään ei voi laskea.`,
  'look-again': ({ batchName, placeName, look }, _speak, say) =>
    `${batchName} (${placeName}): ${say(look)}`,
  'mounting-open': ({ batchName, placeName }) =>
    `${batchName} asennettiin (${placeName}): kaikkea samana päivänä pohjamaalattavaa ei ole rastitettu.`,
  'gate-ready': ({ batchName, placeName, gate }) =>
    `${batchName} (${placeName}): kovettunut tarpeeksi ${gateTo[gate]}.`,
  vapour: ({ placeName, nowPpm, limitPpm }, speak) =>
    `${placeName}: ilmassa on arviolta noin ${speak.concentration(nowPpm)} tärpättiä, lautojen lähellä enemmän; raja täällä on ${speak.concentration(limitPpm, 'as-set')}. Avaa, pysy poissa, ei liekkiä, ei kipinää, ei hehkuvaa lämmitintä. Tämä ei ole kaasuhälytin.`,
  overheating: ({ placeName, tempC }, speak) =>
    `${placeName}: ${speak.temperature(tempC, 0)}. Katso ensin ulkoa: savu, lämmitin, itsestään kuumenevat öljyiset rätit. Jos näkyy savua, pysy poissa ja soita palokunnalle. Tämä ei ole palohälytin.`,
  rags: () =>
    'Öljyiset rätit kuumenevat itsestään ja voivat syttyä: veteen kannelliseen metalliastiaan, tai levälleen yhteen kerrokseen ulos, kauas rakennuksista, kunnes ne ovat jäykkiä, ja sitten samaan astiaan. Ei koskaan mytyssä, pussissa, autossa eikä sisällä. Rastita lukituslistalla. Paikalliset määräykset ovat etusijalla.',
  'message-title': ({ title, again }, _speak, say) =>
    again ? `${say(title)}, muistutus` : say(title),
  'message-title/held-back': ({ notices }) =>
    `Hiljaisten tuntien ajaksi pidätettyjä ilmoituksia: ${notices}`,
  'message-title/nothing': () => 'Ei kerrottavaa',
  'message-entry': ({ text, at }, speak) => `${text} (${speak.day(at)} ${speak.clock(at)})`,
  'message-entry/over': ({ text, at, overAt }, speak) =>
    `${text} (${speak.day(at)} ${speak.clock(at)}, ohi klo ${speak.clock(overAt)} alkaen)`,
};
