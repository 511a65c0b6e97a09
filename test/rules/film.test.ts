import { describe, expect, it } from 'vitest';
import { defaultPlans } from '../../daemon/rules/coating-plan.ts';
import { filmFactor } from '../../daemon/rules/film.ts';

describe('the film of a coat', () => {
  it('is as planned when nobody said what was used', () => {
    expect(filmFactor(false, 50, null, 10)).toBe(1);
  });
  it('needs more in proportion when more was used on the same boards', () => {
    expect(filmFactor(false, 50, 6, 10)).toBeCloseTo(1.2, 12);
  });
  it('is held within half and double', () => {
    expect(filmFactor(false, 50, 100, 10)).toBe(2);
    expect(filmFactor(false, 50, 0.1, 10)).toBe(0.5);
  });
  it('is left alone for a primer, which sinks in', () => {
    expect(filmFactor(true, 50, 6, 10)).toBe(1);
  });
});

describe('the plan that a site starts with', () => {
  // Common practice, no source.
  it('is a thinned primer all round, a second coat with turpentine, an undiluted last coat', () => {
    for (const { coats } of defaultPlans) {
      expect(coats.map((coat) => Object.values(coat.mixture))).toEqual([
        [35, 50, 15],
        [100, 0, 15],
        [100, 0, 0],
      ]);
      expect(coats[0]?.faces).toEqual(['face', 'back', 'edges', 'ends']);
      expect(coats[0]?.soaksIn).toBe(true);
    }
    expect(defaultPlans.map((plan) => plan.surface)).toEqual(['sawn', 'planed']);
  });
});
