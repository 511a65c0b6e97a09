import { positive, within } from './argument-range.ts';
import { logNormalCdf, normalCdf } from './normal-distribution.ts';
import { risingRoot } from './rising-root.ts';
import { type Cells, gridFor, type Interval, posteriorCells } from './touch-grid.ts';
import { type PooledTests, pooledLnLikelihood } from './touch-pool.ts';

/** What a stage needs before any test: the sums at which a tenth and nine tenths of coats are there. */
export type TouchPrior = {
  /** °C·h, above 0 */
  readonly p10: number;
  /** °C·h, above `p10` */
  readonly p90: number;
};

/** What touch tests told of one coat: not there yet at one sum, there at a later one. */
export type TouchTest = {
  /** highest sum at which it still failed, °C·h, 0 or more */
  readonly failedAt?: number | undefined;
  /** lowest sum at which it passed, °C·h, not below `failedAt` */
  readonly passedAt?: number | undefined;
  /** what was laid (mixture and colour), any name; a test of another mixture weighs little */
  readonly mixture?: string | undefined;
  /** where it lay, any name; a test from another place weighs less */
  readonly place?: string | undefined;
};

/** The coat that is asked about: tests with the same two names count in full. */
export type TouchTarget = {
  readonly mixture?: string | undefined;
  readonly place?: string | undefined;
};

/** Posterior of what a stage needs: plain data, cells of equal length lists, weights adding to 1. */
export type Requirement = Cells & {
  /** °C·h at which the next coat is there with 10 % probability */
  readonly p10: number;
  /** °C·h at 50 % */
  readonly p50: number;
  /** °C·h at 90 % */
  readonly p90: number;
};

/** What is known of the very coat asked about. */
export type ReachedOptions = {
  /**
   * highest sum at which this coat failed its own test, °C·h; leave that test out of the fit, or it
   * counts twice
   */
  readonly failedAt?: number | undefined;
  /**
   * standard deviation of ln(°C·h) between the boards of one coat, 0 to 2, default 0: the answer is
   * then for the slowest tenth of the boards, where the tests speak for a middling one
   */
  readonly boardSpread?: number | undefined;
};

/** ln of the slowest tenth's excess, per unit of board spread: the normal 90 % point. */
const SLOWEST_TENTH = 1.2815515655446004;
/** No sum is looked for beyond this, ln(°C·h). */
const LARGEST_LN = 60;

/** Probability over all cells that the requirement lies below (side 1) or above (side −1) a logarithm. */
function shareBeyond(cells: Cells, ln: number, side: 1 | -1) {
  let sum = 0;
  for (let cell = 0; cell < cells.mu.length; cell++) {
    const z = (ln - (cells.mu[cell] as number)) / (cells.sigma[cell] as number);
    sum += (cells.weight[cell] as number) * normalCdf(side * z);
  }
  return sum;
}

function interval(test: TouchTest, middle: number, unit: number): Interval | null {
  const failedAt = test.failedAt ?? 0;
  within('failedAt', failedAt, 0, 1e9);
  if (test.passedAt === undefined) {
    if (failedAt === 0) return null;
    return { low: (Math.log(failedAt) - middle) / unit, high: Number.POSITIVE_INFINITY };
  }
  positive('passedAt', test.passedAt);
  if (failedAt > test.passedAt) {
    throw new RangeError(
      `failedAt is ${failedAt}; allowed: 0 to passedAt ${test.passedAt} (a coat does not lose cure)`,
    );
  }
  const low = failedAt === 0 ? Number.NEGATIVE_INFINITY : (Math.log(failedAt) - middle) / unit;
  return { low, high: (Math.log(test.passedAt) - middle) / unit };
}

const UNTESTED = gridFor([], []);
const PRIOR_CELLS = posteriorCells(UNTESTED, pooledLnLikelihood(grouped([], {}), UNTESTED));
/** 90 % point of the prior's next coat, in units; the 10 % point is its mirror image. */
const PRIOR_90 = risingRoot((x) => shareBeyond(PRIOR_CELLS, x, 1) - 0.9, 0, 20);

/** Tests by where and what, as seen from the coat asked about. */
function grouped(
  tests: readonly { readonly test: TouchTest; readonly interval: Interval }[],
  target: TouchTarget,
): PooledTests {
  const mixtures = new Map<string | undefined, Map<string | undefined, Interval[]>>();
  for (const { test, interval } of tests) {
    const places = mixtures.get(test.mixture) ?? new Map<string | undefined, Interval[]>();
    mixtures.set(test.mixture, places);
    places.set(test.place, [...(places.get(test.place) ?? []), interval]);
  }
  const own = mixtures.get(target.mixture);
  const others = [...mixtures].filter(([mixture]) => mixture !== target.mixture);
  return {
    own: own?.get(target.place) ?? [],
    otherPlaces: [...(own ?? [])].filter(([place]) => place !== target.place).map(([, all]) => all),
    otherMixtures: others.map(([, places]) => [...places.values()]),
  };
}

/**
 * Learns what a stage needs from touch tests: log-normal over °C·h, its two parameters on a grid.
 *
 * @param tests - one per coat; each may hold a failed sum, a passed sum or both; one with neither
 *   says nothing; both equal is read as an exact observation (no warmth came between the two tests)
 * @param prior - 10 % and 90 % points before any test, °C·h; with no tests they come out again
 * @param target - mixture and place of the coat asked about; tests elsewhere are pooled in part
 * @returns the posterior as plain data
 * @throws RangeError on sums outside the range, or a test that passed below where it failed
 *
 * **Source:** interval-censored likelihood of a log-normal by Bayes' rule; shapes of the prior are
 * assumptions.
 */
export function fitRequirement(
  tests: readonly TouchTest[],
  prior: TouchPrior,
  target: TouchTarget = {},
): Requirement {
  positive('p10', prior.p10);
  within('p90', prior.p90, prior.p10 * (1 + 1e-6), 1e9);
  const middle = (Math.log(prior.p10) + Math.log(prior.p90)) / 2;
  const unit = (Math.log(prior.p90) - Math.log(prior.p10)) / (2 * PRIOR_90);
  const known = tests.flatMap((test) => {
    const found = interval(test, middle, unit);
    return found === null ? [] : [{ test, interval: found }];
  });
  const pooled = grouped(known, target);
  const grid = gridFor(pooled.own, [...pooled.otherPlaces, ...pooled.otherMixtures.flat()]);
  const cells =
    known.length === 0 ? PRIOR_CELLS : posteriorCells(grid, pooledLnLikelihood(pooled, grid));
  const posterior = {
    mu: cells.mu.map((mu) => middle + unit * mu),
    sigma: cells.sigma.map((sigma) => unit * sigma),
    weight: cells.weight,
  };
  const at = (probability: number) => quantile(posterior, probability, {});
  return { ...posterior, p10: at(0.1), p50: at(0.5), p90: at(0.9) };
}

/** ln of the probability that the requirement lies above a logarithm, where the plain sum underflows. */
function lnShareAbove(cells: Cells, ln: number): number {
  const terms = cells.mu.map(
    (mu, cell) =>
      Math.log(cells.weight[cell] as number) +
      logNormalCdf((mu - ln) / (cells.sigma[cell] as number)),
  );
  const best = terms.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  return best + Math.log(terms.reduce((sum, term) => sum + Math.exp(term - best), 0));
}

function probabilityAt(cells: Cells, ln: number, lnFailed: number): number {
  if (lnFailed === Number.NEGATIVE_INFINITY) return Math.min(1, shareBeyond(cells, ln, 1));
  if (ln <= lnFailed) return 0;
  const failed = shareBeyond(cells, lnFailed, -1);
  if (failed > 1e-280) return Math.min(1, Math.max(0, 1 - shareBeyond(cells, ln, -1) / failed));
  return -Math.expm1(lnShareAbove(cells, ln) - lnShareAbove(cells, lnFailed));
}

function readOptions(options: ReachedOptions) {
  const failedAt = within('failedAt', options.failedAt ?? 0, 0, 1e9);
  const boardSpread = within('boardSpread', options.boardSpread ?? 0, 0, 2);
  return {
    lnFailed: failedAt === 0 ? Number.NEGATIVE_INFINITY : Math.log(failedAt),
    lnSlowest: SLOWEST_TENTH * boardSpread,
  };
}

/**
 * Probability that a coat with a given sum has reached the stage.
 *
 * @param requirement - from {@link fitRequirement}
 * @param degreeHours - the coat's sum, °C·h, 0 or more
 * @param options - what is known of this coat
 * @returns 0 to 1, rising with the sum; 0 up to the sum of this coat's own failed test
 * @throws RangeError outside the range
 */
export function probabilityReached(
  requirement: Requirement,
  degreeHours: number,
  options: ReachedOptions = {},
): number {
  within('degreeHours', degreeHours, 0, 1e12);
  const { lnFailed, lnSlowest } = readOptions(options);
  if (degreeHours === 0) return 0;
  return probabilityAt(requirement, Math.log(degreeHours) - lnSlowest, lnFailed);
}

/**
 * Sum at which a coat has reached the stage with a given probability: the inverse of {@link probabilityReached}.
 *
 * @param requirement - from {@link fitRequirement}
 * @param probability - between 0 and 1, both excluded
 * @param options - what is known of this coat
 * @returns °C·h, good to 1e-6 of itself
 * @throws RangeError outside the range
 */
export function quantileReached(
  requirement: Requirement,
  probability: number,
  options: ReachedOptions = {},
): number {
  within('probability', probability, Number.EPSILON, 1 - Number.EPSILON);
  return quantile(requirement, probability, options);
}

function quantile(cells: Cells, probability: number, options: ReachedOptions): number {
  const { lnFailed, lnSlowest } = readOptions(options);
  const above = (ln: number) => probabilityAt(cells, ln, lnFailed) - probability;
  let low = Math.max(lnFailed, smallest(cells.mu));
  let high = Math.max(low, largest(cells.mu));
  for (let step = 1; above(low) > 0 && low > lnFailed; step *= 2) {
    low = Math.max(lnFailed, low - step);
  }
  for (let step = 1; above(high) < 0 && high < LARGEST_LN; step *= 2) high += step;
  return Math.exp(risingRoot(above, low, high) + lnSlowest);
}

const smallest = (values: readonly number[]) => values.reduce((a, b) => Math.min(a, b));
const largest = (values: readonly number[]) => values.reduce((a, b) => Math.max(a, b));
