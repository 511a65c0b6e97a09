/** A moment as a clock and a calendar on the wall of the site show it. */
export interface LocalTime {
  /** `yyyy-mm-dd` */
  day: string;
  /** Minutes since midnight by the clock, 0 to 1439. */
  minute: number;
}

const formats = new Map<string, Intl.DateTimeFormat>();

function formatOf(timeZone: string): Intl.DateTimeFormat {
  let format = formats.get(timeZone);
  if (!format) {
    format = new Intl.DateTimeFormat('en-GB', {
      timeZone,
      hourCycle: 'h23',
      ...{ year: 'numeric', month: '2-digit', day: '2-digit' },
      ...{ hour: '2-digit', minute: '2-digit' },
    });
    formats.set(timeZone, format);
  }
  return format;
}

/**
 * @param at - UTC epoch ms
 * @param timeZone - IANA name
 * @throws RangeError on a time zone that is not known
 */
export function localTime(at: number, timeZone: string): LocalTime {
  const part: Record<string, string> = {};
  for (const { type, value } of formatOf(timeZone).formatToParts(at)) part[type] = value;
  return {
    day: `${part.year}-${part.month}-${part.day}`,
    minute: 60 * Number(part.hour) + Number(part.minute),
  };
}

/**
 * The moment at which the clock of a time zone shows a day and a minute. What a clock change leaves
 * out is taken for as long after midnight by the old time; what it shows twice, for the first time.
 *
 * @param day - `yyyy-mm-dd`
 * @param minute - since midnight, also below 0 or beyond the day
 * @returns UTC epoch ms
 */
export function atLocal(day: string, minute: number, timeZone: string): number {
  const asUtc = Date.parse(`${day}T00:00:00Z`) + minute * 60_000;
  const offset = (at: number) => {
    const shown = localTime(at, timeZone);
    const seconds = ((at % 60_000) + 60_000) % 60_000;
    return Date.parse(`${shown.day}T00:00:00Z`) + shown.minute * 60_000 + seconds - at;
  };
  const dayMs = 86_400_000;
  const before = asUtc - offset(asUtc - dayMs);
  if (before + offset(before) === asUtc) return before;
  const after = asUtc - offset(asUtc + dayMs);
  return after + offset(after) === asUtc ? after : before;
}

/**
 * Until this time of the clock what is done still belongs to the evening before, min. Assumption: who
 * coats until late locks up after midnight, and nobody begins so early.
 */
const dayTurnsAtMinute = 4 * 60;

/**
 * The day that somebody at work would say it is: after midnight still the one that they began on.
 *
 * @param at - UTC epoch ms
 * @returns `yyyy-mm-dd`
 */
export function workingDay(at: number, timeZone: string): string {
  const { day, minute } = localTime(at, timeZone);
  if (minute >= dayTurnsAtMinute) return day;
  return new Date(Date.parse(`${day}T00:00:00Z`) - 86_400_000).toISOString().slice(0, 10);
}

/** Minutes since midnight of `hh:mm`. */
export function minuteOf(clock: string): number {
  const [hour = 0, minute = 0] = clock.split(':').map(Number);
  return 60 * hour + minute;
}

/** `hh:mm` by the clock of a time zone. */
export function clockWords(at: number, timeZone: string): string {
  const { minute } = localTime(at, timeZone);
  const two = (value: number) => String(value).padStart(2, '0');
  return `${two(Math.floor(minute / 60))}:${two(minute % 60)}`;
}
