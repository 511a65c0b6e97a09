import { plural } from '../plural.ts';

/** The wall, and what an empty one says. All of it is read from afar: few words. */
export const wall = {
  title: 'The wall',
  /** After the name of the batch and before its stage: “coat 1 of 3, tack-free”. */
  coatsPlanned: (coats: number) =>
    plural('en', coats, { one: '# coat planned', other: '# coats planned' }),
  coatOf: (coat: number, coats: number) => `coat ${coat} of ${coats}`,
  /** How the board is read aloud: “Wait to coat again”. */
  spoken: (sign: string, job: string) => `${sign} ${job}`,
  spokenOld: (verdict: string) => `No longer sure: ${verdict}`,
  notSure: 'Not sure any more',
  /** What is known of how the air moves: “Air: can’t tell”. */
  air: (word: string) => `Air: ${word}`,
  airOld: (word: string, ago: string) => `Air: ${word}, ${ago}`,
  noSensor: 'No sensor tells how the air is here.',
  oldFigures: (ago: string) => `Old figures: the last reading came ${ago}.`,
  driedUnknown: 'How far the paint has dried is not known.',
  dried: (share: string, job: string) =>
    `The paint has dried ${share} of what is likely needed ${job}.`,
  /** A wall of several pages. */
  pages: 'Pages of the wall',
  pageOf: (page: number, pages: number) => `${page} of ${pages}`,
  next: 'Next racks',
  back: 'Racks before',
  standStill: 'Stand still',
  turnOn: 'Turn by itself',
  /** Racks on other pages that want something: “Also: North rack, Loft and 2 more”. */
  also: (racks: string) => `Also: ${racks}`,
  /** One of them: “North rack – Feel it”. */
  rackSays: (rack: string, sign: string) => `${rack} – ${sign}`,
  /** Instead of its sign, where something is wrong at a rack: “Loft – Needs a look”. */
  needsLook: 'Needs a look',
  moreRacks: (racks: number) => `${racks} more`,
  /** At the foot, after the first notice. */
  moreNotices: (notices: number) => `and ${notices} more`,
};
