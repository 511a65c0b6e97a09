import { lagged } from './hourly-lag.ts';

/** How a place follows the temperature outdoors. */
export type OutdoorResponse = {
  /** kelvin inside per kelvin outside in the long run, 0 to 1 */
  readonly gain: number;
  /** time in which it goes 63 % of that way, h, 0 or more */
  readonly lagHours: number;
};

/** Lags that are tried, h. */
const LAGS = [0, 1, 2, 4, 8, 16, 32, 64];
const DAY_HOURS = 24;
/** Pairs of hours a day apart that must be there. Assumption. */
const FEWEST_PAIRS = 48;
/** Pulls the gain towards 0, in K² per pair: without outdoor change nothing is learned. Assumption. */
const PULL = 0.05;

/**
 * How far and how slowly a place follows the temperature outdoors, from changes over a day, so that
 * neither its level nor its daily routine counts.
 *
 * @param inside - hourly means, oldest first, null for a gap
 * @param outside - hourly means of the same hours, without gaps
 * @returns gain and lag; null where there is too little to learn from
 */
export function outdoorResponse(
  inside: readonly (number | null)[],
  outside: readonly number[],
): OutdoorResponse | null {
  let best: (OutdoorResponse & { unexplained: number }) | null = null;
  for (const lagHours of LAGS) {
    const smooth = lagged(outside, lagHours);
    let [pairs, insideSquares, outsideSquares, products] = [0, 0, 0, 0];
    for (let hour = DAY_HOURS; hour < inside.length; hour++) {
      const now = inside[hour] ?? null;
      const dayAgo = inside[hour - DAY_HOURS] ?? null;
      if (now === null || dayAgo === null) continue;
      const change = now - dayAgo;
      const outsideChange = (smooth[hour] as number) - (smooth[hour - DAY_HOURS] as number);
      pairs += 1;
      insideSquares += change * change;
      outsideSquares += outsideChange * outsideChange;
      products += change * outsideChange;
    }
    if (pairs < FEWEST_PAIRS) return null;
    const gain = Math.min(1, Math.max(0, products / (outsideSquares + PULL * pairs)));
    const unexplained = insideSquares - 2 * gain * products + gain * gain * outsideSquares;
    if (best === null || unexplained < best.unexplained) best = { gain, lagHours, unexplained };
  }
  return best === null ? null : { gain: best.gain, lagHours: best.lagHours };
}
