import { describe, expect, it } from 'vitest';
import { createCalendar } from '../../dashboard/format/calendar.ts';

// Expected: the formats of Unicode CLDR for each locale, as Node's own Intl has them.
const morning = Date.parse('2026-05-14T07:05:00Z');
const plain = (text: string) => text.replace(/\s/g, ' ');

describe('a moment as the reader writes it', () => {
  it.each([
    ['en-GB', '09:05', 'Thu 14 May, 09:05'],
    ['en-US', '9:05 AM', 'Thu, May 14, 9:05 AM'],
    ['de-DE', '09:05', 'Do., 14. Mai, 09:05'],
    ['sv-SE', '09:05', 'tors 14 maj 09:05'],
    ['fi-FI', '9.05', 'to 14.5. klo 9.05'],
  ])('has the order and the clock of %s', (locale, clock, exact) => {
    const calendar = createCalendar('Europe/Stockholm', locale);
    expect(plain(calendar.clock(morning))).toBe(clock);
    expect(plain(calendar.exact(morning))).toBe(exact);
  });
});
