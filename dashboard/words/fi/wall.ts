import type { wall as English } from '../en/wall.ts';
import { plural } from '../plural.ts';

const capitalised = (words: string) => words.charAt(0).toLocaleUpperCase('fi') + words.slice(1);

export const wall: typeof English = {
  title: 'Taulu',
  coatsPlanned: (coats) =>
    plural('fi', coats, { one: '# kerros suunniteltu', other: '# kerrosta suunniteltu' }),
  coatOf: (coat, coats) => `kerros ${coat}/${coats}`,
  spoken: (sign, job) => `${capitalised(job)}: ${sign.toLocaleLowerCase('fi')}`,
  spokenOld: (verdict) => `Ei enää varmaa: ${verdict}`,
  notSure: 'Ei enää varmaa',
  air: (word) => `Ilma: ${word}`,
  airOld: (word, ago) => `Ilma: ${word}, ${ago}`,
  noSensor: 'Mikään anturi ei kerro, millaista ilma täällä on.',
  oldFigures: (ago) => `Vanhoja lukuja: viimeisin lukema tuli ${ago}.`,
  driedUnknown: 'Maalin kuivumisen vaihetta ei tiedetä.',
  dried: (share, job) => `Maali on kuivunut ${share} siitä, mitä ${job} todennäköisesti tarvitaan.`,
  pages: 'Taulun sivut',
  pageOf: (page, pages) => `${page}/${pages}`,
  next: 'Seuraavat telineet',
  back: 'Edelliset telineet',
  standStill: 'Pysäytä',
  turnOn: 'Vaihda itsestään',
  also: (racks) => `Myös: ${racks}`,
  rackSays: (rack, sign) => `${rack} – ${sign}`,
  needsLook: 'Katso',
  moreRacks: (racks) => `${racks} muuta`,
  moreNotices: (notices) => `ja vielä ${notices}`,
};
