import type { Quantity } from '../../daemon/contract/quantity.ts';

/** A share of one, as the daemon calls it. */
export const FRACTION = 'fraction';

const temperature = ['°C', '°F', 'K'];
const share = ['%', FRACTION];

/** Units that the daemon knows for a quantity; the first is the one it is kept in. */
export const unitsTaken: Readonly<Record<Quantity, readonly string[]>> = {
  'air-temperature': temperature,
  'relative-humidity': share,
  'surface-temperature': temperature,
  'wood-moisture': share,
  'wood-resistance': ['Ω', 'kΩ', 'MΩ', 'GΩ', 'TΩ'],
  'carbon-dioxide': ['ppm', FRACTION],
  battery: share,
};
