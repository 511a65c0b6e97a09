import type { Calendar } from './calendar.ts';

const MINUTE_MS = 60_000;
const HOUR_MS = 3_600_000;
/** The night belongs to the day on which it began. */
const NIGHT_ENDS = 5;

/** A part of a day as a painter divides it. */
export type PartOfDay = 'early' | 'before-lunch' | 'at-lunch' | 'after-lunch' | 'evening' | 'night';

/** A moment as a painter thinks of it; a catalogue says it in its language. */
export type When =
  | { readonly kind: 'now' }
  /** 5 stands for a few; else tens of minutes. */
  | { readonly kind: 'minutes'; readonly minutes: number }
  | { readonly kind: 'about-an-hour' }
  | { readonly kind: 'today'; readonly part: PartOfDay }
  | { readonly kind: 'tomorrow'; readonly part: PartOfDay }
  /** Within a week; `weekday` in the reader’s language, without inflection. */
  | { readonly kind: 'weekday'; readonly weekday: string; readonly part: PartOfDay }
  /** Later than six days; `date` as the reader writes it. */
  | { readonly kind: 'date'; readonly date: string };

/**
 * When something is expected, as a painter would think of it.
 *
 * @param at - UTC epoch ms
 * @param now - UTC epoch ms
 */
export function whenOf(at: number, now: number, calendar: Calendar): When {
  const ahead = at - now;
  if (ahead <= 0) return { kind: 'now' };
  if (ahead < 10 * MINUTE_MS) return { kind: 'minutes', minutes: 5 };
  if (ahead < 50 * MINUTE_MS) {
    return { kind: 'minutes', minutes: Math.round(ahead / (10 * MINUTE_MS)) * 10 };
  }
  if (ahead < 90 * MINUTE_MS) return { kind: 'about-an-hour' };
  const then = calendar.at(at);
  const part = partOf(then.hour);
  const day = then.hour < NIGHT_ENDS ? then.day - 1 : then.day;
  const days = day - calendar.at(now).day;
  if (days > 6) return { kind: 'date', date: calendar.date(at) };
  if (days <= 0) return { kind: 'today', part };
  if (days === 1) return { kind: 'tomorrow', part };
  return { kind: 'weekday', weekday: calendar.at(at - dayShift(then.hour)).weekday, part };
}

/** A moment that has passed, as a painter thinks of it; a catalogue says it in its language. */
export type Past =
  | { readonly kind: 'just-now' }
  | { readonly kind: 'minutes-ago'; readonly minutes: number }
  | { readonly kind: 'today'; readonly part: PartOfDay }
  | { readonly kind: 'yesterday'; readonly part: PartOfDay }
  /** Within the last six days; `weekday` in the reader’s language, without inflection. */
  | { readonly kind: 'weekday'; readonly weekday: string; readonly part: PartOfDay }
  | { readonly kind: 'date'; readonly date: string };

/**
 * When something was, as a painter would think of it.
 *
 * @param at - UTC epoch ms
 * @param now - UTC epoch ms
 */
export function pastOf(at: number, now: number, calendar: Calendar): Past {
  const ago = now - at;
  if (ago < 5 * MINUTE_MS) return { kind: 'just-now' };
  if (ago < 55 * MINUTE_MS) {
    return { kind: 'minutes-ago', minutes: Math.round(ago / (5 * MINUTE_MS)) * 5 };
  }
  const then = calendar.at(at);
  const part = partOf(then.hour);
  const nightShift = dayShift(then.hour);
  const days = calendar.at(now).day - calendar.at(at - nightShift).day;
  if (days > 6) return { kind: 'date', date: calendar.date(at) };
  if (days <= 0) return { kind: 'today', part };
  if (days === 1) return { kind: 'yesterday', part };
  return { kind: 'weekday', weekday: calendar.at(at - nightShift).weekday, part };
}

/** A length of time rounded to what matters; a catalogue says it in its language. */
export type Length =
  | { readonly kind: 'moment' }
  | { readonly kind: 'minutes'; readonly minutes: number }
  | { readonly kind: 'hours'; readonly hours: number }
  | { readonly kind: 'days'; readonly days: number; readonly hours: number };

/**
 * A length of time, rounded to what matters: 40 minutes, 3 hours, 2 days 4 hours.
 *
 * @param ms - 0 or more; less than half a minute is a moment
 */
export function lengthOf(ms: number): Length {
  if (ms < MINUTE_MS / 2) return { kind: 'moment' };
  const minutes = Math.round(ms / MINUTE_MS);
  if (minutes < 60) return { kind: 'minutes', minutes };
  const hours = Math.round(ms / HOUR_MS);
  if (hours < 48) return { kind: 'hours', hours };
  const days = Math.floor(hours / 24);
  return days >= 7
    ? { kind: 'days', days: Math.round(hours / 24), hours: 0 }
    : { kind: 'days', days, hours: hours - days * 24 };
}

/** How long ago something was; null for what has only just happened. */
export function agoOf(at: number, now: number): Length | null {
  const ago = now - at;
  return ago < 90_000 ? null : lengthOf(ago);
}

function partOf(hour: number): PartOfDay {
  if (hour < NIGHT_ENDS || hour >= 21) return 'night';
  if (hour < 8) return 'early';
  if (hour < 12) return 'before-lunch';
  if (hour < 13) return 'at-lunch';
  if (hour < 17) return 'after-lunch';
  return 'evening';
}

function dayShift(hour: number): number {
  return hour < NIGHT_ENDS ? NIGHT_ENDS * HOUR_MS : 0;
}
