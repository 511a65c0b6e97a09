import { type HourlyShape, type HoursAhead, hourlyFilter, hoursAhead } from './hourly-state.ts';

/**
 * How the air of a place moves, in units of its own unrest; temperature and relative humidity alike.
 *
 * **Source:** own fit, likelihood of the mean of the next 6 to 168 h, on every other fortnight of
 * four recorded temperatures (two weather stations, a heated room, a display case); flat around its
 * best. A fit of its own to relative humidity gains little. test/bench/forecast.bench.ts reports on
 * the other fortnights.
 */
const AIR: HourlyShape = {
  spellHours: 17,
  trendHours: 1.2,
  spellNoise: 0.096,
  trendNoise: 0.0605,
  levelNoise: 0.108,
  cycleNoise: 0.00051,
  hourNoise: 0.0196,
  cyclePrior: 1.09,
  levelPrior: 400,
};

/** The coming hours of one quantity, in its unit; lists of equal length. */
export type QuantityOutlook = {
  /** expected mean of each hour */
  readonly mean: readonly number[];
  /** standard deviation of each hour's error */
  readonly error: readonly number[];
  /** standard deviation of the error of all hours up to and with this one added up, unit·h */
  readonly sumError: readonly number[];
};

/** Weight of the scale before anything is known, in hours watched. Assumption. */
const PRIOR_SCALE_HOURS = 24;
/** Weight, in days, of trusting the hour-to-hour unrest for what days do. Assumption: 1 to 6 make no odds in the backtest. */
const PRIOR_GROWTH_DAYS = 3;
/** A day's forecast is looked back upon this often, h. */
const LOOK_BACK_EVERY = 12;
const DAY_HOURS = 24;

/** A forecast of the coming day, kept until the day is over. */
type DayAhead = { readonly from: number; readonly sum: number; readonly variance: number };

/** Squared error of past days' forecasts over what was expected of it; days with gaps are left out. */
function daysOverExpected(values: readonly (number | null)[], forecasts: readonly DayAhead[]) {
  let ratio = 0;
  let days = 0;
  for (const { from, sum, variance } of forecasts) {
    const day = values.slice(from, from + DAY_HOURS);
    const known = day.filter((value) => value !== null);
    if (day.length < DAY_HOURS || known.length < DAY_HOURS) continue;
    const truth = known.reduce((a, b) => a + b, 0);
    ratio += (LOOK_BACK_EVERY / DAY_HOURS) * ((truth - sum) ** 2 / variance);
    days += LOOK_BACK_EVERY / DAY_HOURS;
  }
  return { ratio, days };
}

/**
 * The coming hours of a quantity from its hourly means: level, daily cycle and damped trend, with an
 * error that was scaled on the place's own past days.
 *
 * @param values - hourly means, oldest first, null for a gap; at least one number
 * @param hours - how many hours ahead
 * @param priorScale - hour-to-hour unrest before it has been watched, in the quantity's unit
 * @returns expectation and error; the longer the history, the more of the scale is the place's own
 * @throws RangeError without a single value
 */
export function quantityOutlook(
  values: readonly (number | null)[],
  hours: number,
  priorScale: number,
): QuantityOutlook {
  const known = values.filter((value) => value !== null);
  if (known.length === 0) throw new RangeError('values hold no number; allowed: at least one');
  const level = known.reduce((a, b) => a + b, 0) / known.length;
  const filter = hourlyFilter(AIR, level, -values.length);
  const forecasts: DayAhead[] = [];
  let squares = 0;
  let watched = 0;
  values.forEach((value, index) => {
    const learned = filter.take(value);
    // the first day only finds out where the level is
    if (learned !== null && index >= DAY_HOURS) {
      squares += learned.surprise ** 2 / learned.variance;
      watched += 1;
    }
    if (index < DAY_HOURS || index % LOOK_BACK_EVERY !== 0) return;
    if (index + DAY_HOURS >= values.length) return;
    const day = hoursAhead(AIR, filter.state(), filter.nextHour(), DAY_HOURS);
    forecasts.push({
      from: index + 1,
      sum: day.mean.reduce((a, b) => a + b, 0),
      variance: day.sumVariance[DAY_HOURS - 1] as number,
    });
  });
  const prior = PRIOR_SCALE_HOURS * priorScale ** 2;
  const hourly = (prior + squares) / (PRIOR_SCALE_HOURS + watched);
  const { ratio, days } = daysOverExpected(values, forecasts);
  const scale = Math.sqrt((PRIOR_GROWTH_DAYS * hourly + ratio) / (PRIOR_GROWTH_DAYS + days));
  return inUnits(hoursAhead(AIR, filter.state(), filter.nextHour(), hours), scale);
}

function inUnits({ mean, variance, sumVariance }: HoursAhead, scale: number): QuantityOutlook {
  const spread = (value: number) => scale * Math.sqrt(value);
  return {
    mean: Array.from(mean),
    error: Array.from(variance, spread),
    sumError: Array.from(sumVariance, spread),
  };
}
