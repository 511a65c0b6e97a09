import { logNormalBetween, logNormalDensity } from './normal-distribution.ts';

/** Posterior cells: lists of equal length, weights adding to 1. */
export type Cells = {
  /** mean of the logarithm */
  readonly mu: readonly number[];
  /** its standard deviation between coats */
  readonly sigma: readonly number[];
  readonly weight: readonly number[];
};

/** One test: ln of the sums, in units; −Infinity without a failed, Infinity without a passed one. */
export type Interval = { readonly low: number; readonly high: number };

/** An even grid: v along mu, t along ln(sigma). */
export type Grid = {
  readonly mu: readonly number[];
  readonly sigma: readonly number[];
  /** width of each mu cell, up to a constant */
  readonly step: readonly number[];
  /** ln of prior times cell, up to a constant, mu by mu */
  readonly lnPrior: readonly number[];
};

/** Part of the plane a grid covers. */
export type Bounds = {
  readonly vLow: number;
  readonly vHigh: number;
  readonly tLow: number;
  readonly tHigh: number;
};

/*
 * The prior is written in a unit in which it is the same for every stage: mu is Student-t, so that
 * tests far from the starting figure move it instead of being disbelieved, and ln(sigma) is normal.
 * All shapes are assumptions; the unit is then chosen so that the prior's p10 and p90 come out.
 */
/** Scale of mu, in units. Assumption. */
const MU_SCALE = 0.6;
/** Degrees of freedom of mu. Assumption. */
const MU_FREEDOM = 3;
/** Median of the coat-to-coat spread, in units. Assumption. */
const SIGMA_MEDIAN = 0.8;
/** Standard deviation of its logarithm. Assumption. */
const SIGMA_LOG_SPREAD = 0.7;

/** mu = MU_STRETCH·sinh(v): fine in the middle, still there 30 units out. */
const MU_STRETCH = 0.5;
/** The plane that is looked at before anything is known. */
const WHOLE: Bounds = { vLow: -4.8, vHigh: 4.8, tLow: -3, tHigh: 3 };
/** The part of it where the prior is not negligible beside other groups. */
const LIKELY: Bounds = { vLow: -3.5, vHigh: 3.5, tLow: -3, tHigh: 3 };
const COARSE = { mu: 49, sigma: 9 };
const FINE = { mu: 64, sigma: 16 };
const POOLED = { mu: 96, sigma: 16 };
/** Cells below e^−18 of the best are not looked at again. */
const LN_NEGLIGIBLE = 18;
/** Two sums closer than this (in ln, in units) are one exact observation. */
const EXACT = 1e-6;

function even(low: number, high: number, count: number): number[] {
  return Array.from({ length: count }, (_, index) => low + ((high - low) * index) / (count - 1));
}

function gridOver(bounds: Bounds, count: { readonly mu: number; readonly sigma: number }): Grid {
  const v = even(bounds.vLow, bounds.vHigh, count.mu);
  const t = even(bounds.tLow, bounds.tHigh, count.sigma);
  const mu = v.map((value) => MU_STRETCH * Math.sinh(value));
  const step = v.map((value) => Math.cosh(value));
  const lnMu = mu.map(
    (value, index) =>
      -((MU_FREEDOM + 1) / 2) * Math.log1p((value / MU_SCALE) ** 2 / MU_FREEDOM) +
      Math.log(step[index] as number),
  );
  return {
    mu,
    step,
    sigma: t.map((value) => SIGMA_MEDIAN * Math.exp(SIGMA_LOG_SPREAD * value)),
    lnPrior: lnMu.flatMap((ln) => t.map((value) => ln - 0.5 * value * value)),
  };
}

/**
 * ln likelihood of tests in every cell, mu by mu.
 *
 * @param tests - the tests
 * @param grid - the grid
 * @returns one figure per cell
 *
 * **Source:** interval-censored normal likelihood.
 */
export function lnLikelihood(tests: readonly Interval[], grid: Grid): Float64Array {
  const values = new Float64Array(grid.mu.length * grid.sigma.length);
  let cell = 0;
  for (const mu of grid.mu) {
    for (const sigma of grid.sigma) {
      let sum = 0;
      for (const { low, high } of tests) {
        const end = (high - mu) / sigma;
        sum +=
          high - low < EXACT
            ? logNormalDensity(end) - Math.log(sigma)
            : logNormalBetween((low - mu) / sigma, end);
      }
      values[cell++] = sum;
    }
  }
  return values;
}

/** The part of the plane that matters for some tests, with a margin of one coarse step. */
function narrowed(tests: readonly Interval[]): Bounds {
  const grid = gridOver(WHOLE, COARSE);
  const values = lnLikelihood(tests, grid).map((ln, cell) => ln + (grid.lnPrior[cell] as number));
  const least = values.reduce((a, b) => Math.max(a, b)) - LN_NEGLIGIBLE;
  let [iLow, iHigh, jLow, jHigh] = [COARSE.mu, 0, COARSE.sigma, 0];
  values.forEach((value, cell) => {
    if (value < least) return;
    const i = Math.floor(cell / COARSE.sigma);
    const j = cell % COARSE.sigma;
    iLow = Math.min(iLow, i);
    iHigh = Math.max(iHigh, i);
    jLow = Math.min(jLow, j);
    jHigh = Math.max(jHigh, j);
  });
  const v = even(WHOLE.vLow, WHOLE.vHigh, COARSE.mu);
  const t = even(WHOLE.tLow, WHOLE.tHigh, COARSE.sigma);
  return {
    vLow: v[Math.max(0, iLow - 1)] as number,
    vHigh: v[Math.min(COARSE.mu - 1, iHigh + 1)] as number,
    tLow: t[Math.max(0, jLow - 1)] as number,
    tHigh: t[Math.min(COARSE.sigma - 1, jHigh + 1)] as number,
  };
}

/**
 * A fine grid over all that matters: the coat's own tests, or the prior without any, and each other group.
 *
 * @param own - tests of the coat asked about
 * @param others - other groups of tests
 * @returns the grid
 */
export function gridFor(own: readonly Interval[], others: readonly (readonly Interval[])[]): Grid {
  if (others.length === 0) return gridOver(own.length === 0 ? WHOLE : narrowed(own), FINE);
  const parts = [own.length === 0 ? LIKELY : narrowed(own), ...others.map(narrowed)];
  return gridOver(
    {
      vLow: Math.min(...parts.map(({ vLow }) => vLow)),
      vHigh: Math.max(...parts.map(({ vHigh }) => vHigh)),
      tLow: Math.min(...parts.map(({ tLow }) => tLow)),
      tHigh: Math.max(...parts.map(({ tHigh }) => tHigh)),
    },
    POOLED,
  );
}

/**
 * Posterior cells from ln likelihoods, the negligible left out.
 *
 * @param grid - the grid
 * @param lnLikelihoods - one figure per cell
 * @returns cells with weights that add to 1
 */
export function posteriorCells(grid: Grid, lnLikelihoods: ArrayLike<number>): Cells {
  const ln = grid.lnPrior.map((prior, cell) => prior + (lnLikelihoods[cell] as number));
  const best = ln.reduce((a, b) => Math.max(a, b));
  const kept = ln.flatMap((value, cell) => (value > best - LN_NEGLIGIBLE ? [cell] : []));
  const raw = kept.map((cell) => Math.exp((ln[cell] as number) - best));
  const total = raw.reduce((a, b) => a + b, 0);
  const columns = grid.sigma.length;
  return {
    mu: kept.map((cell) => grid.mu[Math.floor(cell / columns)] as number),
    sigma: kept.map((cell) => grid.sigma[cell % columns] as number),
    weight: raw.map((value) => value / total),
  };
}
