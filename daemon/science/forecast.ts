import { positive, within } from './argument-range.ts';
import type { CureModel, CureSum } from './cure.ts';
import { type CureAhead, type CureAheadOptions, cureAhead } from './cure-ahead.ts';
import { chanceAt, type NeedCurve, type NeedOptions, needCurve } from './need-curve.ts';
import { normalCdf } from './normal-distribution.ts';
import { risingRoot } from './rising-root.ts';
import { type AirReading, type OutlookOptions, temperatureOutlook } from './temperature-outlook.ts';
import type { Requirement } from './touch.ts';

/**
 * When a coat is there, UTC epoch ms: `early` and `late` at 10 and 90 %, `likely` at 50 % along the
 * expected temperature. `null`: not within the horizon (60 days by default), or nothing known of the
 * air. A time already passed is given as the start of the outlook (the last reading).
 */
export type ReadyTimes = {
  readonly early: number | null;
  readonly likely: number | null;
  readonly late: number | null;
};

/** What a coat has gained up to the last reading, °C·h; gaps make the two differ. */
export type CureSoFar = Pick<CureSum, 'degreeHoursLow' | 'degreeHoursHigh'>;

/** How a gate's question differs from what was learned. */
export type ReadyOptions = {
  /** multiple of the learned requirement that this gate and this film need, default 1 */
  readonly scale?: number | undefined;
};

/** All that a forecast may be told. */
export type ForecastOptions = OutlookOptions &
  CureAheadOptions &
  NeedOptions &
  ReadyOptions & { readonly model: CureModel };

const MS_PER_HOUR = 3_600_000;
/** Equal shares of the future that are told apart, and of what gaps may have given. */
const FUTURES = 64;
const GAP_SHARES = 4;

/** Middle of each equal share of a standard normal. */
const MIDDLES = Array.from({ length: FUTURES / 2 }, (_, share) =>
  risingRoot((z) => normalCdf(z) - (0.5 + (share + 0.5) / FUTURES), 0, 10),
).flatMap((z) => [-z, z]);

/** Where each share of the future lies between two paths; the outermost are carried on. */
function places(deviations: readonly number[]) {
  return MIDDLES.map((z) => {
    const found = deviations.findIndex((deviation) => deviation >= z);
    const path = Math.max(1, found === -1 ? deviations.length - 1 : found);
    const from = deviations[path - 1] as number;
    return { path, share: (z - from) / ((deviations[path] as number) - from) };
  });
}

/** Sums so far to reckon with: one, or equal shares between low and high. */
function startingSums({ degreeHoursLow, degreeHoursHigh }: CureSoFar): number[] {
  const low = within('degreeHoursLow', degreeHoursLow, 0, 1e12);
  const high = within('degreeHoursHigh', degreeHoursHigh, 0, 1e12);
  if (!(high > low)) return [low];
  const step = (high - low) / GAP_SHARES;
  return Array.from({ length: GAP_SHARES }, (_, share) => low + (share + 0.5) * step);
}

/**
 * When a coat will be there, from sums ahead and a need already tabulated: for many gates of a place.
 *
 * @param ahead - sums to come at the place
 * @param cureSoFar - sums up to `ahead.fromAt`; what gaps gave is taken as anything between low and
 *   high, all alike
 * @param need - what the stage needs
 * @param options - scale of the need
 * @returns the times; good to a few seconds within the model
 * @throws RangeError outside the range
 */
export function readyFrom(
  ahead: CureAhead,
  cureSoFar: CureSoFar,
  need: NeedCurve,
  options: ReadyOptions = {},
): ReadyTimes {
  const lnScale = Math.log(positive('scale', options.scale ?? 1));
  const starts = startingSums(cureSoFar);
  const shares = places(ahead.deviations);
  const hours = (ahead.paths[0]?.length ?? 1) - 1;
  const gained = (path: number, hour: number) => ahead.paths[path]?.[hour] ?? 0;
  const sumAt = (path: number, time: number) => {
    const hour = Math.min(hours, Math.floor(time));
    const part = time - hour;
    return part === 0
      ? gained(path, hour)
      : gained(path, hour) * (1 - part) + gained(path, Math.min(hours, hour + 1)) * part;
  };
  const chanceOf = (sum: number) => chanceAt(need, Math.log(sum) - lnScale);
  const chance = (time: number) => {
    const sums = ahead.paths.map((_, path) => sumAt(path, time));
    let total = 0;
    for (const { path, share } of shares) {
      const below = sums[path - 1] as number;
      const coming = Math.max(0, below + share * ((sums[path] as number) - below));
      for (const start of starts) total += chanceOf(start + coming);
    }
    return total / (shares.length * starts.length);
  };
  const middlePath = ahead.deviations.indexOf(0);
  const middleStart = starts.reduce((a, b) => a + b, 0) / starts.length;
  const expectedChance = (time: number) => chanceOf(middleStart + sumAt(middlePath, time));
  const when = (probability: number, reached: (time: number) => number) => {
    if (reached(0) >= probability) return ahead.fromAt;
    if (reached(hours) < probability) return null;
    let [low, high] = [0, hours];
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (reached(middle) < probability) low = middle;
      else high = middle;
    }
    const time = risingRoot((value) => reached(value) - probability, low, high);
    return Math.round(ahead.fromAt + time * MS_PER_HOUR);
  };
  return { early: when(0.1, chance), likely: when(0.5, expectedChance), late: when(0.9, chance) };
}

/**
 * When a coat will be there: early, likely and late, from the recorded air, the cure so far and what
 * the stage needs.
 *
 * @param history - air at the coat's place, any order, an hour or weeks of it; may be empty
 * @param cureSoFar - sums up to the last reading
 * @param requirement - from `fitRequirement`
 * @param options - `model` is needed; `failedAt`, `passedAt` and `boardSpread` of this coat,
 *   `scale` of this gate and film (the coat's own sums are real ones, not divided by it), `capC`,
 *   `horizonHours` (default 60 days), `outdoors` with a forecast
 * @returns the times; `null` where the probability is not reached within the horizon, or without
 *   any history
 * @throws RangeError outside the range
 *
 * **Source:** own method; what supports its figures is the backtest in test/bench/forecast.bench.ts.
 */
export function forecastReady(
  history: readonly AirReading[],
  cureSoFar: CureSoFar,
  requirement: Requirement,
  options: ForecastOptions,
): ReadyTimes {
  const outlook = temperatureOutlook(history, options);
  if (outlook === null) return { early: null, likely: null, late: null };
  const scale = positive('scale', options.scale ?? 1);
  const own = (sum: number | undefined) => (sum === undefined ? undefined : sum / scale);
  const need = needCurve(requirement, {
    boardSpread: options.boardSpread,
    failedAt: own(options.failedAt),
    passedAt: own(options.passedAt),
  });
  return readyFrom(cureAhead(outlook, options.model, options), cureSoFar, need, { scale });
}
