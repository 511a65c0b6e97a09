import type { RemarkKind } from '../../../daemon/contract/batch.ts';
import type { Face } from '../../../daemon/contract/plan.ts';
import { names } from '../../../daemon/wording/en/thing-names.ts';
import { capitalized } from '../capitalized.ts';
import { plural } from '../plural.ts';

/** Names of the things of the trade. */
export const things = {
  placeKinds: capitalized(names.placeKinds),
  species: names.species,
  surfaces: capitalized(names.surfaces),
  faces: {
    face: 'face',
    back: 'back',
    edges: 'edges',
    ends: 'ends',
  } satisfies Record<Face, string>,
  remarks: {
    'got-wet': 'Got wet',
    wrinkled: 'Wrinkled',
    runs: 'Runs',
    dull: 'Dull, starved',
    glossy: 'Glossy, fat',
    'sunk-in': 'Sunk in',
    'still-standing': 'Still standing',
    clogged: 'Clogged when sanded',
    'wiped-off': 'Wiped off',
    'dew-night': 'A night of dew',
    bleached: 'Bleached',
    'looked-fine': 'Looked: nothing to see',
    sanded: 'Sanded',
    other: 'Something else',
  } satisfies Record<RemarkKind, string>,
  quantities: capitalized(names.quantities),
  /** The same within a sentence. */
  quantitiesWithin: names.quantities,
  ingredients: names.mixtureParts,
  undiluted: 'undiluted paint',
  boards: (count: number) => plural('en', count, { one: '# board', other: '# boards' }),
};
