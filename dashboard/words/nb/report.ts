import type { report as EnglishReport, season as EnglishSeason } from '../en/report.ts';
import { inARow, phrase } from '../phrase.ts';

export const report: typeof EnglishReport = {
  none: 'Ingen rapport',
  anotherPlace: 'et annet sted',
  madeAt: (site, moment) => `${site}, rapport laget ${moment}`,
  what: (boards, size, species, surface, plan) =>
    `${boards}, ${size}, ${species}, ${surface}; ${plan}.`,
  print: 'Skriv ut',
  asTable: 'Som tabell (CSV)',
  asJson: 'Som JSON',
  back: 'Tilbake til partiet',
  finished: (moment, mixture, faces, colour, tin) => {
    const typed = `${colour === null ? '' : `; ${colour}`}${tin === null ? '' : `, boks ${tin}`}`;
    return phrase`Ferdig ${moment}; ${mixture}; ${faces}${typed}.`;
  },
  noCoat: 'Ikke noe strøk er notert.',
  recorded: 'Hva som er notert',
  photos: 'Fotoer',
  photoOf: (moment) => `Foto fra ${moment}`,
  photo: (moment, shows) => phrase`${moment}: ${shows}`,
  gathered: (area, used, spreading, sum) => {
    const paint = `${used === null ? '' : `, ${used}`}${spreading === null ? '' : `: ${spreading}`}`;
    return `${area}${paint}; ${sum} samlet.`;
  },
  air: {
    heading: 'Luft',
    temperature: 'Temperatur, lavest / middel / høyest',
    humidity: 'Fuktighet',
    hours: 'Kaldt, fuktig, nær dugg',
    atTheBrush: 'Under malingen',
    firstDay: 'Første døgn',
    whileCuring: 'Under herdingen',
    notRead: 'ikke målt',
    counted: (cold, damp, nearDew, all) =>
      `${cold}\u00a0t, ${damp}\u00a0t, ${nearDew}\u00a0t av ${all}\u00a0t`,
    limits: (cold, damp, nearDew) =>
      `Kaldt er under ${cold}, fuktig over ${damp}, nær dugg mindre enn ${nearDew} over duggpunktet.`,
  },
  jobAt: (job, moment) => phrase`${job} ${moment}`,
  possible: (jobs) =>
    phrase`Like sannsynlig mulig som ikke, etter modellen: ${jobs.length === 0 ? 'ingenting ennå' : inARow(jobs, '; ')}.`,
};

export const season: typeof EnglishSeason = {
  title: 'Sesongene',
  lead: 'Hva det ble av strøkene så langt: hvor lang tid de tok, etter måned og sted, og hvor godt det ble forutsett.',
  noCoat: 'Ikke noe strøk er notert ennå.',
  days: {
    title: 'Døgn fra siste bord',
    monthAndPlace: 'Måned, sted',
    inMonth: (month, place) => `${month}, ${place}`,
    coats: 'Strøk',
    used: { metric: 'Liter', us: 'Gallon' },
    boardsEach: { metric: 'Bord per liter', us: 'Bord per gallon' },
    areaEach: { metric: 'm² per liter', us: 'ft² per gallon' },
    label: (heading) => `${heading}:`,
    range: (median, shortest, longest) => `${median} (${shortest}–${longest})`,
    foot: 'Medianen, med det korteste og det lengste: da arbeidet ble like sannsynlig mulig som ikke, etter modellen slik den har lært til nå. En strek: ikke noe strøk kom så langt før det neste ble lagt på.',
  },
  model: {
    title: 'Modellen mot tommelen din',
    noTest: 'Ingen følertest ennå: det er ingenting å holde den opp mot.',
    gave: 'Modellen ga',
    average: 'i snitt',
    tests: 'Tester',
    passed: 'av dem bestått',
    fromTo: (from, to) => `${from} til ${to}`,
    foot: (error, coin) =>
      `En god modell treffer så ofte som den sa. Hver test holdes opp mot det som ble trodd uten den. Midlere kvadratfeil ${error}; å kaste mynt gir ${coin}.`,
  },
};
