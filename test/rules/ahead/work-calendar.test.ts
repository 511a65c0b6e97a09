import { describe, expect, it } from 'vitest';
import { dayIndexAt, fitWork } from '../../../daemon/rules/ahead/work-calendar.ts';
import { dayMs, hourMs, monday, workDays } from './calendar.ts';

describe('fitting work into working hours', () => {
  const days = workDays(14);
  const at = (day: number, hour: number) => monday + day * dayMs + hour * hourMs;

  it('begins when the day opens', () => {
    expect(fitWork(days, at(0, 5), 2 * hourMs)).toEqual({ beginsAt: at(0, 8), endsAt: at(0, 10) });
  });

  it('is put down in the evening and taken up the next morning', () => {
    expect(fitWork(days, at(0, 14), 5 * hourMs)).toEqual({
      beginsAt: at(0, 14),
      endsAt: at(1, 11),
    });
  });

  it('rests over the days off', () => {
    expect(fitWork(days, at(4, 15), 2 * hourMs)).toEqual({ beginsAt: at(4, 15), endsAt: at(7, 9) });
    expect(fitWork(days, at(5, 9), hourMs)).toEqual({ beginsAt: at(7, 8), endsAt: at(7, 9) });
  });

  it('says so when the calendar is too short', () => {
    expect(fitWork(days, at(11, 15), 2 * hourMs)).toBeNull();
  });

  it('finds the day of a moment', () => {
    expect(dayIndexAt(days, at(3, 0))).toBe(3);
    expect(dayIndexAt(days, at(3, 0) - 1)).toBe(2);
    expect(dayIndexAt(days, at(-3, 0))).toBe(0);
  });
});
