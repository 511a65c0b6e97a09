import { describe, expect, it } from 'vitest';
import {
  fitRequirement,
  probabilityReached,
  type Requirement,
  type TouchTest,
} from '../../daemon/science/touch.ts';
import { COSMESIS_LOG_NORMAL, COSMESIS_MONTHS } from '../published/interval-censored.ts';
import { normalFrom, seededRandom } from './seeded-random.ts';

const PRIOR = { p10: 720, p90: 1080 };

function mean(requirement: Requirement, value: (cell: number) => number): number {
  return requirement.weight.reduce((sum, weight, cell) => sum + weight * value(cell), 0);
}

describe('the posterior against maximum likelihood', () => {
  const tests = COSMESIS_MONTHS.map(
    ([failedAt, passedAt]): TouchTest =>
      Number.isFinite(passedAt) ? { failedAt, passedAt } : { failedAt },
  );

  it.each([
    [{ p10: 7, p90: 66 }, 0.25],
    [{ p10: 3, p90: 150 }, 0.25],
    [{ p10: 1, p90: 450 }, 0.25],
  ])(
    'under the flat prior %j is the published-data fit of R within a quarter of its standard error',
    (prior, share) => {
      const requirement = fitRequirement(tests, prior);
      const mu = mean(requirement, (cell) => requirement.mu[cell] as number);
      const lnSigma = mean(requirement, (cell) => Math.log(requirement.sigma[cell] as number));
      const { mu: mle, sigma, muError, lnSigmaError } = COSMESIS_LOG_NORMAL;
      expect(Math.abs(mu - mle)).toBeLessThan(share * muError);
      // the posterior mean of ln sigma lies above its mode by up to half a standard error
      expect(Math.abs(lnSigma - Math.log(sigma))).toBeLessThan(0.5 * lnSigmaError);
      const spread = Math.sqrt(
        mean(requirement, (cell) => ((requirement.mu[cell] as number) - mu) ** 2),
      );
      expect(spread / muError).toBeGreaterThan(0.9);
      expect(spread / muError).toBeLessThan(1.15);
    },
  );

  it('with many exact observations is their mean and standard deviation', () => {
    const logs = Array.from({ length: 400 }, (_, k) => 7 + 0.2 * Math.sin(k * 2.399963));
    const average = logs.reduce((a, b) => a + b, 0) / 400;
    const sd = Math.sqrt(logs.reduce((sum, ln) => sum + (ln - average) ** 2, 0) / 400);
    const requirement = fitRequirement(
      logs.map((ln) => ({ failedAt: Math.exp(ln), passedAt: Math.exp(ln) })),
      PRIOR,
    );
    expect(mean(requirement, (cell) => requirement.mu[cell] as number)).toBeCloseTo(average, 2);
    const sigma = mean(requirement, (cell) => requirement.sigma[cell] as number);
    expect(Math.abs(sigma / sd - 1)).toBeLessThan(0.02);
  });
});

describe('a stated 90 %', () => {
  /** Coats of one paint, tested first at 500 to 800 °C·h and then every 80 to 160 until passed. */
  function coats(
    mu: number,
    sigma: number,
    count: number,
    random: () => number,
    normal: () => number,
  ) {
    return Array.from({ length: count }, () => {
      const needs = Math.exp(mu + sigma * normal());
      let passedAt = 500 + 300 * random();
      let failedAt = 0;
      while (passedAt < needs) {
        failedAt = passedAt;
        passedAt += 80 + 80 * random();
      }
      return { needs, test: { failedAt, passedAt } };
    });
  }

  it('is right for 87 to 93 % of 2,000 simulated coats of 100 paints, each learned from the last', () => {
    const random = seededRandom(5);
    const normal = normalFrom(random);
    const start = fitRequirement([], PRIOR);
    let right = 0;
    for (let paint = 0; paint < 100; paint++) {
      let left = random();
      let cell = 0;
      while (left > (start.weight[cell] as number) && cell < start.weight.length - 1) {
        left -= start.weight[cell++] as number;
      }
      const tests: TouchTest[] = [];
      const drawn = coats(
        start.mu[cell] as number,
        start.sigma[cell] as number,
        20,
        random,
        normal,
      );
      for (const { needs, test } of drawn) {
        if (needs <= fitRequirement(tests, PRIOR).p90) right++;
        tests.push(test);
      }
    }
    // seen: 91.5 %
    expect(right / 2000).toBeGreaterThan(0.87);
    expect(right / 2000).toBeLessThan(0.93);
  }, 60_000);

  it.each([
    [882, 0.08],
    [882, 0.15],
    [600, 0.1],
    [1300, 0.1],
  ])(
    'is right for 84 to 95 of 100 coats after five tests of a paint that needs %d °C·h, spread %d',
    (median, sigma) => {
      const random = seededRandom(11);
      const normal = normalFrom(random);
      let [right, asked] = [0, 0];
      for (let paint = 0; paint < 30; paint++) {
        const drawn = coats(Math.log(median), sigma, 15, random, normal);
        drawn.forEach(({ needs }, coat) => {
          if (coat < 5) return;
          const tests = drawn.slice(0, coat).map(({ test }) => test);
          asked++;
          if (needs <= fitRequirement(tests, PRIOR).p90) right++;
        });
      }
      expect(right / asked).toBeGreaterThan(0.84);
      expect(right / asked).toBeLessThan(0.95);
    },
    60_000,
  );
});

describe('partial pooling', () => {
  const at = (sum: number, count: number, where: { mixture?: string; place?: string }) =>
    Array.from({ length: count }, () => ({ failedAt: sum - 50, passedAt: sum + 50, ...where }));

  it('without other mixtures or places changes nothing', () => {
    const named = at(850, 3, { mixture: 'top', place: 'rack' });
    const plain = at(850, 3, {});
    const target = { mixture: 'top', place: 'rack' };
    expect(fitRequirement(named, PRIOR, target)).toEqual(fitRequirement(plain, PRIOR));
  });

  it('does not let one cold rack mislead a rack with tests of its own', () => {
    const own = at(850, 3, { place: 'warm' });
    const alone = fitRequirement(own, PRIOR, { place: 'warm' });
    const both = fitRequirement([...own, ...at(1500, 5, { place: 'cold' })], PRIOR, {
      place: 'warm',
    });
    expect(Math.abs(both.p50 / alone.p50 - 1)).toBeLessThan(0.03);
  });

  it('does not let one odd rack mislead a new one when two others agree', () => {
    const tests = [
      ...at(850, 5, { place: 'a' }),
      ...at(850, 5, { place: 'b' }),
      ...at(1500, 5, { place: 'odd' }),
    ];
    const fit = fitRequirement(tests, PRIOR, { place: 'new' });
    expect(fit.p50).toBeGreaterThan(820);
    expect(fit.p50).toBeLessThan(920);
  });

  it('teaches a new rack from racks that agree, the more of them the more', () => {
    const one = fitRequirement(at(1300, 5, { place: 'a' }), PRIOR, { place: 'new' });
    const three = fitRequirement(
      ['a', 'b', 'c'].flatMap((place) => at(1300, 5, { place })),
      PRIOR,
      { place: 'new' },
    );
    expect(one.p50).toBeGreaterThan(1000);
    expect(three.p50).toBeGreaterThan(one.p50);
    expect(three.p50).toBeLessThan(1300);
  });

  it('moves a top coat little for what its primer needed, and less once it has tests of its own', () => {
    const primer = at(1500, 8, { mixture: 'primer' });
    const untested = fitRequirement(primer, PRIOR, { mixture: 'top' });
    expect(untested.p50).toBeGreaterThan(882);
    expect(untested.p50).toBeLessThan(1050);
    const tested = fitRequirement([...primer, ...at(850, 3, { mixture: 'top' })], PRIOR, {
      mixture: 'top',
    });
    expect(Math.abs(tested.p50 / 850 - 1)).toBeLessThan(0.03);
    expect(probabilityReached(tested, 850)).toBeGreaterThan(0.3);
  });
});
