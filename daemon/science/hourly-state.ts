/**
 * How a quantity moves from hour to hour: a level that drifts, weather that comes and goes with a
 * trend that dies away, and a daily cycle of two harmonics. Variances are in units of the scale
 * squared, which is learned for each place; times in hours.
 */
export type HourlyShape = {
  /** time in which a spell of weather goes back to the level by 63 % */
  readonly spellHours: number;
  /** time in which a trend dies away by 63 % */
  readonly trendHours: number;
  /** variance that an hour adds to the spell */
  readonly spellNoise: number;
  /** variance that an hour adds to the trend */
  readonly trendNoise: number;
  /** variance that an hour adds to the level */
  readonly levelNoise: number;
  /** variance that an hour adds to each coefficient of the daily cycle */
  readonly cycleNoise: number;
  /** variance of a single hour's own noise */
  readonly hourNoise: number;
  /** variance of each coefficient of the daily cycle before anything is known */
  readonly cyclePrior: number;
  /** variance of the level before anything is known */
  readonly levelPrior: number;
};

/** What is known after the last hour: expectation and covariance (row by row) of the seven states. */
export type HourlyState = {
  readonly mean: Float64Array;
  readonly covariance: Float64Array;
};

/** States: level, spell, trend, and cosine and sine of the day and of the half day. */
const STATES = 7;
const LEVEL = 0;
const SPELL = 1;
const TREND = 2;
const FIRST_CYCLE = 3;

/** What an hour's mean is made of; `hour` counts from any start, only its place in the day matters. */
function observation(hour: number): Float64Array {
  const angle = (2 * Math.PI * (hour % 24)) / 24;
  return Float64Array.of(
    1,
    1,
    0,
    Math.cos(angle),
    Math.sin(angle),
    Math.cos(2 * angle),
    Math.sin(2 * angle),
  );
}
const DAY = Array.from({ length: 24 }, (_, hour) => observation(hour));

/** Row of the day that an hour has, negative hours included. */
function hourOfDay(hour: number): Float64Array {
  return DAY[((hour % 24) + 24) % 24] as Float64Array;
}

/** State before the first hour, around a level. */
function unknownState(shape: HourlyShape, level: number): HourlyState {
  const mean = new Float64Array(STATES);
  mean[LEVEL] = level;
  const covariance = new Float64Array(STATES * STATES);
  const trend = shape.trendNoise / -Math.expm1(-2 / shape.trendHours);
  covariance[LEVEL * STATES + LEVEL] = shape.levelPrior;
  covariance[TREND * STATES + TREND] = trend;
  // spread of a spell that has gone on for ever, its trend included (near enough for a start)
  const kept = Math.exp(-1 / shape.spellHours);
  const trendKept = Math.exp(-1 / shape.trendHours);
  covariance[SPELL * STATES + SPELL] =
    (shape.spellNoise + (trend * (1 + kept * trendKept)) / (1 - kept * trendKept)) /
    (1 - kept * kept);
  for (let state = FIRST_CYCLE; state < STATES; state++) {
    covariance[state * STATES + state] = shape.cyclePrior;
  }
  return { mean, covariance };
}

/** Moves a vector one hour on, in place. */
function advanceVector(shape: HourlyShape, vector: Float64Array): void {
  const spell = vector[SPELL] as number;
  const trend = vector[TREND] as number;
  vector[SPELL] = Math.exp(-1 / shape.spellHours) * spell + trend;
  vector[TREND] = Math.exp(-1 / shape.trendHours) * trend;
}

/** Moves a covariance one hour on, in place. */
function advanceCovariance(shape: HourlyShape, covariance: Float64Array): void {
  const kept = Math.exp(-1 / shape.spellHours);
  const trendKept = Math.exp(-1 / shape.trendHours);
  for (let row = 0; row < STATES; row++) {
    const at = row * STATES;
    const spell = covariance[at + SPELL] as number;
    const trend = covariance[at + TREND] as number;
    covariance[at + SPELL] = kept * spell + trend;
    covariance[at + TREND] = trendKept * trend;
  }
  for (let column = 0; column < STATES; column++) {
    const spell = covariance[SPELL * STATES + column] as number;
    const trend = covariance[TREND * STATES + column] as number;
    covariance[SPELL * STATES + column] = kept * spell + trend;
    covariance[TREND * STATES + column] = trendKept * trend;
  }
  const add = (state: number, variance: number) => {
    const at = state * STATES + state;
    covariance[at] = (covariance[at] as number) + variance;
  };
  add(LEVEL, shape.levelNoise);
  add(SPELL, shape.spellNoise);
  add(TREND, shape.trendNoise);
  for (let state = FIRST_CYCLE; state < STATES; state++) add(state, shape.cycleNoise);
}

/** Covariance of the state with one hour's mean. */
function withHour(covariance: Float64Array, row: Float64Array): Float64Array {
  const product = new Float64Array(STATES);
  for (let state = 0; state < STATES; state++) {
    let sum = 0;
    for (let other = 0; other < STATES; other++) {
      sum += (covariance[state * STATES + other] as number) * (row[other] as number);
    }
    product[state] = sum;
  }
  return product;
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let index = 0; index < STATES; index++) sum += (a[index] as number) * (b[index] as number);
  return sum;
}

/** What one hour's measured mean had to say. */
export type HourLearned = {
  /** measured less expected */
  readonly surprise: number;
  /** its variance, in units of the scale squared */
  readonly variance: number;
};

/** A state that takes in one hour after another. */
export type HourlyFilter = {
  /** takes in the next hour; null leaves a gap */
  readonly take: (value: number | null) => HourLearned | null;
  /** state after the last hour taken in */
  readonly state: () => HourlyState;
  /** number of the next hour */
  readonly nextHour: () => number;
};

/**
 * Learns level, spell, trend and daily cycle from hourly means, one after another.
 *
 * @param shape - how the quantity moves
 * @param level - where the level is looked for before the first hour, in the quantity's unit
 * @param firstHour - number of the first hour
 * @returns the filter
 *
 * **Source:** Kalman 1960, Journal of Basic Engineering 82, 35–45, from memory; level, damped trend
 * and cycle as a structural time-series model (Harvey 1989, from memory).
 */
export function hourlyFilter(shape: HourlyShape, level: number, firstHour: number): HourlyFilter {
  const { mean, covariance } = unknownState(shape, level);
  let hour = firstHour;
  return {
    take(value) {
      const row = hourOfDay(hour++);
      advanceVector(shape, mean);
      advanceCovariance(shape, covariance);
      if (value === null) return null;
      const gain = withHour(covariance, row);
      const variance = dot(gain, row) + shape.hourNoise;
      const surprise = value - dot(mean, row);
      for (let state = 0; state < STATES; state++) {
        const share = (gain[state] as number) / variance;
        mean[state] = (mean[state] as number) + share * surprise;
        for (let other = 0; other < STATES; other++) {
          const at = state * STATES + other;
          covariance[at] = (covariance[at] as number) - share * (gain[other] as number);
        }
      }
      return { surprise, variance };
    },
    state: () => ({ mean: mean.slice(), covariance: covariance.slice() }),
    nextHour: () => hour,
  };
}

/** Hours ahead, lists of equal length; variances in units of the scale squared. */
export type HoursAhead = {
  readonly mean: Float64Array;
  /** variance of each hour's mean */
  readonly variance: Float64Array;
  /** variance of the sum of all hours up to and with this one */
  readonly sumVariance: Float64Array;
};

/**
 * Expectation of the coming hours, and how wrong it may be, hour by hour and summed up.
 *
 * @param shape - how the quantity moves
 * @param from - what is known after the last hour
 * @param firstHour - number of the first hour ahead
 * @param hours - how many hours
 * @returns the hours ahead
 */
export function hoursAhead(
  shape: HourlyShape,
  from: HourlyState,
  firstHour: number,
  hours: number,
): HoursAhead {
  const state = from.mean.slice();
  const covariance = from.covariance.slice();
  const withSum = new Float64Array(STATES);
  let sum = 0;
  const mean = new Float64Array(hours);
  const variance = new Float64Array(hours);
  const sumVariance = new Float64Array(hours);
  for (let ahead = 0; ahead < hours; ahead++) {
    const row = hourOfDay(firstHour + ahead);
    advanceVector(shape, state);
    advanceVector(shape, withSum);
    advanceCovariance(shape, covariance);
    const withThis = withHour(covariance, row);
    const own = dot(withThis, row) + shape.hourNoise;
    sum += 2 * dot(withSum, row) + own;
    for (let index = 0; index < STATES; index++) {
      withSum[index] = (withSum[index] as number) + (withThis[index] as number);
    }
    mean[ahead] = dot(state, row);
    variance[ahead] = own;
    sumVariance[ahead] = sum;
  }
  return { mean, variance, sumVariance };
}
