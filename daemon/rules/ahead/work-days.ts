import { atLocal, localTime, minuteOf } from '../local-time.ts';
import type { WorkDay } from './work-calendar.ts';

export type WeekDay = 'mon' | 'tue' | 'wed' | 'thu' | 'fri' | 'sat' | 'sun';

const weekDays: readonly WeekDay[] = ['sun', 'mon', 'tue', 'wed', 'thu', 'fri', 'sat'];

export interface WorkHours {
  days: readonly WeekDay[];
  /** `hh:mm` by the clock of the site. */
  from: string;
  to: string;
}

/**
 * The coming days of a site, today first, each from midnight to midnight by its own clock.
 *
 * @param now - UTC epoch ms
 * @param timeZone - IANA name
 */
export function workDays(
  now: number,
  count: number,
  hours: WorkHours,
  timeZone: string,
): WorkDay[] {
  const today = localTime(now, timeZone).day;
  const [opens, closes] = [minuteOf(hours.from), minuteOf(hours.to)];
  return Array.from({ length: count }, (_, i) => {
    const date = new Date(Date.parse(`${today}T00:00:00Z`) + i * 86_400_000);
    const day = date.toISOString().slice(0, 10);
    const isWorked = hours.days.includes(weekDays[date.getUTCDay()] as WeekDay);
    return {
      startAt: atLocal(day, 0, timeZone),
      opensAt: isWorked ? atLocal(day, opens, timeZone) : null,
      closesAt: isWorked ? atLocal(day, closes, timeZone) : null,
    };
  });
}
