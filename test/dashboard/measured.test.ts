import { describe, expect, it } from 'vitest';
import { measured } from '../../dashboard/format/measured.ts';

// SI prefixes (SI brochure, 9th edition, table 7): k is 10³, M is 10⁶, G is 10⁹.
describe('a reading in words', () => {
  it.each([
    [850, '850 Ω'],
    [820_000, '820 kΩ'],
    [55_384_615.4, '55.4 MΩ'],
    [1.2e9, '1.2 GΩ'],
    [9e11, '900 GΩ'],
  ])('%d ohms are %s', (ohms, words) => {
    expect(measured('wood-resistance', ohms)).toBe(words);
  });

  it('leaves every other quantity in its own unit', () => {
    expect(measured('air-temperature', -3.25)).toBe('−3.25 °C');
    expect(measured('carbon-dioxide', 1200)).toBe('1,200 ppm');
  });
});
