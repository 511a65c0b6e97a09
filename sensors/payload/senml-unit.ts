import {
  type CanonicalUnit,
  type Quantity,
  quantityFacts,
} from '../../daemon/contract/quantity.ts';

type Linear = { readonly scale: number; readonly offset: number };
const same: Linear = { scale: 1, offset: 0 };
const ratio: Linear = { scale: 100, offset: 0 };

/**
 * SenML units on their way to the unit a quantity is kept in.
 * `%` is a ratio in SenML, an old name for `/`; per cent is `/100`, `%RH` or `%EL`.
 *
 * **Source:** RFC 8428 (2018), section 12.1; `/100` and `ppm`: RFC 8798 (2020), from memory;
 * 0 °C is 273.15 K by definition (SI brochure, 9th edition, 2.3.1).
 */
const linear: Readonly<Record<CanonicalUnit, ReadonlyMap<string, Linear>>> = {
  '°C': new Map([
    ['Cel', same],
    ['K', { scale: 1, offset: -273.15 }],
  ]),
  '%': new Map([
    ['%RH', same],
    ['%EL', same],
    ['/100', same],
    ['/', ratio],
    ['%', ratio],
  ]),
  Ω: new Map([['Ohm', same]]),
  ppm: new Map([
    ['ppm', same],
    ['/', { scale: 1e6, offset: 0 }],
  ]),
};

/**
 * A value in a SenML unit as a value in the unit of the quantity.
 * @param value any number
 * @param unit SenML symbol; null when the record names none, which means the unit of the quantity
 * @returns null when the unit does not fit the quantity
 */
export function canonicalValue(
  quantity: Quantity,
  value: number,
  unit: string | null,
): number | null {
  if (unit === null) return value;
  const { senmlUnits, unit: canonical } = quantityFacts[quantity];
  const conversion = senmlUnits.includes(unit) ? linear[canonical].get(unit) : undefined;
  if (conversion === undefined) return null;
  return conversion === same ? value : asDecimal(value * conversion.scale + conversion.offset);
}

/**
 * Takes off the last binary digits that arithmetic leaves behind: 294.65 − 273.15 becomes 21.5.
 * @param value any number
 * @returns the value to 12 significant digits, more than any sensor has
 */
export function asDecimal(value: number): number {
  return Number(value.toPrecision(12));
}
