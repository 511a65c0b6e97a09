import type { Phrases } from '../phrase.ts';
import type { HelpSentences } from '../subject/help.ts';

const heaterCaution =
  'Vain lämmittimellä, jossa ei ole liekkiä eikä mitään hehkuvaa, tai jonka palokaasut johdetaan ulos; kaukana laudoista, räteistä ja höyrystä, sen ohjeiden ja paikallisten määräysten mukaan. Ei koskaan avotulta, hehkuvaa eikä hormitonta lämmitintä.';

const dryTheAir =
  'kuivaa ilmaa, tai vaihda sitä, kun ulkona on kuivempaa. Sen ei sellaisenaan lasketa nopeuttavan kovettumista.';

/** So many hours, from a day and a half on in days. */
const inHoursOrDays = (hours: number) =>
  hours < 36 ? `${Math.round(hours)} tuntia` : `${Math.round(hours / 24)} vuorokautta`;

export const help: Phrases<HelpSentences> = {
  'air-unknown/how-warm': () => 'Mikään tuore lukema ei kerro, kuinka lämmintä siellä on.',
  'stands-still': ({ tempC }, speak) =>
    `Lämpötilassa ${speak.temperature(tempC)} se tuskin kovettuu.`,
  cold: ({ tempC }, speak) => `Siellä on kylmää: ${speak.temperature(tempC)}.`,
  damp: ({ rhPercent }, speak) => `Siellä on kosteaa: ${speak.humidity(rhPercent)}.`,
  'still-air': () => 'Ilma seisoo siellä.',
  'failed-test/slow-coat': () => 'Kosketuskoe epäonnistui, joten kerros on hidas.',
  time: () => 'Mitään vikaa ei ole: öljy ottaa happea omaan tahtiinsa.',
  'help-changed-air': () =>
    'Vaihda ilmaa: avaa vastakkaiset ovet, harvenna lautoja. Sulje illalla, kun ulkona tulee kosteampaa. Ei puhallinta suoraan märkään pintaan.',
  'help-changed-air/wetter-outside': () =>
    'Vaihda ilmaa, kun ulkona on kuivempaa kuin sisällä; nyt siellä on kosteampaa. Harvenna lautoja sillä aikaa. Ei puhallinta suoraan märkään pintaan.',
  'help-drier': () => `Kostea ilma pitää puun märkänä ja pinnan kasteelle alttiina: ${dryTheAir}`,
  'help-drier/near-dew': ({ marginK }, speak) =>
    `Vuorokauden sisällä lautojen etäisyys kastepisteeseen on vain ${speak.temperatureDifference(marginK)}: ${dryTheAir}`,
  'help-warmer-later': () =>
    'Lämpö auttaisi, mutta ei ensimmäisen vuorokauden aikana tärpättiä sisältäneen kerroksen jälkeen: anna höyryn ensin poistua, ilman lämmitintä ja kipinöitä lähistöllä.',
  'help-warmer': ({ toTempC, soonerHours }, speak) =>
    `Lämpötilassa ${speak.temperature(toTempC, 0)} pidettynä: noin ${inHoursOrDays(soonerHours)} aikaisemmin. ${heaterCaution}`,
  'help-warmer/at-all': ({ toTempC }, speak) =>
    `Lämpötilassa ${speak.temperature(toTempC, 0)} pidettynä: se ylipäätään kovettuisi. ${heaterCaution}`,
  'help-touch': () => 'Tunnustele: kosketuskoe kertoo nyt enemmän kuin mikään lasku.',
  'help-only-time': () => 'Vain aika auttaa: anna sen olla.',
  'help-only-time/outdoors': () => 'Vain aika ja sää auttavat: anna sen olla.',
};
