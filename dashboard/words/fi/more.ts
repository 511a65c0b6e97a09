import type { more as English } from '../en/more.ts';

export const more: typeof English = {
  title: 'Lisää',
  doors: {
    records: { name: 'Kirjaukset', says: 'Kaikki kirjattu, kaikista eristä, haettavana' },
    season: { name: 'Kaudet', says: 'Miten kerroksille on käynyt tähän asti' },
    settings: {
      name: 'Asetukset',
      says: 'Mitä on asetettu, mistä se tuli ja miten sitä muutetaan',
    },
    topics: {
      name: 'Muunmerkkiset anturit',
      says: 'Viestit, joita kukaan ei vielä tunne, ja säännöt, jotka tekevät niistä lukemia',
    },
    firstRun: {
      name: 'Alkuun',
      says: 'Opastettu käyttöönotto ja simuloitu vaja kokeilua varten',
    },
    cautions: { name: 'Varoitukset', says: 'Rätit, höyry, pöly, lyijy ja lämmittimet' },
    api: { name: 'API', says: 'Kaikki reitit ohjelmien kirjoittajille' },
  },
};
