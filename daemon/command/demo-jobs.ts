import type { Boards, Species } from '../contract/batch.ts';
import type { Surface } from '../contract/plan.ts';

/** A batch of boards of the invented scenario. */
export interface Job {
  readonly name: string;
  readonly species: Extract<Species, 'norway-spruce' | 'scots-pine'>;
  readonly surface: Surface;
  readonly boards: Boards;
  readonly colour: string;
  readonly moisturePercent: number;
  /** how much slower than the shed's usual paint this colour cures: assumption, no source */
  readonly slowness: number;
}

/** Oven-dry mass of timber, kg/m³: 441 kg/m³ of spruce and about 530 of pine at 12 % moisture, less that water. **Source:** public wood information pages. */
export const DRY_KG_PER_M3 = { 'norway-spruce': 394, 'scots-pine': 473 } as const;

export const JOBS: readonly Job[] = [
  {
    name: 'Gable boards',
    species: 'norway-spruce',
    surface: 'sawn',
    boards: { count: 42, lengthMm: 3600, widthMm: 145, thicknessMm: 22 },
    colour: 'red ochre',
    moisturePercent: 15,
    slowness: 0.97,
  },
  {
    name: 'North wall, lower half',
    species: 'scots-pine',
    surface: 'sawn',
    boards: { count: 36, lengthMm: 4200, widthMm: 145, thicknessMm: 22 },
    colour: 'chalk grey',
    moisturePercent: 16.5,
    slowness: 1.05,
  },
  {
    name: 'Window casings',
    species: 'scots-pine',
    surface: 'planed',
    boards: { count: 28, lengthMm: 2400, widthMm: 120, thicknessMm: 21 },
    colour: 'leaf green',
    moisturePercent: 13.5,
    slowness: 1,
  },
  {
    name: 'Cover strips',
    species: 'norway-spruce',
    surface: 'sawn',
    boards: { count: 90, lengthMm: 3600, widthMm: 45, thicknessMm: 22 },
    colour: 'red ochre',
    moisturePercent: 15.5,
    slowness: 0.97,
  },
  {
    name: 'Porch ceiling',
    species: 'norway-spruce',
    surface: 'planed',
    boards: { count: 48, lengthMm: 3000, widthMm: 95, thicknessMm: 18 },
    colour: 'chalk grey',
    moisturePercent: 14,
    slowness: 1.05,
  },
];
