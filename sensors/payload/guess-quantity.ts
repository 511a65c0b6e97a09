import { type Quantity, quantityFacts } from '../../daemon/contract/quantity.ts';
import { inPayload } from './refusal.ts';
import { inUnitOf, unitFits } from './unit.ts';

/** What a number in a message may be. */
export type Guess = {
  readonly quantity: Quantity;
  readonly unit: string | null;
  readonly scale: number;
  /** In the unit of the quantity. */
  readonly value: number;
};

/* Words that devices use, in small letters. Common practice, no source. */
const quantityWords: readonly (readonly [Quantity, readonly string[]])[] = [
  ['carbon-dioxide', ['co2', 'eco2', 'carbondioxide', 'dioxide']],
  ['wood-moisture', ['moisture', 'woodmoisture', 'mc', 'holzfeuchte', 'fuktkvot']],
  ['wood-resistance', ['resistance', 'ohm', 'ohms', 'kohm', 'mohm', 'gohm', 'widerstand']],
  ['battery', ['battery', 'batt', 'bat', 'batterylevel', 'soc', 'batterie', 'batteri']],
  [
    'relative-humidity',
    ['humidity', 'humi', 'hum', 'humid', 'rh', 'h', 'feuchte', 'luftfeuchte', 'fukt'],
  ],
  [
    'air-temperature',
    ['temperature', 'temp', 'tmp', 't', 'temperatur', 'celsius', 'fahrenheit', 'tempc', 'tempf'],
  ],
];
const surfaceWords = ['surface', 'board', 'boards', 'wall', 'ir', 'object'];
/** A number of that name is none of ours, whatever else it says. */
const otherWords = new Set(
  'voltage volt volts mv vbat vcc rssi lqi snr signal pressure press lux light illuminance counter count seq sequence uptime interval id ts time timestamp dew dewpoint heatindex setpoint target min max low high offset calibration version fw port channel index lat lon latitude longitude altitude power energy current frequency'.split(
    ' ',
  ),
);

const unitWords: readonly (readonly [string, readonly string[]])[] = [
  ['°F', ['f', 'fahrenheit', 'degf', 'tempf']],
  ['K', ['k', 'kelvin', 'degk']],
  ['kΩ', ['kohm', 'kohms', 'kiloohm']],
  ['MΩ', ['mohm', 'mohms', 'megaohm', 'megohm']],
  ['GΩ', ['gohm', 'gohms', 'gigaohm']],
];

/** The words of a name: `tempC`, `temp_c` and `temp-c` are two words. */
export function wordsOf(name: string): string[] {
  return name
    .slice(0, 80)
    .replaceAll(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '');
}

/** The quantity that a name speaks of; `other` when it clearly speaks of something else. */
export function quantityNamed(name: string): Quantity | 'other' | null {
  const words = wordsOf(name);
  // `t1` and `temp2` are a first and a second one.
  const bare = words.map((word) =>
    word === 'co2' || word === 'eco2' ? word : word.replace(/\d+$/, ''),
  );
  if (bare.some((word) => otherWords.has(word))) return 'other';
  for (const [quantity, known] of quantityWords) {
    if (!bare.some((word) => known.includes(word))) continue;
    const isSurface = bare.some((word) => surfaceWords.includes(word));
    return quantity === 'air-temperature' && isSurface ? 'surface-temperature' : quantity;
  }
  return null;
}

/**
 * Guesses what a number is.
 *
 * @param names from the nearest on: the key it stands at, then what lies around that, then the topic
 * @param unit written beside the number; null for none
 */
export function guessed(
  names: readonly string[],
  number: number,
  unit: string | null,
): Guess | null {
  for (const name of names) {
    const quantity = quantityNamed(name);
    if (quantity === 'other') return null;
    if (quantity === null) continue;
    if (unit !== null) return unitFits(quantity, unit) ? valued(quantity, number, unit, 1) : null;
    const words = wordsOf(name);
    const named = unitWords.find(
      ([symbol, known]) => unitFits(quantity, symbol) && words.some((word) => known.includes(word)),
    );
    if (named !== undefined) return valued(quantity, number, named[0], 1);
    return bySize(quantity, number);
  }
  if (unit === null) return null;
  // A unit alone tells enough where only one thing is measured in it.
  const telling: readonly Quantity[] = ['air-temperature', 'wood-resistance', 'carbon-dioxide'];
  const quantity = telling.find((one) => unitFits(one, unit) && unit !== 'fraction');
  return quantity === undefined ? null : valued(quantity, number, unit, 1);
}

/** Tells unit and scale by the size of a number, where that is telling. Assumptions throughout. */
function bySize(quantity: Quantity, number: number): Guess | null {
  const isWhole = Number.isInteger(number);
  const as = (unit: string | null, scale = 1) => valued(quantity, number, unit, scale);
  switch (quantity) {
    case 'air-temperature':
    case 'surface-temperature':
      if (Math.abs(number) <= 60) return as(null);
      if (isWhole && Math.abs(number) > 600) return as(null, 0.01);
      if (isWhole && Math.abs(number) > 130) return as(null, 0.1);
      if (number >= 220) return as('K');
      return as('°F');
    case 'relative-humidity':
    case 'wood-moisture':
      if (number > 0 && number < 1) return as('fraction');
      if (isWhole && number > 1000) return as(null, 0.01);
      if (isWhole && number > 110) return as(null, 0.1);
      return as(null);
    case 'battery':
      // Between one and five it is most likely the voltage of a cell.
      if (number > 0 && number < 1) return as('fraction');
      return isWhole && number <= 100 ? as(null) : number > 5 ? as(null) : null;
    case 'carbon-dioxide':
      return number > 0 && number < 0.05 ? as('fraction') : as(null);
    case 'wood-resistance':
      return as(null);
  }
}

function valued(
  quantity: Quantity,
  number: number,
  unit: string | null,
  scale: number,
): Guess | null {
  const read = inUnitOf(quantity, number * scale, unit, inPayload);
  if (read.kind === 'refused') return null;
  const { low, high } = quantityFacts[quantity];
  const value = Number(read.value.toPrecision(12));
  return value >= low && value <= high ? { quantity, unit, scale, value } : null;
}
