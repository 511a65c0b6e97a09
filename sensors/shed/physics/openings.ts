import { seededRandom } from './random.ts';

/** How people and wind let fresh air into a shed. */
export interface AiringHabits {
  /** while the door stands open, changes per hour */
  readonly doorPerHour: number;
  /** minutes of every working hour in which it does */
  readonly doorMinutesAnHour: number;
  /** share of the days on which somebody airs from noon to three */
  readonly airingShare: number;
  /** changes per hour in a fresh breeze */
  readonly windPerHour: number;
}

const HOUR_MS = 3_600_000;
const DAY_MS = 24 * HOUR_MS;
const MINUTE_MS = 60_000;
const WORK = { fromHour: 7, toHour: 18 } as const;
const AIRING = { fromHour: 12, toHour: 15 } as const;
const WIND_PERIODS_H = [9, 31, 73] as const;

/**
 * Fresh air through door and wind, beyond that of the cracks.
 *
 * @param seed - any integer
 * @param habits - see {@link AiringHabits}
 * @returns changes per hour at a UTC epoch-millisecond moment, 0 or more; a pure function of it
 */
export function openings(seed: number, habits: AiringHabits): (at: number) => number {
  const random = seededRandom(seed, 4);
  const gusts = WIND_PERIODS_H.map((hours) => ({
    periodMs: hours * HOUR_MS * random.between(0.9, 1.1),
    phase: random.between(0, 2 * Math.PI),
  }));
  let day = Number.NaN;
  let airedToday = false;
  return (at) => {
    const today = Math.floor(at / DAY_MS);
    if (today !== day) {
      day = today;
      airedToday = seededRandom(seed ^ today, 5).uniform() < habits.airingShare;
    }
    let breeze = 0;
    for (const { periodMs, phase } of gusts) {
      breeze += Math.sin((2 * Math.PI * at) / periodMs + phase) / gusts.length;
    }
    const wind = habits.windPerHour * Math.max(0, breeze);
    const hour = (at % DAY_MS) / HOUR_MS;
    if (airedToday && hour >= AIRING.fromHour && hour < AIRING.toHour) {
      return wind + habits.doorPerHour;
    }
    const minute = (at % HOUR_MS) / MINUTE_MS;
    const works = hour >= WORK.fromHour && hour < WORK.toHour;
    return wind + (works && minute < habits.doorMinutesAnHour ? habits.doorPerHour : 0);
  };
}
