import { describe, expect, it } from 'vitest';
import { createCalendar } from '../../dashboard/format/calendar.ts';
import type { When } from '../../dashboard/format/painters-time.ts';
import { expectedAt } from '../../dashboard/format/time-left.ts';
import { times as en } from '../../dashboard/words/en/times.ts';
import { times as nb } from '../../dashboard/words/nb/times.ts';
import { times as sv } from '../../dashboard/words/sv/times.ts';

const calendar = createCalendar('UTC');
const now = Date.parse('2026-05-12T06:00:00Z');
type Verdict = Parameters<typeof expectedAt>[0];

/** When a job’s time comes, in the two lines of the wall. */
function timeLeft(verdict: Verdict) {
  const expected = expectedAt(verdict, now, calendar);
  return { likely: en.likely(expected), doubt: en.doubt(expected) };
}

const waiting = {
  verdict: 'wait' as Verdict['verdict'],
  probability: 0.02,
  early: '2026-05-12T20:00:00Z',
  likely: '2026-05-13T14:00:00Z',
  late: '2026-05-14T09:00:00Z',
} satisfies Verdict;

describe('the time left of a job', () => {
  it('is the likely time with the doubt around it', () => {
    expect(timeLeft(waiting)).toEqual({
      likely: 'Likely tomorrow after lunch',
      doubt: 'between this evening and Thursday before lunch',
    });
  });

  it('drops the early end once it has passed', () => {
    expect(timeLeft({ ...waiting, early: null, probability: 0.3 }).doubt).toBe(
      'any time until Thursday before lunch',
    );
  });

  it.each([
    [
      en,
      'in 40 minutes at the earliest, tomorrow after lunch at the latest',
      'any time until 27 May',
    ],
    [sv, 'tidigast om 40 minuter, senast i morgon eftermiddag', 'när som helst fram till 27 maj'],
    [nb, 'tidligst om 40 minutter, senest i morgen ettermiddag', 'når som helst frem til 27 maj'],
  ])('is a sentence where an end of the doubt is minutes away or far off', (said, near, far) => {
    const inMinutes: When = { kind: 'minutes', minutes: 40 };
    const later: When = { kind: 'tomorrow', part: 'after-lunch' };
    const expected = { kind: 'likely', early: inMinutes, likely: inMinutes, late: later } as const;
    expect(said.doubt(expected)).toBe(near);
    const date: When = { kind: 'date', date: said === en ? '27 May' : '27 maj' };
    expect(said.doubt({ ...expected, early: null, late: date })).toBe(far);
  });

  it('does not pretend to know when no time can be given', () => {
    const unknown = { ...waiting, early: null, likely: null, late: null };
    expect(timeLeft(unknown)).toEqual({ likely: 'Can’t tell when', doubt: null });
  });

  it('asks for a touch test where one is worth it', () => {
    const worth = { ...waiting, verdict: 'test', probability: 0.6, early: null, likely: null };
    expect(timeLeft(worth as never)).toEqual({
      likely: 'Worth feeling now',
      doubt: 'nine in ten by Thursday before lunch',
    });
    const near = { ...worth, late: '2026-05-12T06:40:00Z' };
    expect(timeLeft(near as never).doubt).toBe('nine in ten in 40 minutes');
  });

  it('sends to feel it even when ready, and never calls anything safe', () => {
    const ready = { ...waiting, verdict: 'ready', early: null, likely: null, late: null } as const;
    const left = timeLeft(ready);
    expect(left.doubt).toMatch(/feel it/i);
    expect(JSON.stringify(left)).not.toMatch(/\bsafe/i);
  });
});
