import { describe, expect, it } from 'vitest';
import { Quantity, quantities, quantityFacts } from '../../daemon/contract/quantity.ts';

describe('the table of quantities', () => {
  it('has one row for each quantity, in their order', () => {
    expect(Object.keys(quantityFacts)).toEqual([...quantities]);
    expect(Quantity.options).toEqual([...quantities]);
  });

  it('has limits in order and units for each', () => {
    for (const { low, high, unit, senmlUnits } of Object.values(quantityFacts)) {
      expect(low).toBeLessThan(high);
      expect(unit).not.toBe('');
      expect(senmlUnits.length).toBeGreaterThan(0);
    }
  });

  it('leaves room for the wettest wood and the driest probe', () => {
    // Wood Handbook chapter 4, green sapwood about 250 % (from memory); Nordic resistance curve:
    // Scots pine at 8 % moisture is 27 GΩ.
    expect(quantityFacts['wood-moisture'].high).toBeGreaterThan(250);
    expect(quantityFacts['wood-resistance'].high).toBeGreaterThan(27e9);
  });

  it('stops the codes by which sensors report a fault', () => {
    // Common practice, no source: −127 °C and 65,535 are what a lost sensor shows.
    expect(quantityFacts['air-temperature'].low).toBeGreaterThan(-127);
    expect(quantityFacts['relative-humidity'].high).toBeLessThan(65_535);
  });
});
