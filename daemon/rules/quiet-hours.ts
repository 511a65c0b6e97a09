import { atLocal, localTime, minuteOf } from './local-time.ts';

/** From when to when people are not to be woken, `hh:mm` by the clock; may go over midnight. */
export interface QuietHours {
  from: string;
  to: string;
}

/**
 * When the quiet hours end that a moment lies in.
 *
 * @param at - UTC epoch ms
 * @returns UTC epoch ms; null when nobody is to be spared just now
 */
export function quietUntil(at: number, quiet: QuietHours | null, timeZone: string): number | null {
  if (quiet === null || quiet.from === quiet.to) return null;
  const [from, to] = [minuteOf(quiet.from), minuteOf(quiet.to)];
  const { day, minute } = localTime(at, timeZone);
  const isOvernight = from > to;
  const isQuiet = isOvernight ? minute >= from || minute < to : minute >= from && minute < to;
  if (!isQuiet) return null;
  if (!isOvernight || minute < to) return atLocal(day, to, timeZone);
  const tomorrow = localTime(atLocal(day, 36 * 60, timeZone), timeZone).day;
  return atLocal(tomorrow, to, timeZone);
}
