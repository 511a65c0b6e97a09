/** A moment on the calendar of a time zone. */
export interface CalendarTime {
  /** Days since 1970-01-01 on that calendar, so that differences are whole days. */
  readonly day: number;
  readonly hour: number;
  /** “Thursday” */
  readonly weekday: string;
}

/** Reads moments on the calendar of one time zone. */
export interface Calendar {
  at(moment: number): CalendarTime;
  /** “14:32”, or “2:32 PM” where that is usual. */
  clock(moment: number): string;
  /** “Thu 14 May, 14:32” */
  exact(moment: number): string;
  /** “Thu 14 May” */
  date(moment: number): string;
  /** “May 2026”, of a month written yyyy-mm. */
  month(month: string): string;
}

const USUAL_LOCALE = 'en-GB';
const HOUR_MS = 3_600_000;
const DAY_MS = 24 * HOUR_MS;

/**
 * @param timeZone - IANA name; the device’s own when left out
 * @param locale - BCP 47 tag in which weekdays, months and clocks are written
 * @returns a calendar whose `moment`s are UTC epoch ms
 */
export function createCalendar(timeZone?: string, locale: string = USUAL_LOCALE): Calendar {
  const zone = timeZone === undefined ? {} : { timeZone };
  const ofDay = { ...zone, weekday: 'short', day: 'numeric', month: 'short' } as const;
  const parts = format(locale, {
    ...zone,
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    weekday: 'long',
    hourCycle: 'h23',
  });
  const clock = format(locale, { ...zone, timeStyle: 'short' });
  const date = format(locale, ofDay);
  const padded = format(locale, { ...ofDay, hour: '2-digit', minute: '2-digit' });
  const plain = format(locale, { ...ofDay, hour: 'numeric', minute: '2-digit' });
  // A month is a name and no moment: the time zone would make another of it.
  const month = format(locale, { timeZone: 'UTC', month: 'long', year: 'numeric' });
  let isPadded: boolean | null = null;
  return {
    at(moment) {
      const found = new Map(
        parts()
          .formatToParts(moment)
          .map((part) => [part.type, part.value]),
      );
      const number = (type: Intl.DateTimeFormatPartTypes) => Number(found.get(type) ?? 0);
      const midnight = Date.UTC(number('year'), number('month') - 1, number('day'));
      return {
        day: Math.round(midnight / DAY_MS),
        hour: number('hour'),
        weekday: found.get('weekday') ?? '',
      };
    },
    clock: (moment) => clock().format(moment),
    exact(moment) {
      isPadded ??= writesZero(clock());
      return (isPadded ? padded() : plain()).format(moment);
    },
    date: (moment) => date().format(moment),
    month: (text) => month().format(Date.parse(`${text}-01T00:00:00Z`)),
  };
}

/** A format made when it is first wanted: each costs a slow tablet a frame. */
function format(locale: string, options: Intl.DateTimeFormatOptions): () => Intl.DateTimeFormat {
  let made: Intl.DateTimeFormat | null = null;
  return () => (made ??= new Intl.DateTimeFormat(locale, options));
}

/** Whether a clock shows nine in the morning as 09 and not as 9. */
function writesZero(clock: Intl.DateTimeFormat): boolean {
  // Some hour of the twelve is a single digit, whatever the time zone.
  return Array.from({ length: 12 }, (_, i) => clock.formatToParts(i * HOUR_MS)).every((parts) =>
    parts.some(({ type, value }) => type === 'hour' && value.length > 1),
  );
}

/**
 * The text a `datetime-local` field wants for a moment, in the device’s own time.
 *
 * @param moment - UTC epoch ms
 */
export function toLocalField(moment: number): string {
  const local = new Date(moment);
  const two = (value: number) => String(value).padStart(2, '0');
  return (
    `${local.getFullYear()}-${two(local.getMonth() + 1)}-${two(local.getDate())}` +
    `T${two(local.getHours())}:${two(local.getMinutes())}`
  );
}

/**
 * The moment meant by a `datetime-local` field, as the contract wants it.
 *
 * @returns ISO 8601 UTC; the text itself when it is no time, so that the daemon names the field
 */
export function fromLocalField(text: string): string {
  const moment = new Date(text).getTime();
  return Number.isNaN(moment) ? text : new Date(moment).toISOString();
}
