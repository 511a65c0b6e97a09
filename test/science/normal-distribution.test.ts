import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  logNormalBetween,
  logNormalCdf,
  logNormalDensity,
  normalCdf,
} from '../../daemon/science/normal-distribution.ts';
import { NORMAL_CDF, NORMAL_QUANTILES, NORMAL_TAIL_LOG10 } from '../published/normal-table.ts';

/** Φ(z) by the power series about 0: another road, good for |z| up to 6. */
function seriesCdf(z: number): number {
  let term = z;
  let sum = z;
  for (let k = 1; k < 200; k++) {
    term *= (z * z) / (2 * k + 1);
    sum += term;
  }
  return 0.5 + Math.exp(-0.5 * z * z - 0.9189385332046727) * sum;
}

describe('the normal distribution', () => {
  it.each(NORMAL_CDF)('below %d holds %d, as printed', (z, probability) => {
    expect(normalCdf(z)).toBeCloseTo(probability, 14);
    expect(normalCdf(-z)).toBeCloseTo(1 - probability, 14);
  });

  it.each(NORMAL_QUANTILES)('has its %d point at %d', (probability, z) => {
    expect(normalCdf(z)).toBeCloseTo(probability, 14);
  });

  it.each(NORMAL_TAIL_LOG10)('beyond %d holds 10^−%d, as printed', (z, minusLog10) => {
    expect(-logNormalCdf(-z) / Math.LN10).toBeCloseTo(minusLog10, 5);
    if (z < 38) expect(-Math.log10(normalCdf(-z))).toBeCloseTo(minusLog10, 5);
  });

  it('is its own power series between −6 and 6', () => {
    for (let z = -6; z <= 6; z += 0.01) {
      expect(Math.abs(normalCdf(z) - seriesCdf(z))).toBeLessThan(2e-14);
    }
  });

  it('has a density that is the slope of its probability', () => {
    for (let z = -5; z <= 5; z += 0.25) {
      const slope = (normalCdf(z + 1e-4) - normalCdf(z - 1e-4)) / 2e-4;
      expect(Math.exp(logNormalDensity(z)) / slope).toBeCloseTo(1, 6);
    }
  });

  it('between two values is the difference of both sides, in either tail', () => {
    const value = fc.double({ min: -60, max: 60, noNaN: true });
    fc.assert(
      fc.property(value, fc.double({ min: 1e-3, max: 5, noNaN: true }), (low, width) => {
        const inside = logNormalBetween(low, low + width);
        expect(inside).toBeLessThanOrEqual(0);
        expect(Number.isFinite(inside)).toBe(true);
        // mirror image
        expect(logNormalBetween(-low - width, -low)).toBeCloseTo(inside, 8);
        if (Math.abs(low) < 4) {
          const plain = normalCdf(low + width) - normalCdf(low);
          expect(Math.exp(inside)).toBeCloseTo(plain, 12);
        }
      }),
    );
    expect(logNormalBetween(Number.NEGATIVE_INFINITY, 1)).toBe(logNormalCdf(1));
    expect(logNormalBetween(1, Number.POSITIVE_INFINITY)).toBe(logNormalCdf(-1));
  });
});
