import { describe, expect, it } from 'vitest';
import { whitening } from '../../daemon/science/drifting-noise.ts';

const HOUR = 3_600_000;

describe('noise with a slow part', () => {
  it('is whitened as its covariance says: same quadratic form, same determinant', () => {
    // white variance 1, slow variance 3 with a memory of 2 h, at 0, 1 and 4 h
    const filter = whitening([0, HOUR, 4 * HOUR], { timescaleHours: 2, ratio: 3 });
    const [a, b, c] = [3 * Math.exp(-0.5), 3 * Math.exp(-2), 3 * Math.exp(-1.5)];
    // V = [[4, a, b], [a, 4, c], [b, c, 4]] by hand
    const determinant = 4 * (16 - c * c) - a * (4 * a - b * c) + b * (a * c - 4 * b);
    expect(filter.lnVariance).toBeCloseTo(Math.log(determinant), 12);
    const y = [1, -2, 0.5] as const;
    const adjugate = [
      [16 - c * c, b * c - 4 * a, a * c - 4 * b],
      [b * c - 4 * a, 16 - b * b, a * b - 4 * c],
      [a * c - 4 * b, a * b - 4 * c, 16 - a * a],
    ] as const;
    let form = 0;
    adjugate.forEach((row, i) => {
      row.forEach((value, k) => {
        form += (y[i] ?? 0) * value * (y[k] ?? 0);
      });
    });
    const white = filter.apply(y);
    expect(white.reduce((sum, value) => sum + value * value, 0)).toBeCloseTo(
      form / determinant,
      12,
    );
  });

  it('without a slow part is left as it is', () => {
    const filter = whitening([0, HOUR], { timescaleHours: 1, ratio: 0 });
    expect([...filter.apply([3, -4])]).toEqual([3, -4]);
    expect(filter.lnVariance).toBe(0);
  });
});
