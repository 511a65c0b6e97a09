import { names } from '../../../daemon/wording/de/thing-names.ts';
import { capitalized } from '../capitalized.ts';
import type { things as English } from '../en/things.ts';
import { plural } from '../plural.ts';

export const things: typeof English = {
  placeKinds: capitalized(names.placeKinds),
  species: names.species,
  // Without capitals: they stand within lines, where German words keep the case they have.
  surfaces: names.surfaces,
  faces: { face: 'Vorderseite', back: 'Rückseite', edges: 'Kanten', ends: 'Hirnholz' },
  remarks: {
    'got-wet': 'Nass geworden',
    wrinkled: 'Runzelig',
    runs: 'Läufer',
    dull: 'Matt, mager',
    glossy: 'Glänzend, fett',
    'sunk-in': 'Eingezogen',
    'still-standing': 'Steht noch obenauf',
    clogged: 'Papier setzte sich zu',
    'wiped-off': 'Abgewischt',
    'dew-night': 'Eine Nacht mit Tau',
    bleached: 'Ausgebleicht',
    'looked-fine': 'Nachgesehen: nichts zu sehen',
    sanded: 'Geschliffen',
    other: 'Etwas anderes',
  },
  quantities: capitalized(names.quantities),
  quantitiesWithin: names.quantities,
  ingredients: names.mixtureParts,
  undiluted: 'unverdünnte Farbe',
  boards: (count) => plural('de', count, { one: '# Brett', other: '# Bretter' }),
};
