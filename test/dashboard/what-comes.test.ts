import { describe, expect, it } from 'vitest';
import { lastStartLine } from '../../dashboard/ahead/last-start.ts';
import { spreadOf } from '../../dashboard/ahead/spread.ts';
import { createCalendar } from '../../dashboard/format/calendar.ts';
import { withinSentence } from '../../dashboard/format/lists.ts';
import { ahead } from '../../dashboard/words/en/ahead.ts';
import { plural } from '../../dashboard/words/plural.ts';

const calendar = createCalendar('UTC');
const day = (moment: string) => calendar.date(Date.parse(moment));
/** Parts of a sentence, as the page puts them together. */
const joined = (parts: unknown): string =>
  Array.isArray(parts) ? parts.map(joined).join('') : String(parts);
const done = (early: string | null, likely: string | null, late: string | null) =>
  joined(ahead.batchDone(spreadOf({ early, likely, late }, calendar, day)));

describe('when something is done', () => {
  const days = ['2026-05-12T09:00:00Z', '2026-05-14T09:00:00Z', '2026-05-16T09:00:00Z'] as const;

  it('is the likely day with the early and the late one', () => {
    expect(done(...days)).toBe('Done about Thu 14 May (early Tue 12 May, late Sat 16 May)');
    expect(done(days[0], days[0], days[0])).toBe('Done on Tue 12 May');
  });

  it('says where the calendar ends before it', () => {
    expect(done(days[0], days[1], null)).toBe(
      'Done about Thu 14 May (early Tue 12 May, late not within a year)',
    );
    expect(done(days[0], null, null)).toBe(
      'Done perhaps Tue 12 May, as likely as not later than a year',
    );
    expect(done(null, null, null)).toBe('Done not within a year');
  });
});

describe('the last start before winter', () => {
  it('names the day, or why there is none', () => {
    const line = (answer: 'by' | 'no-limit', at: string | null) =>
      lastStartLine({ answer, at }, ahead.winter, calendar);
    expect(line('by', '2026-09-08T09:00:00Z')).toMatch(/^Begin by Tue 8 Sept?: /);
    expect(line('no-limit', null)).toMatch(/^No last day/);
  });
});

describe('a count within a sentence', () => {
  it('has its form and the grouping of the language', () => {
    const boards = { one: '# board', other: '# boards' };
    expect(plural('en', 1, boards)).toBe('1 board');
    expect(plural('en', 1200, boards)).toBe('1,200 boards');
    expect(plural('de', 1200, { one: '# Brett', other: '# Bretter' })).toBe('1.200 Bretter');
  });
});

describe('a name within a sentence', () => {
  it('begins small but in German, where nouns keep their capital', () => {
    expect(withinSentence('Rack', 'en-GB')).toBe('rack');
    expect(withinSentence('Gestell', 'de-AT')).toBe('Gestell');
  });
});
