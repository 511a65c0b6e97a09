import type { more as English } from '../en/more.ts';

export const more: typeof English = {
  title: 'Mer',
  doors: {
    records: { name: 'Notater', says: 'Alt som er notert, om alle partier, til å søke i' },
    season: { name: 'Sesongene', says: 'Hva det ble av strøkene så langt' },
    settings: {
      name: 'Innstillinger',
      says: 'Hva som er innstilt, hvor det kommer fra, og hvordan det endres',
    },
    topics: {
      name: 'Sensorer av andre slag',
      says: 'Meldinger som ingen kjenner ennå, og reglene som gjør dem til målinger',
    },
    firstRun: {
      name: 'De første stegene',
      says: 'Den ledede veien gjennom oppsettet, og en simulert bod å prøve seg på',
    },
    cautions: { name: 'Advarsler', says: 'Filler, damp, støv, bly og varmeovner' },
    api: { name: 'API', says: 'Alle adresser, for den som skriver programmer' },
  },
};
