/** Any Monday; UTC. */
const MONDAY = Date.UTC(2024, 0, 1);
const DAY_MS = 86_400_000;

const days = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const;

/**
 * Names of the days of a week as the reader has them, by the contract’s short ones.
 *
 * @param locale - BCP 47 tag
 */
export function weekdayNames(locale: string): Record<(typeof days)[number], string> {
  const format = new Intl.DateTimeFormat(locale, { weekday: 'long', timeZone: 'UTC' });
  const named = days.map((day, i) => [day, format.format(MONDAY + i * DAY_MS)]);
  return Object.fromEntries(named) as Record<(typeof days)[number], string>;
}

/** Names of the months, January first. */
export function monthNames(locale: string): string[] {
  const format = new Intl.DateTimeFormat(locale, { month: 'long', timeZone: 'UTC' });
  return Array.from({ length: 12 }, (_, month) => format.format(Date.UTC(2024, month, 1)));
}
