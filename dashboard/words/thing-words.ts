import type { RemarkKind, Species } from '../../daemon/contract/batch.ts';
import type { Overview } from '../../daemon/contract/overview.ts';
import type { PlaceKind } from '../../daemon/contract/place.ts';
import type { Face, Mixture, Surface } from '../../daemon/contract/plan.ts';
import type { Quantity } from '../../daemon/contract/quantity.ts';

type Airflow = Overview['places'][number]['airflow'];

export const placeKindWords: Readonly<Record<PlaceKind, string>> = {
  rack: 'Rack',
  room: 'Room',
  wall: 'Wall',
  outdoors: 'Outdoors',
};

export const speciesWords: Readonly<Record<Species, string>> = {
  'scots-pine': 'Scots pine',
  'norway-spruce': 'Norway spruce',
  'douglas-fir': 'Douglas fir',
  larch: 'larch',
  other: 'another timber',
};

export const surfaceWords: Readonly<Record<Surface, string>> = {
  sawn: 'Sawn',
  planed: 'Planed',
};

export const faceWords: Readonly<Record<Face, string>> = {
  face: 'face',
  back: 'back',
  edges: 'edges',
  ends: 'ends',
};

export const airflowWords: Readonly<Record<Airflow, string>> = {
  good: 'good',
  poor: 'poor',
  'cannot-tell': 'can’t tell',
};

export const remarkWords: Readonly<Record<RemarkKind, string>> = {
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
};

export const quantityWords: Readonly<Record<Quantity, { name: string; unit: string }>> = {
  'air-temperature': { name: 'Air temperature', unit: '°C' },
  'relative-humidity': { name: 'Relative humidity', unit: '%' },
  'surface-temperature': { name: 'Surface temperature', unit: '°C' },
  'wood-moisture': { name: 'Wood moisture', unit: '%' },
  'wood-resistance': { name: 'Wood resistance', unit: 'Ω' },
  'carbon-dioxide': { name: 'Carbon dioxide', unit: 'ppm' },
  battery: { name: 'Battery', unit: '%' },
};

/** The mixture as a painter says it: “35 paint · 50 raw linseed oil · 15 turpentine”. */
export function mixtureWords(mixture: Mixture): string {
  const parts = [
    mixture.paint > 0 ? `${mixture.paint} paint` : null,
    mixture.rawLinseedOil > 0 ? `${mixture.rawLinseedOil} raw linseed oil` : null,
    mixture.turpentine > 0 ? `${mixture.turpentine} turpentine` : null,
  ].filter((part) => part !== null);
  return parts.length === 1 && mixture.paint > 0 ? 'undiluted paint' : parts.join(' : ');
}

/** “face, back, edges and ends”. */
export function facesWords(faces: readonly Face[]): string {
  const words = faces.map((face) => faceWords[face]);
  const last = words.pop();
  if (last === undefined) return '';
  return words.length === 0 ? last : `${words.join(', ')} and ${last}`;
}

const poorAir: Readonly<Record<string, string>> = {
  'air-changes-few': 'Stale air: open up, unless it is wetter outside.',
  'air-stagnant': 'Still air between the boards: let air through.',
  'air-damp-long': 'Damp for hours: change the air when it is drier outside.',
};

/** Why the air is poor, short enough for the wall. */
export function poorAirWords(reasons: Overview['places'][number]['airReasons']): string {
  const known = reasons.map(({ code }) => poorAir[code]).find((words) => words !== undefined);
  return known ?? 'Poor air here. Change it; no fan on wet film.';
}
