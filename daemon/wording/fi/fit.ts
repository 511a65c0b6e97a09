import type { Phrases } from '../phrase.ts';
import type { Speaker } from '../speaker.ts';
import type { FitSentences } from '../subject/fit.ts';

const toMeasure = ({ boards, fromEndCm }: FitSentences['moisture-unknown'], speak: Speaker) =>
  `Mittaa ${boards} lautaa ${speak.lengthCm(fromEndCm, 'as-set')} päästä ja kirjoita lukemat.`;

const stop =
  (whatComes: string) =>
  ({ at, tomorrow, leadHours }: FitSentences['stop-dew'], speak: Speaker): string => {
    const when = tomorrow ? `Huomenna klo ${speak.clock(at)}` : `Klo ${speak.clock(at)}`;
    const before = leadHours === 0 ? '' : ` (lopeta ${speak.hours(leadHours)} ennen)`;
    return `${when} alkaen ${whatComes}${before}.`;
  };

const humidity =
  (word: string) =>
  ({ rhPercent, limitPercent }: FitSentences['humidity/too-damp'], speak: Speaker): string =>
    `${word}: kosteus ${speak.humidity(rhPercent)}, enintään ${speak.humidity(limitPercent, 'as-set')}.`;

const dewMargin =
  (word: string) =>
  ({ marginK, limitK }: FitSentences['dew-margin/clear'], speak: Speaker): string =>
    `${word}: ${speak.temperatureDifference(marginK)} sen yläpuolella, vähintään ${speak.temperatureDifference(limitK, 'as-set')}. Kylmästä tuodut laudat ovat lähempänä.`;

const facing = {
  north: 'pohjoisseinällä',
  east: 'itäseinällä',
  south: 'eteläseinällä',
  west: 'länsiseinällä',
} as const;

export const fit: Phrases<FitSentences> = {
  'fit-good': () => 'Voi maalata.',
  'fit-poor': () => 'Maalata voi, mutta jokin on sitä vastaan.',
  'fit-no': () => 'Ei nyt.',
  'fit-cannot-tell': () => 'Ei voi sanoa: jotain ei tiedetä.',
  'air-unknown/to-brush': () =>
    'Ilmasta ei ole täältä tuoretta lukemaa: katso itse lämpötila ja kosteus.',
  'humidity-unknown': () => 'Mikään ei mittaa kosteutta täällä, joten kastepistettä ei tiedetä.',
  'humidity/too-damp': humidity('Liian kosteaa'),
  'humidity/dry-enough': humidity('Tarpeeksi kuivaa'),
  'dew-margin/too-near': dewMargin('Liian lähellä kastepistettä'),
  'dew-margin/clear': dewMargin('Riittävän etäällä kastepisteestä'),
  'temperature/too-cold': ({ tempC, limitC }, speak) =>
    `${speak.temperature(tempC)}: liian kylmää, vähintään ${speak.temperature(limitC, 'as-set')}.`,
  'temperature/too-hot': ({ tempC, limitC }, speak) =>
    `${speak.temperature(tempC)}: liian kuumaa, enintään ${speak.temperature(limitC, 'as-set')}.`,
  'temperature/very-slow': ({ tempC }, speak) =>
    `${speak.temperature(tempC)}: kuivuu hyvin hitaasti.`,
  'temperature/slow': ({ tempC }, speak) =>
    `${speak.temperature(tempC)}: kuivuu hitaasti; sivele ohueksi.`,
  'temperature/warm': ({ tempC }, speak) =>
    `${speak.temperature(tempC)}: lämmintä; ohuet kerrokset, pienet alat, tai odota iltaa.`,
  'temperature/fine': ({ tempC, fromC, toC }, speak) =>
    `${speak.temperature(tempC)}: välillä ${speak.bare.temperature(fromC, 'as-set')} – ${speak.temperature(toC, 'as-set')}.`,
  sun: (told) =>
    `Aurinko voi nyt olla ${facing[told.facing]}: älä koskaan maalaa suorassa auringossa, seuraa varjoa talon ympäri.`,
  'night-unknown': () =>
    'Ensimmäistä yötä ei voi sanoa: lukemat eivät vielä ulotu tarpeeksi kauas taaksepäin.',
  'night-cold': ({ lowC, errorK, limitC }, speak) =>
    `Ensimmäisenä yönä lämpötila laskee, alin noin ${speak.temperature(lowC)} (± ${speak.temperatureDifference(errorK)}); alle ${speak.temperature(limitC, 'as-set')} kerros seisoo paikallaan.`,
  'night-dew': ({ marginK, limitK }, speak) =>
    `Ensimmäisenä yönä laudat ovat noin ${speak.temperatureDifference(marginK)} kastepisteen yläpuolella, vähintään ${speak.temperatureDifference(limitK, 'as-set')} tarvitaan: märkä pinta voi himmetä tai raidoittua.`,
  'night-damp': ({ rhPercent, limitPercent }, speak) =>
    `Ensimmäisenä yönä ilman kosteus on noin ${speak.humidity(rhPercent)}, enintään ${speak.humidity(limitPercent, 'as-set')}.`,
  night: ({ lowC, errorK }, speak) =>
    `Ensimmäinen yö pysyy rajoissa: alin noin ${speak.temperature(lowC)} (± ${speak.temperatureDifference(errorK)}).`,
  'moisture-unknown': (told, speak) => `Kukaan ei ole mitannut puuta. ${toMeasure(told, speak)}`,
  'moisture/too-wet': ({ worstPercent, limitPercent }, speak) =>
    `Puu on liian märkää: huonoin lauta ${speak.moisture(worstPercent)}, enintään ${speak.moisture(limitPercent, 'as-set')}.`,
  'moisture/dry-enough': ({ measured, worstPercent, limitPercent }, speak) =>
    `Puu on tarpeeksi kuivaa: mitattuja lautoja ${measured}, huonoin ${speak.moisture(worstPercent)}, enintään ${speak.moisture(limitPercent, 'as-set')}.`,
  'moisture-old': ({ days, worstPercent, ...rest }, speak) =>
    `Puu on viimeksi mitattu ${days} vuorokautta sitten (huonoin ${speak.moisture(worstPercent)}). ${toMeasure(rest, speak)}`,
  'moisture-few': ({ measured, worstPercent, limitPercent, ...rest }, speak) =>
    `Mitattu vain ${measured} (huonoin ${speak.moisture(worstPercent)}, enintään ${speak.moisture(limitPercent, 'as-set')}). ${toMeasure(rest, speak)}`,
  'shelf-unknown': ({ lyingM }, speak) =>
    `Vapaata hyllyä ei tiedetä: kukaan ei ole kertonut, kuinka paljon telineisiin mahtuu; niillä on nyt ${speak.lengthM(lyingM, 1)}.`,
  shelf: ({ freeM }, speak) => `Hyllyä on vapaana ${speak.lengthM(freeM, 1)}.`,
  'shelf/needed': ({ freeM, neededM }, speak) =>
    `Hyllyä on vapaana ${speak.lengthM(freeM, 1)}, nämä laudat vievät ${speak.lengthM(neededM, 1)}.`,
  'shelf/short': ({ freeM, neededM }, speak) =>
    `Hyllyä on vapaana ${speak.lengthM(freeM, 1)}, nämä laudat vievät ${speak.lengthM(neededM, 1)}. Maalaa vain se, mikä mahtuu hyllyille.`,
  floor: () =>
    'Lakaise ja kostuta lattia edellisenä päivänä, ja anna pölyn laskeutua: ei mitään siitä tänään.',
  'rain-unknown': () => 'Sade-ennustetta ei ole lähetetty: katso itse taivasta ja ennustetta.',
  'stop-dew': stop('laudat tulevat liian lähelle kastepistettä'),
  'stop-damp': stop('ilma on liian kosteaa'),
  'stop-cold': stop('on liian kylmää'),
  'stop-rain': stop('on luvassa sadetta'),
  'stop-hot': stop('on liian kuumaa'),
  'stop-unknown': () =>
    'Tulevista tunneista ei voi sanoa mitään: mikään anturi ei ole mitannut ilmaa täällä.',
  'stop-none': ({ hours }, speak) =>
    `Mikään ei vaadi lopettamista seuraavien tuntien aikana (${speak.number(hours)} h).`,
};
