import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { thinOut } from '../../daemon/rules/thin-out.ts';

describe('a thinned curve', () => {
  it('keeps the extremes, the order and at most the points asked for', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -50, max: 50, noNaN: true }), { minLength: 1, maxLength: 300 }),
        fc.integer({ min: 2, max: 50 }),
        (values, count) => {
          const points = values.map((value, at) => ({ at, value }));
          const kept = thinOut(points, count);
          expect(kept.length).toBeLessThanOrEqual(Math.max(count, 2));
          expect(Math.max(...kept.map((one) => one.value))).toBe(Math.max(...values));
          expect(Math.min(...kept.map((one) => one.value))).toBe(Math.min(...values));
          for (let i = 1; i < kept.length; i++) {
            expect(kept[i]?.at).toBeGreaterThan(kept[i - 1]?.at ?? Number.NaN);
          }
        },
      ),
    );
  });
});
