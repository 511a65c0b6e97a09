import type { Phrases } from '../phrase.ts';
import type { AheadSentences } from '../subject/ahead.ts';

export const ahead: Phrases<AheadSentences> = {
  'rate-outlook': () =>
    'Tulevat päivät on jatkettu tallennetuista, sääennusteen kanssa, jos sellainen on lähetetty.',
  'rate-own-record': () =>
    'Myöhemmät päivät on otettu samasta vuodenajasta aiempina vuosina, tämän paikan omista tiedoista.',
  'rate-typed-months': () => 'Myöhemmät päivät ulkona on otettu asetusten kuukausikeskiarvoista.',
  'rate-last-days': () =>
    'Myöhempien päivien oletetaan jatkuvan kuten kahden viime viikon, kasvavalla epävarmuudella: paikasta ei ole vielä tietoja siltä vuodenajalta, eikä kuukausikeskiarvoja ole annettu.',
  'place-unknown': ({ placeName }) =>
    `Ilmasta ei tiedetä mitään, paikka: ${placeName}. Sinne suunnitellulla ei ole aikoja.`,
  'capacity-unknown': () =>
    'Kaikista telineistä ei ole kerrottu, kuinka paljon niihin mahtuu, joten suunnitelma ei ota sitä huomioon.',
  'in-parts': () => 'Telineitä suurempi erä suunnitellaan osina, yksi toisensa jälkeen.',
  'no-wall': () => 'Paikassa ei ole seinää, joten kaikki kerrokset suunnitellaan telineille.',
  pace: ({ brushedM2, mountedBoards }, speak) =>
    `Tunnissa oletetaan maalattavan ${speak.area(brushedM2)} ja asennettavan lautoja ${speak.number(mountedBoards)}, yksi työ kerrallaan (yleinen käytäntö, ei lähdettä; asetukset).`,
  paint: () =>
    'Varhainen ja myöhäinen sisältävät maalin ja sään epävarmuuden; konerikkoja, sadetta ja vieraita niissä ei ole.',
};
