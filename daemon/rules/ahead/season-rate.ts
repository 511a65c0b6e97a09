import { hourMs } from '../cure-span.ts';
import { dayIndexAt, type WorkDay } from './work-calendar.ts';

/** Where a coming day’s cure is taken from, the surest first. */
export type RateGround = 'outlook' | 'own-record' | 'typed-months' | 'last-days';

/** What one local day is expected to give a coat at a place. */
export interface DayRate {
  /** Hours at 20 °C that the day gives. */
  hoursAt20: number;
  /** Standard deviation of a week or two like that about it, hours at 20 °C a day. */
  spread: number;
  ground: RateGround;
}

/** The cure that a recorded day gave at a place. */
export interface RecordedDay {
  /** Local midnight, UTC epoch ms. */
  startAt: number;
  /** Hours at 20 °C. */
  hoursAt20: number;
  /** Hours of the day with readings. */
  coveredHours: number;
}

/** The first days of an outlook: what each gives, hours at 20 °C, with its standard deviation. */
export interface OutlookDay {
  hoursAt20: number;
  spread: number;
}

export interface SeasonKnowledge {
  outlook: readonly OutlookDay[];
  recorded: readonly RecordedDay[];
  /** Hours at 20 °C a day for each month, January first, from typed monthly means; null without. */
  months: readonly number[] | null;
}

const dayMs = 24 * hourMs;
/** A year's round, ms: Gregorian mean. */
const yearMs = 365.2425 * dayMs;
/** Days of other years up to so far from the date speak for it. Assumption. */
const nearDays = 10;
/** And at least so many of them. Assumption. */
const leastDays = 5;
/** A recorded day counts with at least so many hours of readings. Assumption. */
const leastCoveredHours = 18;
/** Days at the end of the record that are carried on where nothing else is known. Assumption. */
const lastDays = 14;
/** How uncertain a day's cure is where only a month’s mean is known, as a share. Assumption. */
const typedSpreadShare = 0.35;
/** How quickly days carried on lose their worth: spread added a month, hours at 20 °C. Assumption. */
const carriedSpreadPerMonth = 3;
/** But no more than this share of what they give: seasons swing, they do not drift off. Assumption. */
const mostCarriedShare = 0.4;
/** How much of the spread of single days is left in the mean of a week or two. Assumption. */
const lastingShare = 0.5;

/**
 * What each coming day is expected to give at one place: from the outlook as far as it reaches, then
 * from the place’s own record of that time of the year, else from typed monthly means, else the last
 * fortnight is carried on with growing doubt.
 *
 * @returns one entry a day; null where nothing was ever recorded and nothing typed
 */
export function seasonRates(
  days: readonly WorkDay[],
  { outlook, recorded, months }: SeasonKnowledge,
): DayRate[] | null {
  const whole = recorded
    .filter((day) => day.coveredHours >= leastCoveredHours)
    .map((day) => ({ at: day.startAt, value: (day.hoursAt20 * 24) / day.coveredHours }));
  const last = meanAndSpread(whole.slice(-lastDays).map((day) => day.value));
  const today = days[0]?.startAt ?? 0;
  const rates: DayRate[] = [];
  for (const [i, day] of days.entries()) {
    const ahead = outlook[i];
    if (ahead) {
      rates.push({ ...ahead, ground: 'outlook' });
      continue;
    }
    const before = meanAndSpread(
      whole.filter((one) => isSameSeason(one.at, day.startAt)).map((one) => one.value),
    );
    const typed = months?.[new Date(day.startAt + dayMs / 2).getUTCMonth()];
    if (before && before.count >= leastDays) {
      rates.push({
        hoursAt20: before.mean,
        spread: before.spread * lastingShare,
        ground: 'own-record',
      });
    } else if (typed !== undefined) {
      rates.push({ hoursAt20: typed, spread: typed * typedSpreadShare, ground: 'typed-months' });
    } else if (last) {
      const monthsOn = (day.startAt - today) / (30 * dayMs);
      const drift = Math.min(carriedSpreadPerMonth * monthsOn, mostCarriedShare * last.mean);
      const spread = Math.hypot(last.spread * lastingShare, drift);
      rates.push({ hoursAt20: last.mean, spread, ground: 'last-days' });
    } else if (outlook.length > 0) {
      const end = outlook.at(-1) as OutlookDay;
      rates.push({ ...end, ground: 'last-days' });
    } else return null;
  }
  return rates;
}

/** Whether a recorded day lies near the same date of another year. */
function isSameSeason(recordedAt: number, at: number): boolean {
  const years = Math.round((at - recordedAt) / yearMs);
  return years >= 1 && Math.abs(at - recordedAt - years * yearMs) <= nearDays * dayMs;
}

function meanAndSpread(values: readonly number[]) {
  if (values.length === 0) return null;
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return {
    mean,
    spread: Math.sqrt(squares / Math.max(1, values.length - 1)),
    count: values.length,
  };
}

/**
 * When a coat has gathered what it needs.
 *
 * @param rates - one a day of `days`
 * @param fromAt - when its last board was done, UTC epoch ms
 * @param needHours - hours at 20 °C
 * @param deviation - how many spreads warmer (or, below 0, colder) than expected all days are
 * @returns UTC epoch ms; null where the calendar ends before
 */
export function curedAt(
  days: readonly WorkDay[],
  rates: readonly DayRate[],
  fromAt: number,
  needHours: number,
  deviation: number,
): number | null {
  let left = needHours;
  if (left <= 0) return fromAt;
  for (let i = dayIndexAt(days, fromAt); i < days.length - 1; i++) {
    const from = Math.max(fromAt, (days[i] as WorkDay).startAt);
    const end = (days[i + 1] as WorkDay).startAt;
    const { hoursAt20, spread } = rates[i] as DayRate;
    const perMs = Math.max(0, hoursAt20 + deviation * spread) / dayMs;
    const gained = perMs * (end - from);
    if (gained >= left) return from + left / perMs;
    left -= gained;
  }
  return null;
}
