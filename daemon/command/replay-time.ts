/** What a text in the time column means. */
export type ReadTime =
  | { readonly kind: 'at'; readonly at: number }
  | { readonly kind: 'unreadable'; readonly because: string };

/** UTC epoch seconds are taken as milliseconds from here on; 10¹¹ s would be the year 5138. */
const MILLISECONDS_FROM = 1e11;
/** The daemon believes no reading's own time before this, so sending one would misplace it. */
const EARLIEST_BELIEVED = Date.UTC(2000, 0, 1);
const MINUTE_MS = 60_000;
const DAY_MS = 86_400_000;
const LOCAL =
  /^(\d{4})-(\d{2})-(\d{2})(?:[T ](\d{2}):(\d{2})(?::(\d{2})(?:[.,](\d{1,9}))?)?)?\s?(Z|[+-]\d{2}:?\d{2})?$/i;
const NUMBER = /^\d+(?:\.\d+)?$/;
const FIXED_OFFSET = /^([+-])(\d{2}):?(\d{2})$/;

/** A zone's offset from UTC at a moment, ms; east is positive. */
export type ZoneOffset = (at: number) => number;

/**
 * The offsets of a time zone.
 *
 * @param zone - IANA name such as `Europe/Oslo`, `UTC`, or a fixed `+01:00`
 * @returns its offset by moment; null when there is no such zone
 *
 * **Source:** the IANA time zone database that the runtime carries.
 */
export function zoneOffset(zone: string): ZoneOffset | null {
  const fixed = offsetMs(zone);
  if (fixed !== null) return () => fixed;
  let format: Intl.DateTimeFormat;
  try {
    format = new Intl.DateTimeFormat('en-US', {
      timeZone: zone,
      hourCycle: 'h23',
      year: 'numeric',
      month: '2-digit',
      day: '2-digit',
      hour: '2-digit',
      minute: '2-digit',
      second: '2-digit',
    });
  } catch {
    return null;
  }
  return (at) => {
    const whole = Math.floor(at / 1000) * 1000;
    const part: Partial<Record<Intl.DateTimeFormatPartTypes, number>> = {};
    for (const { type, value } of format.formatToParts(whole)) part[type] = Number(value);
    const { year = 0, month = 1, day = 1, hour = 0, minute = 0, second = 0 } = part;
    return Date.UTC(year, month - 1, day, hour, minute, second) - whole;
  };
}

function offsetMs(text: string): number | null {
  if (/^(?:Z|UTC)$/i.test(text)) return 0;
  const match = FIXED_OFFSET.exec(text);
  if (match === null) return null;
  const minutes = Number(match[2]) * 60 + Number(match[3]);
  return (match[1] === '-' ? -1 : 1) * minutes * MINUTE_MS;
}

/**
 * Reads a time as recorders write it.
 *
 * @param text - ISO 8601 date and time with or without an offset, or epoch seconds or milliseconds
 * @param zone - what a time without an offset is local to
 * @param notBefore - epoch ms of the series' previous reading, or null: decides which of the two
 *   passes is meant in the hour that is repeated when clocks go back
 * @returns UTC epoch ms, or why not; a local time that clocks going forward have
 *   skipped is refused, and so is one before the year 2000
 */
export function readTime(text: string, zone: ZoneOffset, notBefore: number | null): ReadTime {
  const time = anyTime(text, zone, notBefore);
  if (time.kind === 'at' && time.at < EARLIEST_BELIEVED) {
    return { kind: 'unreadable', because: `"${text}" lies before the year 2000` };
  }
  return time;
}

function anyTime(text: string, zone: ZoneOffset, notBefore: number | null): ReadTime {
  if (NUMBER.test(text)) {
    const number = Number(text);
    return { kind: 'at', at: Math.round(number >= MILLISECONDS_FROM ? number : number * 1000) };
  }
  const match = LOCAL.exec(text);
  if (match === null) {
    return {
      kind: 'unreadable',
      because: `"${text}" is not a time; write 2026-05-04T07:30:00, with Z or an offset if it has one, or epoch seconds`,
    };
  }
  const wall = wallTime(match);
  if (wall === null) {
    return { kind: 'unreadable', because: `"${text}" is not a day and time that exists` };
  }
  const given = match[8];
  if (given !== undefined) return { kind: 'at', at: wall - (offsetMs(given) ?? 0) };
  const passes = [...new Set([zone(wall - DAY_MS), zone(wall + DAY_MS)])]
    .map((offset) => ({ at: wall - offset, offset }))
    .filter(({ at, offset }) => zone(at) === offset)
    .map(({ at }) => at)
    .sort((a, b) => a - b);
  const [first] = passes;
  if (first === undefined) {
    return {
      kind: 'unreadable',
      because: `"${text}" was skipped when the clocks went forward; if the recorder kept winter time, give its offset, for example --zone +01:00`,
    };
  }
  const at = notBefore === null ? first : (passes.find((pass) => pass >= notBefore) ?? first);
  return { kind: 'at', at };
}

/** The date and time as if it were UTC, ms; null for a 30 February or a 25 o'clock. */
function wallTime(match: RegExpExecArray): number | null {
  const [year, month, day, hour, minute, second] = match
    .slice(1, 7)
    .map((text) => Number(text ?? 0));
  const wall = Date.UTC(year ?? 0, (month ?? 0) - 1, day, hour, minute, second);
  const back = new Date(wall);
  const same =
    back.getUTCMonth() + 1 === month &&
    back.getUTCDate() === day &&
    back.getUTCHours() === hour &&
    back.getUTCMinutes() === minute &&
    back.getUTCSeconds() === second;
  return same ? wall + Math.round(Number(`0.${match[7] ?? 0}`) * 1000) : null;
}
