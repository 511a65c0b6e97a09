import type { Quantity } from '../../daemon/contract/quantity.ts';
import type { PayloadKind, RuleTimeFormat } from '../../daemon/contract/topic-rule.ts';

export const payloadWords: Readonly<Record<PayloadKind, string>> = {
  text: 'A number as text',
  json: 'JSON',
  senml: 'SenML',
};

export const timeWords: Readonly<Record<RuleTimeFormat, string>> = {
  any: 'tell by itself',
  iso: 'ISO 8601',
  'epoch-s': 'seconds since 1970',
  'epoch-ms': 'milliseconds since 1970',
  'age-s': 'seconds ago',
  'age-ms': 'milliseconds ago',
};

const temperature = ['°C', '°F', 'K'];
const share = ['%', 'fraction'];

/** Units that the daemon knows for a quantity; the first is the one it is kept in. */
export const unitWords: Readonly<Record<Quantity, readonly string[]>> = {
  'air-temperature': temperature,
  'relative-humidity': share,
  'surface-temperature': temperature,
  'wood-moisture': share,
  'wood-resistance': ['Ω', 'kΩ', 'MΩ', 'GΩ', 'TΩ'],
  'carbon-dioxide': ['ppm', 'fraction'],
  battery: share,
};
