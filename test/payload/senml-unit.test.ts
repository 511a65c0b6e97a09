import { describe, expect, it } from 'vitest';
import { type Quantity, quantities, quantityFacts } from '../../daemon/contract/quantity.ts';
import { canonicalValue } from '../../sensors/payload/senml-unit.ts';

/**
 * Symbols and meanings: RFC 8428 (2018), section 12.1. `/100` and `ppm`: RFC 8798 (2020), from
 * memory. 0 °C = 273.15 K by definition.
 */
const fits: [Quantity, number, string, number][] = [
  ['air-temperature', 21.5, 'Cel', 21.5],
  ['air-temperature', 273.15, 'K', 0],
  ['air-temperature', 294.65, 'K', 21.5],
  ['surface-temperature', 263.15, 'K', -10],
  ['relative-humidity', 55.3, '%RH', 55.3],
  // The registry: "%" is an old name of "/", an absolute ratio and not a percentage.
  ['relative-humidity', 0.553, '%', 55.3],
  ['relative-humidity', 0.553, '/', 55.3],
  ['relative-humidity', 55.3, '/100', 55.3],
  ['wood-moisture', 0.182, '/', 18.2],
  ['wood-moisture', 0.182, '%', 18.2],
  ['wood-moisture', 18.2, '/100', 18.2],
  ['wood-resistance', 1e8, 'Ohm', 1e8],
  ['carbon-dioxide', 420, 'ppm', 420],
  ['carbon-dioxide', 0.00042, '/', 420],
  ['battery', 98, '%EL', 98],
  ['battery', 0.98, '/', 98],
  ['battery', 98, '/100', 98],
];

const doesNotFit: [Quantity, string][] = [
  ['air-temperature', '%RH'],
  ['air-temperature', 'degF'],
  ['air-temperature', 'cel'],
  ['air-temperature', '°C'],
  ['air-temperature', ''],
  ['relative-humidity', 'Cel'],
  ['relative-humidity', '%EL'],
  ['wood-moisture', '%RH'],
  ['wood-resistance', 'S'],
  ['wood-resistance', 'MOhm'],
  ['carbon-dioxide', '%'],
  ['battery', 'V'],
  // Battery left in seconds, says the registry.
  ['battery', 'EL'],
  ['battery', '%RH'],
  ['air-temperature', 'constructor'],
  ['air-temperature', '__proto__'],
];

describe('SenML units', () => {
  it.each(fits)('%s %d %s is %d in its own unit', (quantity, value, unit, canonical) => {
    expect(canonicalValue(quantity, value, unit)).toBe(canonical);
  });

  it.each(doesNotFit)('%s is not measured in %j', (quantity, unit) => {
    expect(canonicalValue(quantity, 1, unit)).toBeNull();
  });

  it('without a unit a value is in the unit of its quantity', () => {
    for (const quantity of quantities) expect(canonicalValue(quantity, 12.3, null)).toBe(12.3);
  });

  it('every symbol that a quantity lists can be converted, and the first needs no arithmetic', () => {
    for (const quantity of quantities) {
      const { senmlUnits } = quantityFacts[quantity];
      for (const unit of senmlUnits) expect(canonicalValue(quantity, 0.5, unit)).not.toBeNull();
      expect(canonicalValue(quantity, 0.1 + 0.2, senmlUnits[0] ?? null)).toBe(0.1 + 0.2);
    }
  });
});
