import {
  type CanonicalUnit,
  type Quantity,
  quantityFacts,
} from '../../daemon/contract/quantity.ts';
import type { Said } from '../../daemon/contract/sentence.ts';
import { sentence } from '../../daemon/wording/english.ts';
import type { Inner } from '../../daemon/wording/phrase.ts';
import type { OtherThing } from '../../daemon/wording/subject/payload.ts';
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
const otherThings: ReadonlyMap<string, OtherThing> = new Map<string, OtherThing>([
  ...['V', 'mV', 'volt', 'volts', 'Volt'].map((unit): [string, OtherThing] => [unit, 'voltage']),
  ...['A', 'mA', 'µA'].map((unit): [string, OtherThing] => [unit, 'current']),
  ...['W', 'kW', 'kWh', 'Wh'].map((unit): [string, OtherThing] => [unit, 'power']),
  ...['Pa', 'hPa', 'kPa', 'mbar', 'bar'].map((unit): [string, OtherThing] => [unit, 'pressure']),
  ...['lx', 'lux'].map((unit): [string, OtherThing] => [unit, 'light']),
  ...['s', 'ms', 'min', 'h'].map((unit): [string, OtherThing] => [unit, 'time']),
  ...['m', 'mm', 'cm'].map((unit): [string, OtherThing] => [unit, 'length']),
  ...['g/m³', 'g/m3'].map((unit): [string, OtherThing] => [unit, 'absolute-humidity']),
  ...['dB', 'dBm'].map((unit): [string, OtherThing] => [unit, 'signal']),
  ...(['°C', 'Ω', 'ppm', '%'] as const).flatMap((canonical) =>
    [...(byWord.get(canonical)?.keys() ?? [])].map((word): [string, OtherThing] => [
      word,
      (
        {
          '°C': 'temperature',
          Ω: 'resistance',
          ppm: 'share-of-air',
          '%': 'share',
        } as const
      )[canonical],
    ]),
  ),
  ['mΩ', 'milliohm'],
  ['mohm', 'milliohm'],
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
 * @param where where it stood, to go into a sentence
 */
export function inUnitOf(
  quantity: Quantity,
  value: number,
  unit: string | null,
  where: Inner,
): InUnit {
  if (unit === null) return { kind: 'value', value };
  const known = byWord.get(quantityFacts[quantity].unit)?.get(unit);
  if (known === undefined) {
    const said = unitFault(quantity, unit, where);
    return refuse({ code: 'unit-does-not-fit', detail: said.text, said, quantity });
  }
  const { before, scale } = known;
  if (scale === 1 && before === 0) return { kind: 'value', value };
  return { kind: 'value', value: asDecimal((value + before) * scale) };
}

/**
 * What is wrong with a unit, and what would be right.
 *
 * @param where where it stood; null for the unit of a rule
 */
export function unitFault(quantity: Quantity, unit: string, where: Inner | null): Said {
  const told = { unit: shown(unit), spot: where, quantity, options: unitsOf(quantity) };
  const measures = otherThings.get(unit);
  return measures === undefined
    ? sentence('unit-unfit', told)
    : sentence('unit-unfit/other', { ...told, measures });
}
