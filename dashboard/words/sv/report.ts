import type { report as EnglishReport, season as EnglishSeason } from '../en/report.ts';
import { inARow, phrase } from '../phrase.ts';

export const report: typeof EnglishReport = {
  none: 'Ingen rapport',
  anotherPlace: 'en annan plats',
  madeAt: (site, moment) => `${site}, rapport gjord ${moment}`,
  what: (boards, size, species, surface, plan) =>
    `${boards}, ${size}, ${species}, ${surface}; ${plan}.`,
  print: 'Skriv ut',
  asTable: 'Som tabell (CSV)',
  asJson: 'Som JSON',
  back: 'Tillbaka till partiet',
  finished: (moment, mixture, faces, colour, tin) => {
    const typed = `${colour === null ? '' : `; ${colour}`}${tin === null ? '' : `, burk ${tin}`}`;
    return phrase`Klar ${moment}; ${mixture}; ${faces}${typed}.`;
  },
  noCoat: 'Ingen strykning är antecknad.',
  recorded: 'Vad som antecknats',
  photos: 'Foton',
  photoOf: (moment) => `Foto från ${moment}`,
  photo: (moment, shows) => phrase`${moment}: ${shows}`,
  gathered: (area, used, spreading, sum) => {
    const paint = `${used === null ? '' : `, ${used}`}${spreading === null ? '' : `: ${spreading}`}`;
    return `${area}${paint}; ${sum} samlade.`;
  },
  air: {
    heading: 'Luft',
    temperature: 'Temperatur, lägst / medel / högst',
    humidity: 'Fuktighet',
    hours: 'Kallt, fuktigt, nära dagg',
    atTheBrush: 'Vid strykningen',
    firstDay: 'Första dygnet',
    whileCuring: 'Under härdningen',
    notRead: 'inte uppmätt',
    counted: (cold, damp, nearDew, all) =>
      `${cold}\u00a0h, ${damp}\u00a0h, ${nearDew}\u00a0h av ${all}\u00a0h`,
    limits: (cold, damp, nearDew) =>
      `Kallt är under ${cold}, fuktigt över ${damp}, nära dagg mindre än ${nearDew} över daggpunkten.`,
  },
  jobAt: (job, moment) => phrase`${job} ${moment}`,
  possible: (jobs) =>
    phrase`Enligt modellen lika troligt möjligt som inte: ${jobs.length === 0 ? 'ingenting än' : inARow(jobs, '; ')}.`,
};

export const season: typeof EnglishSeason = {
  title: 'Säsongerna',
  lead: 'Vad det blev av strykningarna hittills: hur lång tid de tog, per månad och plats, och hur väl det förutsågs.',
  noCoat: 'Ingen strykning är antecknad än.',
  days: {
    title: 'Dygn från sista brädan',
    monthAndPlace: 'Månad, plats',
    inMonth: (month, place) => `${month}, ${place}`,
    coats: 'Strykningar',
    used: { metric: 'Liter', us: 'Gallon' },
    boardsEach: { metric: 'Brädor per liter', us: 'Brädor per gallon' },
    areaEach: { metric: 'm² per liter', us: 'ft² per gallon' },
    label: (heading) => `${heading}:`,
    range: (median, shortest, longest) => `${median} (${shortest}–${longest})`,
    foot: 'Medianen, med det kortaste och det längsta: när arbetet blev lika troligt möjligt som inte, enligt modellen så som den har lärt sig hittills. Ett streck: ingen strykning kom så långt innan nästa lades på.',
  },
  model: {
    title: 'Modellen mot din tumme',
    noTest: 'Inget känselprov än: det finns inget att jämföra med.',
    gave: 'Modellen gav',
    average: 'i medeltal',
    tests: 'Prov',
    passed: 'varav klara',
    fromTo: (from, to) => `${from} till ${to}`,
    foot: (error, coin) =>
      `En bra modell får rätt så ofta som den sade. Varje prov ställs mot vad som troddes utan det. Medelkvadratfel ${error}; slantsingling har ${coin}.`,
  },
};
