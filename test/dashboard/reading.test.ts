import { describe, expect, it } from 'vitest';
import { createFigures } from '../../dashboard/format/reader-figures.ts';
import { correction, reading, shift, unitOfShift } from '../../dashboard/format/reading.ts';

const metric = { figures: createFigures('en-GB', 'metric'), units: 'metric' } as const;
const us = { figures: createFigures('en-US', 'us'), units: 'us' } as const;
const german = { figures: createFigures('de-DE', 'metric'), units: 'metric' } as const;

// SI prefixes (SI brochure, 9th edition, table 7): k is 10³, M is 10⁶, G is 10⁹.
describe('a reading in words', () => {
  it.each([
    [850, '850 Ω'],
    [820_000, '820 kΩ'],
    [55_384_615.4, '55.4 MΩ'],
    [1.2e9, '1.2 GΩ'],
    [9e11, '900 GΩ'],
  ])('%d ohms are %s', (ohms, words) => {
    expect(reading('wood-resistance', ohms, metric)).toBe(words);
  });

  it('leaves every other quantity in its own unit', () => {
    expect(reading('air-temperature', -3.25, metric)).toBe('−3.25 °C');
    expect(reading('carbon-dioxide', 1200, metric)).toBe('1,200 ppm');
  });

  it('is in the reader’s figures and units', () => {
    // Fahrenheit by its definition: 100 °C are 212 °F.
    expect(reading('air-temperature', 100, us)).toBe('212 °F');
    expect(reading('relative-humidity', 55.5, us)).toBe('55.5 %');
    expect(reading('surface-temperature', 18.4, german)).toBe('18,4 °C');
  });
});

describe('how far readings lie apart', () => {
  it('has a sign, and no zero of a scale in it', () => {
    expect(shift('air-temperature', 0.3, metric)).toBe('+0.30');
    expect(shift('air-temperature', -0.5, us)).toBe('−0.90');
    expect(shift('relative-humidity', -2, us)).toBe('−2.00');
    expect(unitOfShift('air-temperature', us)).toBe('°F');
  });
});

describe('a calibration', () => {
  it('is an offset, a line, or of resistances a factor', () => {
    expect(correction('air-temperature', 1, 0.3, metric)).toBe('+0.30 K');
    expect(correction('relative-humidity', 1.02, -1.5, metric)).toBe('× 1.020 −1.50 %');
    expect(correction('wood-resistance', 1, Math.log10(1.05), metric)).toBe('× 1.05');
  });

  it('says in °F a line that leads to the same temperature', () => {
    // By hand: 20 °C (68 °F) through × 1.1 − 1 is 21 °C, 69.8 °F; and 1.1 × 68 − 5 = 69.8.
    expect(correction('air-temperature', 1.1, -1, us)).toBe('× 1.100 −5.00 °F');
  });
});
