import type { Phrases } from '../phrase.ts';
import type { Speaker } from '../speaker.ts';
import type { AirSentences } from '../subject/air.ts';

const changes = (
  { perHour, low, high }: AirSentences['air-changes-enough'],
  speak: Speaker,
): string =>
  `Ilma vaihtuu noin ${speak.perHour(perHour)} kertaa tunnissa (${speak.perHour(low)}–${speak.perHour(high)}, karkeasti).`;

const cannotTell = (because: string) => () => `Ilmanvaihtoa ei voi sanoa: ${because}.`;

const loneSensor = (
  { sensor, heightKnown, colderK }: AirSentences['floor-colder'],
  speak: Speaker,
): string => {
  const who = heightKnown
    ? `Täällä roikkuu yksi anturi, ${sensor}`
    : `Yksi anturi, ${sensor}, kertoo tästä paikasta`;
  return `${who}; alimman hyllyn oletetaan olevan ${speak.temperatureDifference(colderK, 'as-set')} kylmempi`;
};

export const air: Phrases<AirSentences> = {
  'air-changes-few': (told, speak) =>
    `${changes(told, speak)} Avaa, ellei ulkona ole kosteampaa. Ei puhallinta märkään pintaan.`,
  'air-changes-enough': changes,
  'air-moister-drying': ({ gramsPerM3 }, speak) =>
    `Lautojen välissä on kosteampaa kuin huoneessa, ero ${speak.waterInAir(gramsPerM3)}; vielä kuivuva puu tekee samoin.`,
  'air-stagnant': ({ gramsPerM3 }, speak) =>
    `Ilma seisoo lautojen välissä: kosteampaa kuin huoneessa, ero ${speak.waterInAir(gramsPerM3)}. Harvenna lautoja tai päästä ilmaa läpi.`,
  'air-damp-long': ({ hours, rhPercent }, speak) =>
    `Kosteaa suurimman osan viime ajasta (${speak.number(hours)} h): keskimäärin ${speak.humidity(rhPercent)}. Vaihda ilmaa, kun ulkona on kuivempaa, tai kuivaa sitä.`,
  'rack-colder': ({ differenceK }, speak) =>
    `Kylmempi kuin toinen teline tässä huoneessa, ero ${speak.temperatureDifference(differenceK)}: sen laudat kovettuvat myöhemmin.`,
  'air-cannot-tell/not-measured': cannotTell(
    'siihen tarvitaan lämpötila ja kosteus täältä ja ulkoa',
  ),
  'air-cannot-tell/few': (told, speak) =>
    `${changes(told, speak)} Se on vähän, mutta laudat ottavat ja luovuttavat kosteutta, mikä saa sen näyttämään todellista pienemmältä.`,
  'air-cannot-tell/between': (told, speak) =>
    `${changes(told, speak)} Ei selvästi vähän eikä selvästi tarpeeksi.`,
  'air-cannot-tell/too-few-samples': cannotTell('viime vuorokaudelta on vielä liian vähän lukemia'),
  'air-cannot-tell/too-short': cannotTell('lukemat eivät vielä ulotu tarpeeksi kauas taaksepäin'),
  'air-cannot-tell/flat': cannotTell('ilman kosteus tuskin muuttui'),
  'air-cannot-tell/does-not-fit': cannotTell(
    'jokin muu kuin raitis ilma liikuttaa kosteutta täällä',
  ),
  'air-cannot-tell/too-uncertain': cannotTell('lukemiin sopii liian moni vastaus'),
  'floor-near-dew': ({ marginK, limitK, ...sensor }, speak) =>
    `${loneSensor(sensor, speak)}, ja silloin etäisyys kastepisteeseen on ${speak.temperatureDifference(marginK)}, vähintään ${speak.temperatureDifference(limitK, 'as-set')} tarvitaan. Ripusta sinne anturi, niin tiedät.`,
  'floor-colder': (told, speak) => `${loneSensor(told, speak)}. Tunnustele lautaa siellä.`,
  'floor-colder/nothing-gained': (told, speak) =>
    `${loneSensor(told, speak)}: siellä ei nyt kerry mitään. Tunnustele lautaa siellä.`,
  'floor-colder/longer': ({ longerPercent, ...sensor }, speak) =>
    `${loneSensor(sensor, speak)}: siellä kerros vaatii noin ${speak.percent(longerPercent)} enemmän aikaa. Tunnustele lautaa siellä.`,
  'wall-sun': ({ untilHour }, speak) =>
    `Jos aurinko paistaa, se on tällä seinällä noin kello ${speak.hourOfDay(untilHour)} asti: seuraa varjoa.`,
  'wall-shade': () => 'Seuraa varjoa: nyt sen pitäisi olla tällä seinällä.',
  'wall-shade/facing-unknown': () =>
    'Seuraa varjoa: älä koskaan maalaa suorassa auringossa. Kerro, mihin ilmansuuntaan seinä on, niin saat tietää ajan.',
  'wall-evening': () => 'Lopeta niin ajoissa, että pinta on asettunut ennen illan kastetta.',
  'wall-evening/late': () => 'On myöhä: kasteen laskeutuessa märkä pinta himmenee. Jätä huomiseen.',
  'wall-rain': () => 'Tämä seinä on sateelle alttiina: katso ensin ennuste.',
  'rack-over-metres': ({ placeName, capacityM, lyingM }, speak) =>
    `${placeName}: lautoja mahtuu ${speak.lengthM(capacityM)}; kirjausten mukaan niitä on nyt ${speak.lengthM(lyingM)}. Siirrettiinkö jotain pois kirjaamatta?`,
  'rack-over-boards': ({ placeName, capacity, lying }) =>
    `${placeName}: lautoja mahtuu ${capacity}; kirjausten mukaan niitä on nyt ${lying}. Siirrettiinkö jotain pois kirjaamatta?`,
};
