import type { Quantity } from '../contract/quantity.ts';

/** Units of quantities as they are kept. */
export const quantityUnits = {
  'air-temperature': '°C',
  'surface-temperature': '°C',
  'relative-humidity': '%',
  'wood-moisture': '%',
  'wood-resistance': 'Ω',
  'carbon-dioxide': 'ppm',
  battery: '%',
} as const satisfies Record<Quantity, string>;
