import { describe, expect, it } from 'vitest';
import { saltHumidity, salts } from '../../daemon/science/saturated-salts.ts';
import { CONSTANT_HUMIDITY_FITS, SODIUM_CHLORIDE_1954 } from '../published/salt-fixed-points.ts';

describe('the humidity over a saturated salt', () => {
  it.each(CONSTANT_HUMIDITY_FITS)(
    'lies within the ±2 % of the handbook’s fit: $salt',
    ({ salt, a, b, fromC, toC }) => {
      for (let tempC = fromC; tempC <= toC; tempC++) {
        const fit = a * Math.exp(b / (tempC + 273.15));
        expect(Math.abs(saltHumidity(salt, tempC) - fit), `${tempC} °C`).toBeLessThan(2);
      }
    },
  );

  it('agrees with the older measurement of sodium chloride within 0.7 %', () => {
    for (const [tempC, percent] of SODIUM_CHLORIDE_1954) {
      expect(Math.abs(saltHumidity('sodium-chloride', tempC) - percent)).toBeLessThan(0.7);
    }
  });

  it('is 75.3 % over sodium and 32.8 % over magnesium chloride at 25 °C', () => {
    expect(saltHumidity('sodium-chloride', 25)).toBeCloseTo(75.3, 1);
    expect(saltHumidity('magnesium-chloride', 25)).toBeCloseTo(32.8, 1);
  });

  it('changes by less than 2 % from one column to the next, so that no digit is turned round', () => {
    for (const salt of salts) {
      for (let tempC = 5; tempC <= 40; tempC += 5) {
        expect(Math.abs(saltHumidity(salt, tempC) - saltHumidity(salt, tempC - 5))).toBeLessThan(2);
      }
    }
  });

  it('is refused beyond the table', () => {
    expect(() => saltHumidity('sodium-chloride', 41)).toThrow(RangeError);
  });
});
