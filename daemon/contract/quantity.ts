import { z } from 'zod';

/** What a sensor can measure here; the word is also the last segment of its topic. */
export const quantities = [
  'air-temperature',
  'relative-humidity',
  'surface-temperature',
  'wood-moisture',
  'wood-resistance',
  'carbon-dioxide',
  'battery',
] as const;

export const Quantity = z
  .enum(quantities)
  .describe('what is measured, in the unit of the quantity');
export type Quantity = z.infer<typeof Quantity>;

/** The unit a quantity is kept in; `%` is per cent here, never a ratio. */
export type CanonicalUnit = '°C' | '%' | 'Ω' | 'ppm';

export type QuantityFacts = {
  /** What is measured, for a sentence. */
  readonly words: string;
  /** The unit that values are kept in and that a bare number is read as. */
  readonly unit: CanonicalUnit;
  /** SenML unit symbols that fit; the first is the one to send. */
  readonly senmlUnits: readonly string[];
  /** Lowest number, in `unit`, that can be a reading; below it something is broken. */
  readonly low: number;
  /** Highest number, in `unit`, that can be a reading; above it something is broken. */
  readonly high: number;
};

/**
 * Unit and limits of each quantity. A number outside `low`…`high` is no reading, only a fault.
 *
 * **Source:** symbols from RFC 8428 (2018), section 12.1; `/100` and `ppm` from RFC 8798 (2020),
 * from memory. Limits are assumptions unless a line says otherwise: wide enough for every shed
 * and yard, narrow enough to stop a fault code such as −127 °C or 65,535.
 */
export const quantityFacts: Readonly<Record<Quantity, QuantityFacts>> = {
  // Assumption: colder and hotter than any place where boards are coated.
  'air-temperature': {
    words: 'air temperature',
    unit: '°C',
    senmlUnits: ['Cel', 'K'],
    low: -60,
    high: 100,
  },
  // Assumption: cheap sensors stray a little past 0 and 100; sensors/correct clamps them.
  'relative-humidity': {
    words: 'relative humidity',
    unit: '%',
    senmlUnits: ['%RH', '/', '%', '/100'],
    low: -5,
    high: 110,
  },
  // Assumption: a dark wall in the sun gets hotter than the air, still below this.
  'surface-temperature': {
    words: 'surface temperature',
    unit: '°C',
    senmlUnits: ['Cel', 'K'],
    low: -60,
    high: 120,
  },
  // Green sapwood of light softwoods reaches about 250 % of oven-dry mass (Wood Handbook,
  // chapter 4, from memory). SenML has no unit of its own for it.
  'wood-moisture': {
    words: 'wood moisture content',
    unit: '%',
    senmlUnits: ['/100', '/', '%'],
    low: 0,
    high: 300,
  },
  // Assumption: below 1 Ω the leads touch; above 1 PΩ no instrument measures.
  'wood-resistance': {
    words: 'resistance between the pins',
    unit: 'Ω',
    senmlUnits: ['Ohm'],
    low: 1,
    high: 1e15,
  },
  // Assumption: a tenth of the air, far above what such sensors reach.
  'carbon-dioxide': {
    words: 'carbon dioxide',
    unit: 'ppm',
    senmlUnits: ['ppm', '/'],
    low: 0,
    high: 100_000,
  },
  // Assumption: a fresh cell is now and then reported a little over 100.
  battery: {
    words: 'battery left',
    unit: '%',
    senmlUnits: ['%EL', '/100', '/', '%'],
    low: 0,
    high: 110,
  },
};
