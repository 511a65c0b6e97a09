import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  fitRequirement,
  probabilityReached,
  quantileReached,
  type TouchTest,
} from '../../daemon/science/touch.ts';

const PRIOR = { p10: 720, p90: 1080 };
const times = (count: number, test: TouchTest) => Array.from({ length: count }, () => test);

describe('what a stage needs, before any test', () => {
  it.each([
    { p10: 720, p90: 1080 },
    { p10: 100, p90: 130 },
    { p10: 50, p90: 5000 },
  ])('is the 10 and 90 % points it was given: $p10 and $p90 °C·h', (prior) => {
    const requirement = fitRequirement([], prior);
    expect(Math.abs(requirement.p10 / prior.p10 - 1)).toBeLessThan(0.001);
    expect(Math.abs(requirement.p90 / prior.p90 - 1)).toBeLessThan(0.001);
    expect(requirement.p50).toBeCloseTo(Math.sqrt(prior.p10 * prior.p90), 0);
    expect(probabilityReached(requirement, prior.p90)).toBeCloseTo(0.9, 4);
    expect(probabilityReached(requirement, prior.p10)).toBeCloseTo(0.1, 4);
  });

  it('is hardly moved by a test that says next to nothing', () => {
    const requirement = fitRequirement([{ failedAt: 1 }, { passedAt: 1e6 }, {}], PRIOR);
    expect(Math.abs(requirement.p10 / 720 - 1)).toBeLessThan(0.002);
    expect(Math.abs(requirement.p90 / 1080 - 1)).toBeLessThan(0.002);
  });
});

describe('what a stage needs, learned', () => {
  it('moves towards the tests and narrows with 1, 3 and 10 of them', () => {
    const test = { failedAt: 1300, passedAt: 1500 };
    const [one, three, ten] = [1, 3, 10].map((count) => fitRequirement(times(count, test), PRIOR));
    const width = (fit = one) => Math.log((fit?.p90 ?? 0) / (fit?.p10 ?? 1));
    expect(one?.p50).toBeGreaterThan(900);
    expect(three?.p50).toBeGreaterThan(one?.p50 ?? 0);
    expect(three?.p50).toBeGreaterThan(1300);
    expect(ten?.p50).toBeGreaterThan(1330);
    expect(ten?.p50).toBeLessThan(1450);
    expect(width(three)).toBeLessThan(width(one));
    expect(width(ten)).toBeLessThan(width(three));
  });

  it('lies higher after a failed test and lower after a passed one', () => {
    expect(fitRequirement([{ failedAt: 900 }], PRIOR).p50).toBeGreaterThan(890);
    expect(fitRequirement([{ passedAt: 850 }], PRIOR).p50).toBeLessThan(870);
  });

  it('takes failed and passed at one sum as an exact observation', () => {
    const exact = fitRequirement([{ failedAt: 800, passedAt: 800 }], PRIOR);
    const close = fitRequirement([{ failedAt: 799.5, passedAt: 800.5 }], PRIOR);
    expect(exact.p50 / close.p50).toBeCloseTo(1, 4);
  });

  it('does not depend on the order of the tests', () => {
    const tests = [{ failedAt: 500 }, { passedAt: 900 }, { failedAt: 700, passedAt: 800 }];
    const forward = fitRequirement(tests, PRIOR);
    const backward = fitRequirement([...tests].reverse(), PRIOR);
    expect(backward.p90 / forward.p90).toBeCloseTo(1, 9);
  });

  it('stays finite far out in the tails', () => {
    for (const test of [
      { failedAt: 30_000 },
      { passedAt: 5 },
      { failedAt: 9000, passedAt: 9001 },
    ]) {
      const { p10, p50, p90 } = fitRequirement([test], PRIOR);
      expect(Number.isFinite(p10 + p50 + p90)).toBe(true);
      expect(p10).toBeLessThan(p50);
      expect(p50).toBeLessThan(p90);
    }
  });

  it('is plain data that survives being written down', () => {
    const requirement = fitRequirement([{ failedAt: 610, passedAt: 760 }], PRIOR);
    const copy = JSON.parse(JSON.stringify(requirement));
    expect(probabilityReached(copy, 800)).toBe(probabilityReached(requirement, 800));
    expect(requirement.weight.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
  });
});

describe('the probability that a coat is there', () => {
  const sums = fc.double({ min: 0, max: 5000, noNaN: true });
  const tests = fc.array(
    fc
      .record({
        failedAt: fc.double({ min: 300, max: 1500, noNaN: true }),
        width: fc.double({ min: 1, max: 400, noNaN: true }),
      })
      .map(({ failedAt, width }) => ({ failedAt, passedAt: failedAt + width })),
    { maxLength: 4 },
  );

  it('never falls as the sum grows, whatever the tests, and lies between 0 and 1', () => {
    fc.assert(
      fc.property(tests, sums, fc.double({ min: 0, max: 500, noNaN: true }), (list, sum, more) => {
        const requirement = fitRequirement(list, PRIOR);
        const before = probabilityReached(requirement, sum);
        const after = probabilityReached(requirement, sum + more);
        expect(before).toBeGreaterThanOrEqual(0);
        expect(after).toBeLessThanOrEqual(1);
        expect(after).toBeGreaterThanOrEqual(before - 1e-12);
      }),
      { numRuns: 40 },
    );
  });

  it('is undone by the sum at that probability, to 1e-6', () => {
    const requirement = fitRequirement([{ failedAt: 610, passedAt: 760 }], PRIOR);
    for (const failedAt of [undefined, 500, 900, 20_000]) {
      for (const probability of [0.001, 0.1, 0.5, 0.9, 0.999]) {
        const sum = quantileReached(requirement, probability, { failedAt });
        const below = probabilityReached(requirement, sum * (1 - 1e-6), { failedAt });
        const above = probabilityReached(requirement, sum * (1 + 1e-6), { failedAt });
        expect(below).toBeLessThanOrEqual(probability);
        expect(above).toBeGreaterThanOrEqual(probability);
      }
    }
  });

  it('is nought up to the sum at which this coat failed, and less than without beyond it', () => {
    const requirement = fitRequirement([], PRIOR);
    expect(probabilityReached(requirement, 900, { failedAt: 900 })).toBe(0);
    const plain = probabilityReached(requirement, 1000);
    const truncated = probabilityReached(requirement, 1000, { failedAt: 900 });
    expect(truncated).toBeLessThan(plain);
    // (F(1000) − F(900)) / (1 − F(900)) by hand
    const failed = probabilityReached(requirement, 900);
    expect(truncated).toBeCloseTo((plain - failed) / (1 - failed), 9);
    expect(probabilityReached(requirement, 1000, { failedAt: undefined })).toBe(plain);
  });

  it('stays between 0 and 1 after a test that failed far beyond anything known', () => {
    const requirement = fitRequirement([], PRIOR);
    const later = probabilityReached(requirement, 2e8, { failedAt: 1e8 });
    expect(later).toBeGreaterThan(0);
    expect(later).toBeLessThanOrEqual(1);
  });

  it('for the slowest tenth of boards lags behind the middling board', () => {
    const requirement = fitRequirement([], PRIOR);
    const spread = { boardSpread: 0.1 };
    const factor = Math.exp(0.1 * 1.2815515655446004);
    expect(quantileReached(requirement, 0.9, spread)).toBeCloseTo(1080 * factor, 0);
    expect(probabilityReached(requirement, 1080, spread)).toBeLessThan(0.9);
  });
});

describe('nonsense is refused by name, value and range', () => {
  const requirement = fitRequirement([], PRIOR);
  it.each([
    [
      'failedAt is 900; allowed: 0',
      () => fitRequirement([{ failedAt: 900, passedAt: 800 }], PRIOR),
    ],
    ['failedAt is NaN', () => fitRequirement([{ failedAt: Number.NaN }], PRIOR)],
    ['passedAt is 0; allowed: above 0', () => fitRequirement([{ passedAt: 0 }], PRIOR)],
    ['p90 is 700; allowed: 800', () => fitRequirement([], { p10: 800, p90: 700 })],
    ['p10 is 0; allowed: above 0', () => fitRequirement([], { p10: 0, p90: 700 })],
    ['degreeHours is -1; allowed: 0', () => probabilityReached(requirement, -1)],
    ['failedAt is -1', () => probabilityReached(requirement, 1, { failedAt: -1 })],
    ['probability is 1; allowed', () => quantileReached(requirement, 1)],
    ['probability is 0; allowed', () => quantileReached(requirement, 0)],
  ])('%s', (message, call) => {
    expect(call).toThrow(RangeError);
    expect(call).toThrow(message);
  });
});
