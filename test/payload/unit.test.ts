import { describe, expect, it } from 'vitest';
import { type Quantity, quantities, quantityFacts } from '../../daemon/contract/quantity.ts';
import { numberInText } from '../../sensors/payload/plain-number.ts';
import { inPayload, thePayload } from '../../sensors/payload/refusal.ts';
import { inUnitOf, unitFits, unitsOf } from '../../sensors/payload/unit.ts';

const read = (text: string, quantity: Quantity, bare?: { unit: string | null; scale: number }) => {
  const number = numberInText(text, quantity, thePayload, bare);
  return number.kind === 'value'
    ? number.value
    : `${number.refusal.code}: ${number.refusal.detail}`;
};

describe('a unit beside a number', () => {
  // Fixed points of the scales: water freezes at 32 °F and boils at 212 °F; −40 is the same in both
  // (NIST Special Publication 811, 2008, appendix B.8, from memory). 0 °C is 273.15 K by definition.
  it.each<[string, Quantity, number]>([
    ['32 °F', 'air-temperature', 0],
    ['212°F', 'surface-temperature', 100],
    ['-40 degF', 'air-temperature', -40],
    ['77 F', 'air-temperature', 25],
    ['70,7 ℉', 'air-temperature', 21.5],
    ['273.15 K', 'air-temperature', 0],
    ['294,65 kelvin', 'air-temperature', 21.5],
    ['21.5 ℃', 'air-temperature', 21.5],
    ['55.5%', 'relative-humidity', 55.5],
    ['55,5 %RH', 'relative-humidity', 55.5],
    ['0.555 fraction', 'relative-humidity', 55.5],
    ['18 %', 'wood-moisture', 18],
    ['93 %', 'battery', 93],
    ['0,93 fraction', 'battery', 93],
    ['470 kΩ', 'wood-resistance', 470e3],
    ['4.7 MΩ', 'wood-resistance', 4.7e6],
    ['1,2 GΩ', 'wood-resistance', 1.2e9],
    ['1.2 G\u2126', 'wood-resistance', 1.2e9],
    ['820 Mohm', 'wood-resistance', 820e6],
    ['100 ohm', 'wood-resistance', 100],
    ['612 ppm', 'carbon-dioxide', 612],
    ['6.12e-4 fraction', 'carbon-dioxide', 612],
  ])('%s of %s is %d', (text, quantity, value) => {
    expect(read(text, quantity)).toBe(value);
  });

  it.each<[string, Quantity, string]>([
    ['3.1 V', 'air-temperature', 'a voltage'],
    ['3100 mV', 'battery', 'a voltage'],
    ['21.5 °C', 'relative-humidity', 'a temperature'],
    ['55 %', 'air-temperature', 'a percentage'],
    ['1013 hPa', 'air-temperature', 'a pressure'],
    ['470 mΩ', 'wood-resistance', 'a thousandth of an ohm'],
    ['12 furlong', 'wood-moisture', 'not known here'],
    ['21.5 c', 'air-temperature', 'not known here'],
  ])('%s is no %s: the refusal names what it is and what would fit', (text, quantity, what) => {
    const refusal = String(read(text, quantity));
    expect(refusal).toMatch(/^unit-does-not-fit: The unit "/);
    expect(refusal).toContain(what);
    expect(refusal).toContain(`use ${unitsOf(quantity).join(' or ')}.`);
  });

  it('is the unit of the quantity in its first spelling, for every quantity', () => {
    for (const quantity of quantities) {
      const { unit } = quantityFacts[quantity];
      expect(unitsOf(quantity)[0]).toBe(unit);
      expect(inUnitOf(quantity, 7, unit, inPayload)).toEqual({ kind: 'value', value: 7 });
      expect(unitFits(quantity, '__proto__') || unitFits(quantity, 'constructor')).toBe(false);
    }
  });

  it('in the text goes before the one that the rule gives to bare numbers', () => {
    const fahrenheit = { unit: '°F', scale: 1 };
    expect(read('70.7', 'air-temperature', fahrenheit)).toBe(21.5);
    expect(read('21.5 °C', 'air-temperature', fahrenheit)).toBe(21.5);
    expect(read('217', 'air-temperature', { unit: null, scale: 0.1 })).toBe(21.7);
  });
});

describe('a decimal comma', () => {
  it.each<[string, Quantity, number]>([
    ['21,5', 'air-temperature', 21.5],
    ['21,375', 'air-temperature', 21.375],
    ['55,125', 'relative-humidity', 55.125],
    ['0,125', 'carbon-dioxide', 0.125],
    ['1234,5', 'carbon-dioxide', 1234.5],
    [',5', 'battery', 0.5],
  ])('%s of %s is %d', (text, quantity, value) => {
    expect(read(text, quantity)).toBe(value);
  });

  it.each<[string, Quantity]>([
    ['1,234 ppm', 'carbon-dioxide'],
    ['1,234', 'wood-resistance'],
    ['12,500 kΩ', 'wood-resistance'],
  ])('is refused in %s of %s, which could as well be thousands', (text, quantity) => {
    expect(read(text, quantity)).toMatch(/payload-not-a-number: .* can mean .* or .*; send it/);
  });
});
