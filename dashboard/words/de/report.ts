import type { report as EnglishReport, season as EnglishSeason } from '../en/report.ts';
import { inARow, phrase } from '../phrase.ts';

export const report: typeof EnglishReport = {
  none: 'Kein Bericht',
  anotherPlace: 'ein anderer Platz',
  madeAt: (site, moment) => `${site}, Bericht vom ${moment}`,
  what: (boards, size, species, surface, plan) =>
    `${boards}, ${size}, ${species}, ${surface}; ${plan}.`,
  print: 'Drucken',
  asTable: 'Als Tabelle (CSV)',
  asJson: 'Als JSON',
  back: 'Zurück zur Partie',
  finished: (moment, mixture, faces, colour, tin) => {
    const typed = `${colour === null ? '' : `; ${colour}`}${tin === null ? '' : `, Dose ${tin}`}`;
    return phrase`Fertig ${moment}; ${mixture}; ${faces}${typed}.`;
  },
  noCoat: 'Es wurde kein Anstrich eingetragen.',
  recorded: 'Was eingetragen wurde',
  photos: 'Fotos',
  photoOf: (moment) => `Foto vom ${moment}`,
  photo: (moment, shows) => phrase`${moment}: ${shows}`,
  gathered: (area, used, spreading, sum) => {
    const paint = `${used === null ? '' : `, ${used}`}${spreading === null ? '' : `: ${spreading}`}`;
    return `${area}${paint}; ${sum} gesammelt.`;
  },
  air: {
    heading: 'Luft',
    temperature: 'Temperatur, tiefste / mittlere / höchste',
    humidity: 'Feuchte',
    hours: 'Kalt, feucht, nahe Taupunkt',
    atTheBrush: 'Beim Streichen',
    firstDay: 'Erster Tag',
    whileCuring: 'Beim Härten',
    notRead: 'nicht gemessen',
    counted: (cold, damp, nearDew, all) =>
      `${cold}\u00a0h, ${damp}\u00a0h, ${nearDew}\u00a0h von ${all}\u00a0h`,
    limits: (cold, damp, nearDew) =>
      `Kalt ist unter ${cold}, feucht über ${damp}, nahe Taupunkt weniger als ${nearDew} über dem Taupunkt.`,
  },
  jobAt: (job, moment) => phrase`${job} ${moment}`,
  possible: (jobs) =>
    phrase`Nach dem Modell ebenso wahrscheinlich möglich wie nicht: ${jobs.length === 0 ? 'noch nichts' : inARow(jobs, '; ')}.`,
};

export const season: typeof EnglishSeason = {
  title: 'Die Jahreszeiten',
  lead: 'Was aus den bisherigen Anstrichen wurde: wie lange sie brauchten, nach Monat und Platz, und wie gut das vorausgesehen war.',
  noCoat: 'Es wurde noch kein Anstrich eingetragen.',
  days: {
    title: 'Tage seit dem letzten Brett',
    monthAndPlace: 'Monat, Platz',
    inMonth: (month, place) => `${month}, ${place}`,
    coats: 'Anstriche',
    used: { metric: 'Liter', us: 'Gallonen' },
    boardsEach: { metric: 'Bretter je Liter', us: 'Bretter je Gallone' },
    areaEach: { metric: 'm² je Liter', us: 'ft² je Gallone' },
    label: (heading) => `${heading}:`,
    range: (median, shortest, longest) => `${median} (${shortest}–${longest})`,
    foot: 'Der Median, mit dem kürzesten und dem längsten: wann die Arbeit ebenso wahrscheinlich möglich wurde wie nicht, nach dem Modell, wie es inzwischen gelernt hat. Ein Strich: Kein Anstrich kam so weit, bevor der nächste folgte.',
  },
  model: {
    title: 'Das Modell gegen Ihren Daumen',
    noTest: 'Noch keine Fingerprobe: Es gibt nichts zum Vergleichen.',
    gave: 'Das Modell gab',
    average: 'im Mittel',
    tests: 'Proben',
    passed: 'davon bestanden',
    fromTo: (from, to) => `${from} bis ${to}`,
    foot: (error, coin) =>
      `Bei einem guten Modell wird so oft bestanden, wie es gesagt hat. Jede Probe wird mit dem verglichen, was ohne sie geglaubt wurde. Mittlerer quadratischer Fehler ${error}; ein Münzwurf hat ${coin}.`,
  },
};
