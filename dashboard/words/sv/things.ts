import { names } from '../../../daemon/wording/sv/thing-names.ts';
import { capitalized } from '../capitalized.ts';
import type { things as English } from '../en/things.ts';
import { plural } from '../plural.ts';

export const things: typeof English = {
  placeKinds: capitalized(names.placeKinds),
  species: names.species,
  surfaces: capitalized(names.surfaces),
  faces: { face: 'framsida', back: 'baksida', edges: 'kanter', ends: 'ändar' },
  remarks: {
    'got-wet': 'Blev våt',
    wrinkled: 'Rynkig',
    runs: 'Rinningar',
    dull: 'Matt, mager',
    glossy: 'Blank, fet',
    'sunk-in': 'Sugits in',
    'still-standing': 'Står kvar',
    clogged: 'Satte igen vid slipning',
    'wiped-off': 'Avtorkad',
    'dew-night': 'En natt med dagg',
    bleached: 'Blekt',
    'looked-fine': 'Tittat: inget att se',
    sanded: 'Slipad',
    other: 'Något annat',
  },
  quantities: capitalized(names.quantities),
  quantitiesWithin: names.quantities,
  ingredients: names.mixtureParts,
  undiluted: 'oförtunnad färg',
  boards: (count) => plural('sv', count, { one: '# bräda', other: '# brädor' }),
};
