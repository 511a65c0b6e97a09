import type { Phrases } from '../phrase.ts';
import type { RemarkSentences } from '../subject/remark.ts';

export const remark: Phrases<RemarkSentences> = {
  'cure-wrinkled/wait': () =>
    'Maalia tuli liian paksulti: nahka sulkeutui pehmeän kerroksen päälle. Odota, kunnes se on läpeensä luja, päiviä tai viikkoja.',
  'cure-wrinkled/scrape': () =>
    'Kaavi rypyt pois, älä hio niitä kuumiksi. Vanhassa maalissa voi olla lyijyä: tutki ensin.',
  'cure-wrinkled/thinner': () => 'Maalaa uudelleen ohuemmin, ja sivele pidempään.',
  'cure-runs/while-soft': () => 'Pehmeinä: sivele ne ylöspäin tasaisiksi.',
  'cure-runs/once-set': () =>
    'Kun ne ovat asettuneet: odota, kunnes ne ovat lujia, leikkaa pois terävällä kaapimella, ja maalaa kohta ohuesti.',
  'cure-dull/feed': () =>
    'Himmeä pinta on jäänyt ilman öljyä: puu joi sen. Ravitse se ohuella lisäkerroksella.',
  'cure-dull/spots-first': () =>
    'Vain himmeitä kohtia: maalaa ensin ne, ja koko pinta, kun ne ovat kuivuneet.',
  'cure-glossy/wait': () =>
    'Kiiltävä pinta on rasvainen: päälle jäi liikaa öljyä, ja se pysyy kauan pehmeänä. Odota, kunnes peukalonkynsi ei jätä jälkeä.',
  'cure-glossy/rub-matt': () =>
    'Hankaa se himmeäksi ennen seuraavaa kerrosta, jotta se tarttuu, ja maalaa ohuemmin.',
  'cure-got-wet/dry': () => 'Anna kuivua liikkuvassa ilmassa, poissa auringosta.',
  'cure-got-wet/look': () =>
    'Etsi sitten himmeitä kohtia ja haalistumista ennen kuin jatkat; ravitse himmeät.',
  'cure-dew-night/dry': () => 'Anna kuivua itsestään; älä hankaa märkää maalia.',
  'cure-dew-night/look': () =>
    'Etsi sitten himmeitä kohtia ja haalistumista ennen kuin jatkat; ravitse himmeät.',
  'cure-bleached/cure-through': () =>
    'Vesi seisoi sen päällä, kun se oli pehmeä. Anna kovettua läpi, hankaa himmeäksi ja maalaa uudelleen.',
  'cure-still-standing/brush-out': () =>
    'Sivele se kuivien kohtien päälle, tai pyyhi rätillä pois syiden suuntaan, tunnin sisällä.',
  'cure-still-standing/rags': () =>
    'Levitä rätit ulos yhteen kerrokseen tai pane ne veteen kannelliseen metalliastiaan: ne kuumenevat itsestään.',
  'cure-wiped-off/rags': () =>
    'Öljyiset rätit kuumenevat itsestään: levälleen ulos, tai veteen kannelliseen astiaan.',
  'cure-sunk-in/fine': () => 'Niin kuin pitää. Anna sille aikaa.',
  'cure-clogged/stop': () =>
    'Se ei ole läpikuiva: lopeta, tai paperi repii pinnan. Anna sille päiviä, ja kokeile sitten reunaa uudelleen.',
  'cure-clogged/dust': () =>
    'Kastele pöly tai ime se pois, ja käytä hengityssuojainta. Vanhassa maalissa voi olla lyijyä: tutki ensin.',
  'cure-sanded/tell': () =>
    'Kerro huomenna, pölysikö vai tukkiko se: siitä opitaan, mitä tämä maali vaatii.',
  'cure-sanded/dust': () =>
    'Öljyinen hiontapöly voi syttyä: ulos, kasteltuna, kannelliseen metalliastiaan.',
  'dew-night': ({ placeName, tempC, rhPercent }, speak) =>
    `Ilman perusteella sen päällä on voinut seistä vettä: ${placeName}, ${speak.temperature(tempC)}, kosteus ${speak.humidity(rhPercent)}.`,
};
