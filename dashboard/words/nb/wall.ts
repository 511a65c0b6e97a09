import type { wall as English } from '../en/wall.ts';
import { plural } from '../plural.ts';

const capitalised = (words: string) => words.charAt(0).toLocaleUpperCase('nb') + words.slice(1);

export const wall: typeof English = {
  title: 'Veggen',
  coatsPlanned: (coats) =>
    plural('nb', coats, { one: '# strøk planlagt', other: '# strøk planlagt' }),
  coatOf: (coat, coats) => `strøk ${coat} av ${coats}`,
  spoken: (sign, job) => `${capitalised(job)}: ${sign.toLocaleLowerCase('nb')}`,
  spokenOld: (verdict) => `Gjelder kanskje ikke lenger: ${verdict}`,
  notSure: 'Vet ikke lenger',
  air: (word) => `Luft: ${word}`,
  airOld: (word, ago) => `Luft: ${word}, ${ago}`,
  noSensor: 'Ingen sensor forteller hvordan luften er her.',
  oldFigures: (ago) => `Gamle tall: den siste målingen kom ${ago}.`,
  driedUnknown: 'Hvor langt malingen har tørket, vet vi ikke.',
  dried: (share, job) => `Malingen har tørket ${share} av det som trolig trengs for ${job}.`,
  pages: 'Sidene på veggen',
  pageOf: (page, pages) => `${page} av ${pages}`,
  next: 'Neste reoler',
  back: 'Forrige reoler',
  standStill: 'Stå stille',
  turnOn: 'Bla av seg selv',
  also: (racks) => `Også: ${racks}`,
  rackSays: (rack, sign) => `${rack} – ${sign}`,
  needsLook: 'Trenger tilsyn',
  moreRacks: (racks) => `${racks} til`,
  moreNotices: (notices) => `og ${notices} til`,
};
