import { type CureNeed, needAt } from './job-chain.ts';
import { curedAt, type DayRate } from './season-rate.ts';
import type { WorkDay } from './work-calendar.ts';

/** The last day on which a coat can be begun at a place and still cure before the cold. */
export type LastStart =
  /** Begun later it stays soft over winter; `seasonEndsAt` is the last day warm enough to brush. */
  | { kind: 'by'; at: number; seasonEndsAt: number }
  /** Begun today already it would not cure in time. */
  | { kind: 'not-this-year'; seasonEndsAt: number | null }
  /** The place stays warm enough all through what is known of it. */
  | { kind: 'no-limit' }
  /** Nothing is known of the season at this place. */
  | { kind: 'cannot-tell' };

/** A season is over when it was too cold for so many days on end. Assumption. */
const coldDays = 30;
/** z of the 90 % point: the coat slower and the days colder than in nine years of ten. */
const z90 = 1.2815515655446004;

/**
 * @param rates - one a day of `days`; null where the place is unknown
 * @param leastDayHours - a day that gives less is too cold for the brush, hours at 20 °C
 */
export function lastStart(
  days: readonly WorkDay[],
  rates: readonly DayRate[] | null,
  need: CureNeed,
  leastDayHours: number,
): LastStart {
  if (rates === null) return { kind: 'cannot-tell' };
  const isWarm = (i: number) => (rates[i]?.hoursAt20 ?? 0) >= leastDayHours;
  const firstWarm = rates.findIndex((_, i) => isWarm(i));
  if (firstWarm < 0 || firstWarm > coldDays) {
    return { kind: 'not-this-year', seasonEndsAt: null };
  }
  let seasonEnd: number | null = null;
  for (let i = firstWarm, cold = 0; i < rates.length; i++) {
    cold = isWarm(i) ? 0 : cold + 1;
    if (cold === coldDays) {
      seasonEnd = i - coldDays;
      break;
    }
  }
  if (seasonEnd === null) {
    // Carried on from the last days it says nothing about winter.
    const knowsWinter = rates.every((day) => day.ground !== 'last-days');
    return knowsWinter ? { kind: 'no-limit' } : { kind: 'cannot-tell' };
  }
  const seasonEndsAt = days[seasonEnd + 1]?.startAt ?? Number.POSITIVE_INFINITY;
  for (let i = seasonEnd; i >= 0; i--) {
    const { closesAt } = days[i] as WorkDay;
    if (closesAt === null || !isWarm(i)) continue;
    const cured = curedAt(days, rates, closesAt, needAt(need, z90), -z90);
    if (cured !== null && cured <= seasonEndsAt) return { kind: 'by', at: closesAt, seasonEndsAt };
  }
  return { kind: 'not-this-year', seasonEndsAt };
}
