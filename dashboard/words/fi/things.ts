import { names } from '../../../daemon/wording/fi/thing-names.ts';
import { capitalized } from '../capitalized.ts';
import type { things as English } from '../en/things.ts';
import { plural } from '../plural.ts';

export const things: typeof English = {
  placeKinds: capitalized(names.placeKinds),
  species: names.species,
  surfaces: capitalized(names.surfaces),
  faces: {
    face: 'etupuoli',
    back: 'takapuoli',
    edges: 'reunat',
    ends: 'päät',
  },
  remarks: {
    'got-wet': 'Kastui',
    wrinkled: 'Rypyssä',
    runs: 'Valumia',
    dull: 'Himmeä, ohut',
    glossy: 'Kiiltävä, rasvainen',
    'sunk-in': 'Imeytynyt',
    'still-standing': 'Seisoo yhä pinnalla',
    clogged: 'Tukki hiottaessa',
    'wiped-off': 'Pyyhitty pois',
    'dew-night': 'Kasteinen yö',
    bleached: 'Haalistunut',
    'looked-fine': 'Katsottu: ei huomautettavaa',
    sanded: 'Hiottu',
    other: 'Jotain muuta',
  },
  quantities: capitalized(names.quantities),
  quantitiesWithin: names.quantities,
  ingredients: names.mixtureParts,
  undiluted: 'ohentamaton maali',
  boards: (count) => plural('fi', count, { one: '# lauta', other: '# lautaa' }),
};
