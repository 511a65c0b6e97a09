import { describe, expect, it } from 'vitest';
import { outlookDays } from '../../daemon/monitor/place-rates.ts';
import type { WorkDay } from '../../daemon/rules/ahead/work-calendar.ts';
import type { CureAhead } from '../../daemon/science/cure-ahead.ts';

const hourMs = 3_600_000;
const midnight = Date.UTC(2026, 10, 26);

/** A steady 15 °C·h an hour, half a degree-hour to either side, for five days. */
function steadyAhead(fromAt: number): CureAhead {
  const path = (each: number) => Array.from({ length: 121 }, (_, hour) => each * hour);
  return {
    fromAt,
    deviations: [-1, 0, 1],
    paths: [path(14.5), path(15), path(15.5)],
  } as unknown as CureAhead;
}

const days = [-24, 0, 24, 48].map(
  (hour) => ({ startAt: midnight + hour * hourMs }) as unknown as WorkDay,
);

describe('what an outlook gives each day', () => {
  // 15 °C·h an hour are an hour at 20 °C each: 24 a day, whenever on the first day one asks.
  it.each([
    ['in the morning', -15],
    ['an hour and a half before midnight', -1.5],
    ['twenty minutes before midnight', -1 / 3],
    ['a second before midnight', -1 / 3600],
  ])('is the same all day when asked %s', (_, hour) => {
    const found = outlookDays(steadyAhead(midnight + hour * hourMs), days, 15);
    expect(found).toHaveLength(3);
    for (const day of found) expect(day.hoursAt20).toBeCloseTo(24, 9);
  });
});
