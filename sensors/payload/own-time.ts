import type { Inner } from '../../daemon/wording/phrase.ts';
import { because, type Refusal, type Refused, refuse, sent, shown } from './refusal.ts';

export type OwnTime = { readonly kind: 'time'; readonly at: number } | Refused;

/** From this number on a time is in milliseconds, below it in seconds; 10¹¹ s is the year 5138. */
const millisecondsFrom = 1e11;
/** The last moment a date can name, epoch ms; ECMA-262, time values. */
const lastMoment = 8.64e15;
const msPerDay = 86_400_000;
/** The Gregorian calendar repeats after 400 years, which are this many days. */
const daysIn400Years = 146_097;

const extended =
  /^(\d{4})-(\d\d)-(\d\d)[T ](\d\d):(\d\d)(?::(\d\d)(?:[.,](\d{1,12}))?)?(Z|[+-]\d\d(?::?\d\d)?)$/i;
const basic =
  /^(\d{4})(\d\d)(\d\d)T(\d\d)(\d\d)(?:(\d\d)(?:[.,](\d{1,12}))?)?(Z|[+-]\d\d(?:\d\d)?)$/i;
const withoutOffset = /^\d{4}-?\d\d-?\d\d(?:[T ]\d\d:?\d\d(?::?\d\d(?:[.,]\d{1,12})?)?)?$/i;

/**
 * Reads the `time` of a JSON payload: ISO 8601 with an offset or Z, or epoch seconds, or from
 * 10¹¹ on epoch milliseconds. Whether the moment is plausible is judged elsewhere.
 * @param time the member as parsed
 * @returns epoch ms, integer, rounded to the nearest
 */
export function ownTime(time: unknown): OwnTime {
  if (typeof time === 'number') {
    return momentOf(time < millisecondsFrom ? time * 1000 : time, time);
  }
  if (typeof time !== 'string') {
    return refused(because('time-unlike', { sent: sent(time) }));
  }
  const word = shown(time);
  const parts = extended.exec(time) ?? basic.exec(time);
  if (parts === null) {
    const code = withoutOffset.test(time) ? 'time-no-zone' : 'time-not-iso';
    return refused(because(code, { word }));
  }
  const at = moment(parts);
  return at === null ? refused(because('time-no-such-day', { word })) : { kind: 'time', at };
}

/**
 * A number of seconds since 1970 as a moment.
 * @param seconds epoch seconds, any number
 * @param where where it stood, for a sentence; null where a message has one time alone
 * @returns epoch ms, integer, rounded to the nearest
 */
export function epochSeconds(seconds: number, where: Inner | null = null): OwnTime {
  return momentOf(seconds * 1000, seconds, where);
}

function momentOf(ms: number, written: number, where: Inner | null = null): OwnTime {
  const at = Math.round(ms) + 0;
  if (Number.isFinite(at) && Math.abs(at) <= lastMoment) return { kind: 'time', at };
  return refused(because('time-beyond', { word: String(written), spot: where }));
}

function moment(parts: RegExpExecArray): number | null {
  const field = (index: number) => Number(parts[index] ?? '0');
  const [year, month, day, hour, minute, second] = [1, 2, 3, 4, 5, 6].map(field) as [
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const offset = offsetMinutes(parts[8] ?? 'Z');
  // 60 is a leap second (ISO 8601, RFC 3339 section 5.6); it is read as the next minute's start.
  if (month < 1 || month > 12 || hour > 23 || minute > 59 || second > 60 || offset === null) {
    return null;
  }
  if (day < 1 || day > daysInMonth(year, month)) return null;
  const ms = Math.round(Number(`0.${parts[7] ?? '0'}`) * 1000);
  return startOfDay(year, month, day) + ((hour * 60 + minute - offset) * 60 + second) * 1000 + ms;
}

function startOfDay(year: number, month: number, day: number): number {
  // Date.UTC takes the years 0 to 99 for 1900 to 1999, hence the detour.
  return Date.UTC(year + 400, month - 1, day) - daysIn400Years * msPerDay;
}

function daysInMonth(year: number, month: number): number {
  return (Date.UTC(year + 400, month, 1) - Date.UTC(year + 400, month - 1, 1)) / msPerDay;
}

function offsetMinutes(zone: string): number | null {
  if (zone.toUpperCase() === 'Z') return 0;
  const digits = zone.slice(1).replace(':', '');
  const hours = Number(digits.slice(0, 2));
  const minutes = Number(digits.slice(2) || '0');
  if (hours > 23 || minutes > 59) return null;
  return (zone.startsWith('-') ? -1 : 1) * (hours * 60 + minutes);
}

function refused(why: Pick<Refusal, 'detail' | 'said'>): Refused {
  return refuse({ code: 'time-not-understood', ...why });
}
