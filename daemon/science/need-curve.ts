import { positive } from './argument-range.ts';
import { probabilityReached, type ReachedOptions, type Requirement } from './touch.ts';

/** What is known of the very coat asked about, its sums in °C·h. */
export type NeedOptions = ReachedOptions & {
  /** lowest sum at which this coat passed its own test, °C·h: it needs no more than that */
  readonly passedAt?: number | undefined;
};

/** Probability of being there over the sum, as a broken line: plain data, quick to read off. */
export type NeedCurve = {
  /** ln(°C·h), ascending */
  readonly ln: readonly number[];
  /** 0 to 1, ascending */
  readonly probability: readonly number[];
};

/** Steps of the broken line are no higher than this. */
const HIGHEST_STEP = 0.025;
/** And, unless they are hardly steps at all, no longer than this share of the way from 10 to 90 %. */
const LONGEST_SHARE = 1 / 12;
const HARDLY_A_STEP = 0.002;
/** Nor are they divided below this, ln(°C·h). */
const SHORTEST_STEP = 1e-4;
/** Where the line may end. */
const ALMOST_ALL = 0.9995;

/**
 * What a stage needs, tabulated once for all coats it is asked of.
 *
 * @param requirement - from `fitRequirement`
 * @param options - what is known of this coat
 * @returns the broken line; within 0.002 of `probabilityReached`
 * @throws RangeError outside the range
 */
export function needCurve(requirement: Requirement, options: NeedOptions = {}): NeedCurve {
  const at = (ln: number) => probabilityReached(requirement, Math.exp(ln), options);
  const width = Math.log(requirement.p90 / requirement.p10);
  const start = Math.log(requirement.p10) - 2 * width;
  let end = Math.log(requirement.p90) + 2 * width;
  for (let step = width; at(end) < ALMOST_ALL && end < 60; step *= 2) end += step;
  const ln = [start];
  const probability = [at(start)];
  const divide = (from: number, fromChance: number, to: number, toChance: number): void => {
    const rise = toChance - fromChance;
    const isCoarse =
      rise > HIGHEST_STEP || (rise > HARDLY_A_STEP && to - from > LONGEST_SHARE * width);
    if (isCoarse && to - from > SHORTEST_STEP) {
      const middle = (from + to) / 2;
      const chance = at(middle);
      divide(from, fromChance, middle, chance);
      divide(middle, chance, to, toChance);
    } else {
      ln.push(to);
      probability.push(toChance);
    }
  };
  divide(start, probability[0] as number, end, at(end));
  return options.passedAt === undefined
    ? { ln, probability }
    : endedAt({ ln, probability }, Math.log(positive('passedAt', options.passedAt)));
}

/** The line with everything from a point on certain. */
function endedAt(curve: NeedCurve, lnPassed: number): NeedCurve {
  const before = curve.ln.filter((ln) => ln < lnPassed).length;
  return {
    ln: [...curve.ln.slice(0, before), lnPassed, lnPassed],
    probability: [...curve.probability.slice(0, before), chanceAt(curve, lnPassed), 1],
  };
}

/**
 * Reads the broken line.
 *
 * @param curve - from {@link needCurve}
 * @param ln - ln(°C·h); −Infinity for no sum at all
 * @returns probability, 0 to 1
 */
export function chanceAt({ ln: points, probability }: NeedCurve, ln: number): number {
  let low = 0;
  let high = points.length - 1;
  if (ln >= (points[high] as number)) return probability[high] as number;
  if (ln < (points[0] as number)) return 0;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((points[middle] as number) <= ln) low = middle;
    else high = middle;
  }
  const [from, to] = [points[low] as number, points[high] as number];
  const [fromChance, toChance] = [probability[low] as number, probability[high] as number];
  return fromChance + ((ln - from) / (to - from)) * (toChance - fromChance);
}
