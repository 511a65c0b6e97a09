import { names } from '../../../daemon/wording/nb/thing-names.ts';
import { capitalized } from '../capitalized.ts';
import type { things as English } from '../en/things.ts';
import { plural } from '../plural.ts';

export const things: typeof English = {
  placeKinds: capitalized(names.placeKinds),
  species: names.species,
  surfaces: capitalized(names.surfaces),
  faces: { face: 'forside', back: 'bakside', edges: 'kanter', ends: 'ender' },
  remarks: {
    'got-wet': 'Ble våt',
    wrinkled: 'Rynket',
    runs: 'Sig',
    dull: 'Matt, mager',
    glossy: 'Blank, feit',
    'sunk-in': 'Trukket inn',
    'still-standing': 'Står fortsatt oppå',
    clogged: 'Gikk tett ved sliping',
    'wiped-off': 'Tørket av',
    'dew-night': 'En natt med dugg',
    bleached: 'Bleket',
    'looked-fine': 'Sett etter: ingenting å se',
    sanded: 'Slipt',
    other: 'Noe annet',
  },
  quantities: capitalized(names.quantities),
  quantitiesWithin: names.quantities,
  ingredients: names.mixtureParts,
  undiluted: 'ufortynnet maling',
  boards: (count) => plural('nb', count, { one: '# bord', other: '# bord' }),
};
