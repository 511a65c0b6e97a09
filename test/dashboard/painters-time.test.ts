import { describe, expect, it } from 'vitest';
import { createCalendar } from '../../dashboard/format/calendar.ts';
import { agoOf, lengthOf, whenOf } from '../../dashboard/format/painters-time.ts';
import { times } from '../../dashboard/words/en/times.ts';

const calendar = createCalendar('Europe/Stockholm');
/** A Tuesday morning, 08:00 in the shed’s own time. */
const now = Date.parse('2026-05-12T06:00:00Z');
const when = (moment: string) => times.when(whenOf(Date.parse(moment), now, calendar));
const length = (ms: number) => times.length(lengthOf(ms));
const ago = (at: number) => times.ago(agoOf(at, now));

describe('a moment in a painter’s words', () => {
  it('is minutes when it is near', () => {
    expect(when('2026-05-12T06:04:00Z')).toBe('in a few minutes');
    expect(when('2026-05-12T06:38:00Z')).toBe('in 40 minutes');
    expect(when('2026-05-12T07:05:00Z')).toBe('in about an hour');
  });

  it('is a part of the day when it is today or tomorrow', () => {
    expect(when('2026-05-12T12:00:00Z')).toBe('today after lunch');
    expect(when('2026-05-12T16:30:00Z')).toBe('this evening');
    expect(when('2026-05-13T08:00:00Z')).toBe('tomorrow before lunch');
    expect(when('2026-05-13T04:00:00Z')).toBe('early tomorrow');
  });

  it('names the weekday within a week and the date beyond it', () => {
    expect(when('2026-05-14T12:00:00Z')).toBe('Thursday after lunch');
    expect(when('2026-05-18T12:00:00Z')).toBe('Monday after lunch');
    expect(when('2026-05-20T12:00:00Z')).toBe('on Wed 20 May');
  });

  it('counts a night to the day on which it began', () => {
    expect(when('2026-05-12T21:00:00Z')).toBe('tonight');
    expect(when('2026-05-13T00:30:00Z')).toBe('tonight');
    expect(when('2026-05-14T00:30:00Z')).toBe('tomorrow night');
    expect(when('2026-05-15T00:30:00Z')).toBe('Thursday night');
  });

  it('is “now” for what has passed', () => {
    expect(when('2026-05-12T05:59:00Z')).toBe('now');
  });

  it('uses the shed’s own day, also where the clocks have just changed', () => {
    const beforeChange = Date.parse('2026-03-28T20:00:00Z');
    const afterLunch = Date.parse('2026-03-29T12:00:00Z');
    expect(times.when(whenOf(afterLunch, beforeChange, calendar))).toBe('tomorrow after lunch');
  });
});

describe('a length of time', () => {
  it('is rounded to what matters', () => {
    expect(length(20_000)).toBe('less than a minute');
    expect(length(60_000)).toBe('1 minute');
    expect(length(3.4 * 3_600_000)).toBe('3 hours');
    expect(length(52 * 3_600_000)).toBe('2 days 4 hours');
    expect(length(48 * 3_600_000)).toBe('2 days');
    expect(length(200 * 3_600_000)).toBe('8 days');
  });

  it('is “just now” for the age of a fresh reading, also when clocks differ a little', () => {
    expect(ago(now - 40_000)).toBe('just now');
    expect(ago(now + 40_000)).toBe('just now');
    expect(ago(now - 4 * 60_000)).toBe('4 minutes ago');
  });
});
