import { within } from './argument-range.ts';
import { lagged } from './hourly-lag.ts';
import { hourlyMeans } from './hourly-means.ts';
import { type OutdoorResponse, outdoorResponse } from './outdoor-response.ts';
import { type QuantityOutlook, quantityOutlook } from './quantity-outlook.ts';

/** A temperature outdoors, measured or forecast. */
export type OutdoorReading = {
  /** UTC epoch, ms */
  readonly at: number;
  /** °C, −90 to 150 */
  readonly tempC: number;
};

/** What is known of outdoors. */
export type Outdoors = {
  /** measured, any order */
  readonly history: readonly OutdoorReading[];
  /** forecast, any order; hourly or every few hours */
  readonly forecast: readonly OutdoorReading[];
  /** true where the place itself is outdoors: it then follows in full and at once */
  readonly isThePlace?: boolean | undefined;
};

/** Error of a weather forecast's temperature: at its start, K, and its growth, K a day. Assumption, from memory of what weather services report of themselves (1 to 1.5 K on the first day, about 3 K on the fifth). */
const FORECAST_ERROR_K = 1;
const FORECAST_ERROR_K_PER_DAY = 0.5;
const MS_PER_HOUR = 3_600_000;

/** Fills gaps along straight lines, ends level. */
function withoutGaps(values: readonly (number | null)[]): number[] {
  const known = values.flatMap((value, index) => (value === null ? [] : [{ value, index }]));
  let next = 0;
  return values.map((_, index) => {
    while (next < known.length - 1 && (known[next]?.index ?? 0) < index) next += 1;
    const after = known[next] ?? { value: 0, index };
    const before = known[next - 1];
    if (before === undefined || after.index <= index) return after.value;
    const share = (index - before.index) / (after.index - before.index);
    return before.value + share * (after.value - before.value);
  });
}

/** Outdoors hour by hour: the past, then the forecast, then what its own days make likely. */
function outdoorCourse(
  { history, forecast }: Outdoors,
  { fromAt, hours, priorScale }: FollowOptions,
  pastHours: number,
): { readonly values: number[]; readonly error: number[] } | null {
  const value = ({ tempC }: OutdoorReading) => within('tempC', tempC, -90, 150);
  const coming = forecast.filter(({ at }) => at > fromAt);
  const past = hourlyMeans(history, value, fromAt, pastHours);
  if (coming.length === 0 || past.length === 0) return null;
  const lastAt = coming.reduce((last, { at }) => Math.max(last, at), fromAt);
  const told = Math.min(hours, Math.ceil((lastAt - fromAt) / MS_PER_HOUR));
  const ahead = hourlyMeans(coming, value, fromAt + told * MS_PER_HOUR, told);
  const lead = Array.from({ length: told - ahead.length }, () => null);
  const early = Array.from({ length: pastHours - past.length }, () => null);
  const values = withoutGaps([...early, ...past, ...lead, ...ahead]);
  const error = Array.from(
    { length: told },
    (_, hour) => FORECAST_ERROR_K + (FORECAST_ERROR_K_PER_DAY * hour) / 24,
  );
  if (told === hours) return { values, error };
  const beyond = quantityOutlook(
    [...past, ...withoutGaps([...lead, ...ahead])],
    hours - told,
    priorScale,
  );
  const atEnd = error[told - 1] as number;
  return {
    values: [...values, ...beyond.mean],
    error: [...error, ...beyond.error.map((own) => Math.hypot(own, atEnd))],
  };
}

/** Where the outlook starts, how far it goes and how restless a place is taken to be. */
export type FollowOptions = {
  readonly fromAt: number;
  readonly hours: number;
  readonly priorScale: number;
};

/**
 * A place's coming hours from a forecast of the weather outdoors: it follows with its own gain and
 * lag, learned from the past, and what it does by itself is carried on as without a forecast.
 *
 * @param inside - hourly means at the place, oldest first, null for a gap
 * @param outdoors - past and forecast outdoors
 * @param options - start, length, prior unrest
 * @returns the outlook; without a usable forecast that of the place alone
 */
export function followOutdoors(
  inside: readonly (number | null)[],
  outdoors: Outdoors,
  options: FollowOptions,
): QuantityOutlook {
  const past = inside.length;
  const course = outdoorCourse(outdoors, options, past);
  const response: OutdoorResponse | null =
    course === null
      ? null
      : outdoors.isThePlace
        ? { gain: 1, lagHours: 0 }
        : outdoorResponse(inside, course.values.slice(0, past));
  if (course === null || response === null) {
    return quantityOutlook(inside, options.hours, options.priorScale);
  }
  const share = lagged(course.values, response.lagHours).map((value) => response.gain * value);
  const rest = inside.map((value, hour) =>
    value === null ? null : value - (share[hour] as number),
  );
  const own = quantityOutlook(rest, options.hours, options.priorScale);
  let shared = 0;
  const sumError = own.sumError.map((sum, hour) => {
    // a forecast that is wrong stays wrong: its errors add up in full
    shared += response.gain * (course.error[hour] as number);
    return Math.hypot(sum, shared);
  });
  return {
    mean: own.mean.map((value, hour) => value + (share[past + hour] as number)),
    error: own.error.map((error, hour) =>
      Math.hypot(error, response.gain * (course.error[hour] as number)),
    ),
    sumError,
  };
}
