import { within } from './argument-range.ts';
import { hourlyMeans } from './hourly-means.ts';
import { followOutdoors, type Outdoors } from './outdoor-forecast.ts';
import { quantityOutlook } from './quantity-outlook.ts';

/** One reading of the air: what is missing is null or left out. */
export type AirReading = {
  /** UTC epoch, ms */
  readonly at: number;
  /** °C, −90 to 150 */
  readonly tempC: number;
  /** %, 0 to 100 */
  readonly rhPercent?: number | null | undefined;
};

/** How far to look ahead, and what is known of outdoors. */
export type OutlookOptions = {
  /** 1 to 1,440 h, default 1,440 (60 days) */
  readonly horizonHours?: number | undefined;
  /** outdoors in the past and as forecast; left out, the place is carried on by itself */
  readonly outdoors?: Outdoors | undefined;
};

/** The coming hours at a place, plain data; lists of equal length, one entry an hour from `fromAt` on. */
export type TemperatureOutlook = {
  /** start of the first hour: the time of the last reading, UTC epoch ms */
  readonly fromAt: number;
  /** expected mean of each hour, °C */
  readonly tempC: readonly number[];
  /** standard deviation of each hour's error, K */
  readonly errorK: readonly number[];
  /** standard deviation of the error of all hours up to and with this one added up, K·h */
  readonly sumErrorKh: readonly number[];
  /** expected mean of each hour, %; null where humidity was never read */
  readonly rhPercent: readonly number[] | null;
  /** standard deviation of each hour's error, %; null likewise */
  readonly rhErrorPercent: readonly number[] | null;
};

/** How far back the record is read, h. Assumption: 14 to 42 days make no odds in the backtest. */
const LOOK_BACK_HOURS = 28 * 24;
/** 60 days. */
const LONGEST_HOURS = 1440;

/** Prior of the hour-to-hour unrest of a temperature, K: between the 0.13 of a display case and the 1.6 of a weather station in the backtest. */
const PRIOR_SCALE_K = 0.7;
/** The same of relative humidity, %: between 0.3 and 8. */
const PRIOR_SCALE_PERCENT = 3;

/**
 * Temperature and humidity at a place for the coming hours, from its recorded days.
 *
 * Level, daily cycle and damped trend are carried on; the error grows with the time ahead as it did
 * in the backtest and is scaled on the place's own past days, the more so the longer they are.
 *
 * @param history - readings in any order, an hour or weeks of them; the last 28 days are used
 * @param options - horizon, and outdoors with a forecast where there is one
 * @returns the outlook from the last reading on; null without readings
 * @throws RangeError on a reading or option outside its range
 *
 * **Source:** own method; test/bench/forecast.bench.ts holds it against recordings.
 */
export function temperatureOutlook(
  history: readonly AirReading[],
  options: OutlookOptions = {},
): TemperatureOutlook | null {
  const hours = Math.round(within('horizonHours', options.horizonHours ?? LONGEST_HOURS, 1, 1440));
  if (history.length === 0) return null;
  let fromAt = Number.NEGATIVE_INFINITY;
  for (const { at, tempC, rhPercent } of history) {
    within('tempC', tempC, -90, 150);
    within('rhPercent', rhPercent ?? 0, 0, 100);
    fromAt = Math.max(fromAt, at);
  }
  const past = (value: (reading: AirReading) => number | null) =>
    hourlyMeans(history, value, fromAt, LOOK_BACK_HOURS);
  const inside = past(({ tempC }) => tempC);
  const warmth = options.outdoors
    ? followOutdoors(inside, options.outdoors, { fromAt, hours, priorScale: PRIOR_SCALE_K })
    : quantityOutlook(inside, hours, PRIOR_SCALE_K);
  const damp = past(({ rhPercent }) => rhPercent ?? null);
  const humidity = damp.length === 0 ? null : quantityOutlook(damp, hours, PRIOR_SCALE_PERCENT);
  return {
    fromAt,
    tempC: warmth.mean,
    errorK: warmth.error,
    sumErrorKh: warmth.sumError,
    rhPercent: humidity?.mean.map((value) => Math.min(100, Math.max(0, value))) ?? null,
    rhErrorPercent: humidity?.error ?? null,
  };
}
