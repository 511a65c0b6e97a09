import type { report as EnglishReport, season as EnglishSeason } from '../en/report.ts';
import { inARow, phrase } from '../phrase.ts';

export const report: typeof EnglishReport = {
  none: 'Ei raporttia',
  anotherPlace: 'muu paikka',
  madeAt: (site, moment) => `${site}, raportti tehty ${moment}`,
  what: (boards, size, species, surface, plan) =>
    `${boards}, ${size}, ${species}, ${surface}; ${plan}.`,
  print: 'Tulosta',
  asTable: 'Taulukkona (CSV)',
  asJson: 'JSON-muodossa',
  back: 'Takaisin erään',
  finished: (moment, mixture, faces, colour, tin) => {
    const typed = `${colour === null ? '' : `; ${colour}`}${tin === null ? '' : `, purkki ${tin}`}`;
    return phrase`Valmis ${moment}; ${mixture}; ${faces}${typed}.`;
  },
  noCoat: 'Yhtään kerrosta ei ole kirjattu.',
  recorded: 'Mitä on kirjattu',
  photos: 'Kuvat',
  photoOf: (moment) => `Kuva, ${moment}`,
  photo: (moment, shows) => phrase`${moment}: ${shows}`,
  gathered: (area, used, spreading, sum) => {
    const paint = `${used === null ? '' : `, ${used}`}${spreading === null ? '' : `: ${spreading}`}`;
    return `${area}${paint}; kertynyt ${sum}.`;
  },
  air: {
    heading: 'Ilma',
    temperature: 'Lämpötila, alin / keskiarvo / ylin',
    humidity: 'Kosteus',
    hours: 'Kylmää, kosteaa, lähellä kastepistettä',
    atTheBrush: 'Maalattaessa',
    firstDay: 'Ensimmäinen vuorokausi',
    whileCuring: 'Kovettumisen aikana',
    notRead: 'ei luettu',
    counted: (cold, damp, nearDew, all) =>
      `${cold}\u00a0h, ${damp}\u00a0h, ${nearDew}\u00a0h / ${all}\u00a0h`,
    limits: (cold, damp, nearDew) =>
      `Kylmää on alle ${cold}, kosteaa yli ${damp}, lähellä kastepistettä alle ${nearDew} kastepisteen yläpuolella.`,
  },
  jobAt: (job, moment) => phrase`${job} ${moment}`,
  possible: (jobs) =>
    phrase`Mallin mukaan yhtä todennäköisesti mahdollista kuin ei: ${jobs.length === 0 ? 'ei vielä mikään' : inARow(jobs, '; ')}.`,
};

export const season: typeof EnglishSeason = {
  title: 'Kaudet',
  lead: 'Miten kerroksille on käynyt tähän asti: kuinka kauan ne kestivät kuukauden ja paikan mukaan, ja kuinka hyvin se osattiin ennakoida.',
  noCoat: 'Yhtään kerrosta ei ole vielä kirjattu.',
  days: {
    title: 'Vuorokausia viimeisestä laudasta',
    monthAndPlace: 'Kuukausi, paikka',
    inMonth: (month, place) => `${month}, ${place}`,
    coats: 'Kerroksia',
    used: { metric: 'Litraa', us: 'Gallonaa' },
    boardsEach: {
      metric: 'Lautoja litralla',
      us: 'Lautoja gallonalla',
    },
    areaEach: {
      metric: 'm² litralla',
      us: 'ft² gallonalla',
    },
    label: (heading) => `${heading}:`,
    range: (median, shortest, longest) => `${median} (${shortest}–${longest})`,
    foot: 'Mediaani sekä lyhin ja pisin: milloin työstä tuli yhtä todennäköisesti mahdollinen kuin ei, mallin tähänastisen opin mukaan. Viiva: yksikään kerros ei ehtinyt niin pitkälle ennen seuraavaa.',
  },
  model: {
    title: 'Malli ja peukalosi',
    noTest: 'Kosketuskokeita ei ole vielä: mallia ei voi verrata mihinkään.',
    gave: 'Malli lupasi',
    average: 'keskimäärin',
    tests: 'Kokeita',
    passed: 'niistä onnistui',
    fromTo: (from, to) => `${from} – ${to}`,
    foot: (error, coin) =>
      `Hyvä malli onnistuu niin usein kuin se lupasi. Jokaista koetta verrataan siihen, mitä ilman sitä uskottiin. Keskineliövirhe ${error}; kolikonheitolla ${coin}.`,
  },
};
