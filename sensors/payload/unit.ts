import {
  type CanonicalUnit,
  type Quantity,
  quantityFacts,
} from '../../daemon/contract/quantity.ts';
import { type Refused, refuse, shown } from './refusal.ts';
import { asDecimal } from './senml-unit.ts';

/** A unit on its way to the one a quantity is kept in: `(number + before) × scale`. */
type Unit = {
  /** The way it is written in a sentence. */
  readonly unit: string;
  /** Other spellings, small and capital letters as they stand. */
  readonly also: readonly string[];
  readonly before: number;
  readonly scale: number;
};

const plain = (unit: string, also: readonly string[], scale = 1, before = 0): Unit => ({
  unit,
  also,
  scale,
  before,
});

/**
 * Units as people and cheap devices write them; `%` is per cent here, other than in SenML.
 *
 * **Source:** 0 °C is 273.15 K, and t/°C = (t/°F − 32)/1.8 (NIST Special Publication 811, 2008,
 * appendix B.8, from memory). Spellings: common practice, no source.
 */
const families: Readonly<Record<CanonicalUnit, readonly Unit[]>> = {
  '°C': [
    plain('°C', ['C', 'degC', 'deg C', '℃', 'Cel', 'celsius', 'Celsius']),
    plain('°F', ['F', 'degF', 'deg F', '℉', 'fahrenheit', 'Fahrenheit'], 5 / 9, -32),
    plain('K', ['kelvin', 'Kelvin'], 1, -273.15),
  ],
  '%': [
    plain('%', ['percent', 'pct', '%RH', '% RH', '%rh', '%rH', '% rh', '%EL', 'Vol%', '%MC']),
    plain('fraction', ['ratio', '/1'], 100),
  ],
  Ω: [
    plain('Ω', ['\u2126', 'ohm', 'Ohm', 'ohms', 'Ohms']),
    plain('kΩ', ['k\u2126', 'KΩ', 'K\u2126', 'kohm', 'kOhm', 'Kohm', 'kiloohm', 'kilohm'], 1e3),
    plain('MΩ', ['M\u2126', 'Mohm', 'MOhm', 'megaohm', 'megohm'], 1e6),
    plain('GΩ', ['G\u2126', 'Gohm', 'GOhm', 'gigaohm'], 1e9),
    plain('TΩ', ['T\u2126', 'Tohm', 'TOhm'], 1e12),
  ],
  ppm: [plain('ppm', ['PPM', 'ppmv']), plain('fraction', ['ratio', '/1'], 1e6)],
};

const byWord: ReadonlyMap<CanonicalUnit, ReadonlyMap<string, Unit>> = new Map(
  (Object.keys(families) as CanonicalUnit[]).map((canonical) => [
    canonical,
    new Map(
      families[canonical].flatMap((unit) =>
        [unit.unit, ...unit.also].map((word): [string, Unit] => [word, unit]),
      ),
    ),
  ]),
);

/** What units of other things measure, so that a refusal can say so. */
const otherThings: ReadonlyMap<string, string> = new Map([
  ...['V', 'mV', 'volt', 'volts', 'Volt'].map((unit): [string, string] => [unit, 'a voltage']),
  ...['A', 'mA', 'µA'].map((unit): [string, string] => [unit, 'a current']),
  ...['W', 'kW', 'kWh', 'Wh'].map((unit): [string, string] => [unit, 'power or energy']),
  ...['Pa', 'hPa', 'kPa', 'mbar', 'bar'].map((unit): [string, string] => [unit, 'a pressure']),
  ...['lx', 'lux'].map((unit): [string, string] => [unit, 'light']),
  ...['s', 'ms', 'min', 'h'].map((unit): [string, string] => [unit, 'a time']),
  ...['m', 'mm', 'cm'].map((unit): [string, string] => [unit, 'a length']),
  ...['g/m³', 'g/m3'].map((unit): [string, string] => [unit, 'absolute humidity']),
  ...['dB', 'dBm'].map((unit): [string, string] => [unit, 'a signal level']),
  ...(['°C', 'Ω', 'ppm', '%'] as const).flatMap((canonical) =>
    [...(byWord.get(canonical)?.keys() ?? [])].map((word): [string, string] => [
      word,
      {
        '°C': 'a temperature',
        Ω: 'a resistance',
        ppm: 'a share of the air',
        '%': 'a percentage or share',
      }[canonical],
    ]),
  ),
  ['mΩ', 'a thousandth of an ohm, hardly a million'],
  ['mohm', 'a thousandth of an ohm, hardly a million'],
]);

export type InUnit = { readonly kind: 'value'; readonly value: number } | Refused;

/** Whether a unit, in any of its spellings, fits a quantity. */
export function unitFits(quantity: Quantity, unit: string): boolean {
  return byWord.get(quantityFacts[quantity].unit)?.has(unit) === true;
}

/** The units that fit a quantity, each in one spelling; the first is the one it is kept in. */
export function unitsOf(quantity: Quantity): string[] {
  return families[quantityFacts[quantity].unit].map(({ unit }) => unit);
}

/**
 * A value in any unit as a value in the unit of its quantity.
 *
 * @param value any number
 * @param unit as written; null means the unit of the quantity
 * @param where to go after "the unit …" in a sentence, for example `in the payload`
 */
export function inUnitOf(
  quantity: Quantity,
  value: number,
  unit: string | null,
  where: string,
): InUnit {
  if (unit === null) return { kind: 'value', value };
  const known = byWord.get(quantityFacts[quantity].unit)?.get(unit);
  if (known === undefined) {
    return refuse({
      code: 'unit-does-not-fit',
      detail: `The unit ${shown(unit)} ${where} ${unitFault(quantity, unit)}`,
      quantity,
    });
  }
  const { before, scale } = known;
  if (scale === 1 && before === 0) return { kind: 'value', value };
  return { kind: 'value', value: asDecimal((value + before) * scale) };
}

/** What is wrong with a unit and what would be right, to go after "the unit …" in a sentence. */
export function unitFault(quantity: Quantity, unit: string): string {
  const other = otherThings.get(unit);
  const { words } = quantityFacts[quantity];
  return `${other === undefined ? 'is not known here and' : `means ${other} and`} does not fit ${words}; use ${unitsOf(quantity).join(' or ')}.`;
}
