import type { Phrases } from '../phrase.ts';
import type { TimberSentences } from '../subject/timber.ts';

export const timber: Phrases<TimberSentences> = {
  'maybe-lead': () =>
    'Pidä vanhaa maalia lyijymaalina, kunnes tutkimus osoittaa muuta: tutki ensin. Ei kuivahiontaa, ei polttamista, ei avointa kaapimista; pidä lapset poissa ja noudata lyijytyötä koskevia paikallisia määräyksiä.',
  weathered: () =>
    'Maali pysyy huonosti harmaantuneessa puussa: poista harmaat kuidut terveeseen puuhun asti, anna kuivua, maalaa sitten. Käytä pölysuojainta.',
  'weathered-by-now': ({ days, limitDays }, speak) =>
    `Se toimitettiin ${days} vuorokautta sitten ja oli suojatta ulkona: katso, onko se harmaantunut. Yli noin ${speak.number(limitDays)} vuorokautta lasketaan harmaantuneeksi.`,
  wrapped: () =>
    'Käärittynä säilytetty puu hikoilee: avaa se, pane välirimoille ja mittaa sen kosteus ennen kuin maalaat.',
  'knots-not-looked': () =>
    'Katso oksat ja pihka ennen pohjamaalausta: kaavi pihka pois, ja pyyhi kohdat tärpätillä, jos valmistajan ohje sallii sen.',
  resin: () =>
    'Pihka estää maalia kuivumasta päällään ja vuotaa läpi: kaavi se pois, pyyhi kohdat, ja tunnustele kokeessa oksan kohdalta.',
  'on-stickers': () =>
    'Välirimoilla maali pysyy märkänä jokaisen riman alla ja siihen jää jälki: käännä laudat heti, kun ne saa kääntää.',
  'recoat-wash': ({ days }) =>
    `Se on ollut ulkona ${days} vuorokautta: pese se, anna kuivua ja karhenna ensin. Seuraavalle kerrokselle ei ole liian myöhäistä.`,
  'recoat-winter': () =>
    'Se on ollut talven yli: etsi myös hometta ja liituuntumista. Home pestään pois ja tapetaan, liitu pestään, kunnes tumma liina pysyy puhtaana, ennen seuraavaa kerrosta.',
  'tin-old': ({ tinName, months }) =>
    `Purkki ”${tinName}” on ollut auki ${months} kuukautta: sikkatiivi heikkenee ajan myötä, joten kerrokselle annetaan enemmän aikaa. Kokeile ensin koepalaan.`,
  'tin-drier-poor': ({ tinName }) =>
    `Purkin ”${tinName}” maalissa on vähän sikkatiivia: kerrokselle annetaan enemmän aikaa. Kokeile ensin koepalaan.`,
};
