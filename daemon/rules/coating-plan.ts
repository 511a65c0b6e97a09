import type { PlannedCoat, Surface } from '../contract/plan.ts';

/** A plan that every site starts with. */
export interface DefaultPlan {
  name: string;
  surface: Surface;
  coats: PlannedCoat[];
}

/**
 * Spreading rates to begin with, m²/L: primer, second, last coat.
 * **Source:** common practice, no source. Rough sawn timber drinks more than planed.
 */
const spreadingM2PerL: Record<Surface, [number, number, number]> = {
  sawn: [8, 10, 12],
  planed: [12, 14, 16],
};

/**
 * The three-coat plan of linseed-oil paint on bare cladding: a thinned primer all round, a second
 * coat with turpentine added to the paint, an undiluted last coat; later coats on what shows.
 * **Source:** common practice, no source.
 */
function threeCoats(surface: Surface): PlannedCoat[] {
  const [primer, second, last] = spreadingM2PerL[surface];
  return [
    {
      name: 'Primer',
      mixture: { paint: 35, rawLinseedOil: 50, turpentine: 15 },
      faces: ['face', 'back', 'edges', 'ends'],
      spreadingM2PerL: primer,
      soaksIn: true,
    },
    {
      name: 'Second coat',
      mixture: { paint: 100, rawLinseedOil: 0, turpentine: 15 },
      faces: ['face', 'edges'],
      spreadingM2PerL: second,
      soaksIn: false,
    },
    {
      name: 'Last coat',
      mixture: { paint: 100, rawLinseedOil: 0, turpentine: 0 },
      faces: ['face', 'edges'],
      spreadingM2PerL: last,
      soaksIn: false,
    },
  ];
}

export const defaultPlans: readonly DefaultPlan[] = [
  { name: 'Three coats on sawn boards', surface: 'sawn', coats: threeCoats('sawn') },
  { name: 'Three coats on planed boards', surface: 'planed', coats: threeCoats('planed') },
];
