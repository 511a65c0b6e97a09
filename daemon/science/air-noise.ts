import { type BalanceRun, balanceAt, dot, fitBalance } from './air-balance.ts';
import { type DriftingNoise, type Whitening, whitening } from './drifting-noise.ts';

/** Noise without a slow part. */
export const WHITE: DriftingNoise = { timescaleHours: 1, ratio: 0 };

/** Residuals smaller than this share of the level are rounding. */
const ROUNDING = 1e-9;

/** Noise models tried: none slow, or slow over a quarter of an hour to most of a day. */
const NOISES: readonly DriftingNoise[] = [
  WHITE,
  ...[0.25, 0.5, 1, 2, 4, 8, 16].flatMap((timescaleHours) =>
    [0.3, 1, 3, 10, 30].map((ratio) => ({ timescaleHours, ratio })),
  ),
];

/** −2 ln of the restricted likelihood of a noise model at one air change. */
function noiseCost(runs: readonly BalanceRun[], perHour: number, noise: DriftingNoise) {
  const filters = runs.map(({ at }) => whitening(at, noise));
  const fit = fitBalance(runs, perHour, filters);
  const step = 1e-4;
  const moved = balanceAt(runs, perHour * (1 + step), fit);
  let sensitivity = 0;
  let lnVariance = 0;
  runs.forEach((_, index) => {
    const { apply, lnVariance: own } = filters[index] as Whitening;
    const still = fit.fitted[index] as Float64Array;
    const change = apply(
      (moved[index] as Float64Array).map((value, k) => (value - (still[k] as number)) / step),
    );
    sensitivity += dot(change, change);
    lnVariance += own;
  });
  const free = fit.count - runs.length - 2;
  const floor = fit.count * roundingFloor(runs);
  return (
    free * Math.log(fit.squares + floor) +
    lnVariance +
    fit.lnInformation +
    Math.log(sensitivity + floor)
  );
}

/**
 * The noise that best explains the residuals of a room's balance, by restricted likelihood.
 *
 * @param runs - runs of samples
 * @param perHour - air change at which the balance is fitted, 1/h
 * @returns one of a fixed set of noise models
 *
 * **Source:** restricted maximum likelihood, textbook form; the set is a choice of ours.
 */
export function likeliestNoise(runs: readonly BalanceRun[], perHour: number): DriftingNoise {
  let [best, least] = [WHITE, Number.POSITIVE_INFINITY];
  for (const noise of NOISES) {
    const cost = noiseCost(runs, perHour, noise);
    if (cost < least) [best, least] = [noise, cost];
  }
  return best;
}

/**
 * Mean square below which residuals are rounding.
 *
 * @param runs - runs of samples
 * @returns square of the samples' unit, above 0
 */
export function roundingFloor(runs: readonly BalanceRun[]): number {
  return (ROUNDING * meanInside(runs)) ** 2 + Number.MIN_VALUE;
}

/**
 * Mean inside concentration.
 *
 * @param runs - runs of samples, at least one
 * @returns in the samples' unit
 */
export function meanInside(runs: readonly BalanceRun[]): number {
  const all = runs.flatMap(({ inside }) => inside);
  return all.reduce((sum, value) => sum + value, 0) / all.length;
}
