import { describe, expect, it } from 'vitest';
import { createCalendar } from '../../dashboard/format/calendar.ts';
import { timeLeft } from '../../dashboard/format/time-left.ts';

const calendar = createCalendar('UTC');
const now = Date.parse('2026-05-12T06:00:00Z');
const waiting = {
  verdict: 'wait',
  probability: 0.02,
  early: '2026-05-12T20:00:00Z',
  likely: '2026-05-13T14:00:00Z',
  late: '2026-05-14T09:00:00Z',
} as const;

describe('the time left of a job', () => {
  it('is the likely time with the doubt around it', () => {
    expect(timeLeft(waiting, now, calendar)).toEqual({
      likely: 'Likely tomorrow after lunch',
      window: 'between this evening and Thursday before lunch',
    });
  });

  it('drops the early end once it has passed', () => {
    expect(timeLeft({ ...waiting, early: null, probability: 0.3 }, now, calendar).window).toBe(
      'any time until Thursday before lunch',
    );
  });

  it('does not pretend to know when no time can be given', () => {
    const unknown = { ...waiting, early: null, likely: null, late: null };
    expect(timeLeft(unknown, now, calendar)).toEqual({ likely: 'Can’t tell when', window: null });
  });

  it('asks for a touch test where one is worth it', () => {
    const worth = { ...waiting, verdict: 'test', probability: 0.6, early: null, likely: null };
    expect(timeLeft(worth as never, now, calendar)).toEqual({
      likely: 'Worth feeling now',
      window: 'nine in ten by Thursday before lunch',
    });
    const near = { ...worth, late: '2026-05-12T06:40:00Z' };
    expect(timeLeft(near as never, now, calendar).window).toBe('nine in ten in 40 minutes');
  });

  it('sends to feel it even when ready, and never calls anything safe', () => {
    const ready = { ...waiting, verdict: 'ready', early: null, likely: null, late: null } as const;
    const left = timeLeft(ready, now, calendar);
    expect(left.window).toMatch(/feel it/i);
    expect(JSON.stringify(left)).not.toMatch(/\bsafe/i);
  });
});
