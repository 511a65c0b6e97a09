import type { RemarkKind, Species } from '../../../daemon/contract/batch.ts';
import type { Overview } from '../../../daemon/contract/overview.ts';
import type { PlaceKind } from '../../../daemon/contract/place.ts';
import type { Face, Surface } from '../../../daemon/contract/plan.ts';
import type { Quantity } from '../../../daemon/contract/quantity.ts';
import { plural } from '../plural.ts';

type Airflow = Overview['places'][number]['airflow'];

/** Names of the things of the trade. */
export const things = {
  placeKinds: {
    rack: 'Rack',
    room: 'Room',
    wall: 'Wall',
    outdoors: 'Outdoors',
  } satisfies Record<PlaceKind, string>,
  species: {
    'scots-pine': 'Scots pine',
    'norway-spruce': 'Norway spruce',
    'douglas-fir': 'Douglas fir',
    larch: 'larch',
    other: 'another timber',
  } satisfies Record<Species, string>,
  surfaces: {
    sawn: 'Sawn',
    planed: 'Planed',
  } satisfies Record<Surface, string>,
  faces: {
    face: 'face',
    back: 'back',
    edges: 'edges',
    ends: 'ends',
  } satisfies Record<Face, string>,
  airflows: {
    good: 'good',
    poor: 'poor',
    'cannot-tell': 'can’t tell',
  } satisfies Record<Airflow, string>,
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
  quantities: {
    'air-temperature': 'Air temperature',
    'relative-humidity': 'Relative humidity',
    'surface-temperature': 'Surface temperature',
    'wood-moisture': 'Wood moisture',
    'wood-resistance': 'Wood resistance',
    'carbon-dioxide': 'Carbon dioxide',
    battery: 'Battery',
  } satisfies Record<Quantity, string>,
  /** The same in the middle of a sentence: “15.2 °C air temperature of node-3”. */
  quantitiesWithin: {
    'air-temperature': 'air temperature',
    'relative-humidity': 'relative humidity',
    'surface-temperature': 'surface temperature',
    'wood-moisture': 'wood moisture',
    'wood-resistance': 'wood resistance',
    'carbon-dioxide': 'carbon dioxide',
    battery: 'battery',
  } satisfies Record<Quantity, string>,
  /** What goes into a pot, after its parts: “35 paint : 50 raw linseed oil : 15 turpentine”. */
  ingredients: { paint: 'paint', rawLinseedOil: 'raw linseed oil', turpentine: 'turpentine' },
  undiluted: 'undiluted paint',
  /** Why the air is poor, short enough for the wall. */
  poorAir: {
    few: 'Stale air: open up, unless it is wetter outside.',
    stagnant: 'Still air between the boards: let air through.',
    damp: 'Damp for hours: change the air when it is drier outside.',
    other: 'Poor air here. Change it; no fan on wet film.',
  },
  boards: (count: number) => plural('en', count, { one: '# board', other: '# boards' }),
};
