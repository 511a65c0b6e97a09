import { describe, expect, it } from 'vitest';
import { lastStart } from '../../../daemon/rules/ahead/last-start.ts';
import type { DayRate } from '../../../daemon/rules/ahead/season-rate.ts';
import { dayMs, hourMs, monday, steady, workDays } from './calendar.ts';

const need = { p10: 48, p90: 72, gathered: 0 };
/** Warm at first, then too cold for the brush. */
const season = (warmDays: number, hoursAt20 = 12): DayRate[] => [
  ...steady(warmDays, hoursAt20),
  ...steady(200 - warmDays, 0.5),
];

describe('the last day to begin a coat before winter', () => {
  const days = workDays(200);

  it('leaves the slow coat its time until the season ends', () => {
    // 72 h at 20 °C at 12 h a day are six days: from the evening of day 32 to that of day 38.
    const answer = lastStart(days, season(40), need, 3);
    expect(answer).toEqual({
      kind: 'by',
      at: monday + 32 * dayMs + 16 * hourMs,
      seasonEndsAt: monday + 40 * dayMs,
    });
  });

  it('says not this year when the season is too short', () => {
    expect(lastStart(days, season(4), need, 3).kind).toBe('not-this-year');
    expect(lastStart(days, season(0), need, 3)).toEqual({
      kind: 'not-this-year',
      seasonEndsAt: null,
    });
  });

  it('is not misled by a cold week', () => {
    const rates = [...steady(20, 12), ...steady(7, 1), ...season(13).slice(0, 173)];
    const answer = lastStart(days, rates, need, 3);
    expect(answer.kind).toBe('by');
    if (answer.kind === 'by') expect(answer.at).toBeGreaterThan(monday + 27 * dayMs);
  });

  it('has no limit in a heated room, and cannot tell from the last days alone', () => {
    expect(lastStart(days, steady(200), need, 3).kind).toBe('no-limit');
    const carried = steady(200).map((day) => ({ ...day, ground: 'last-days' as const }));
    expect(lastStart(days, carried, need, 3).kind).toBe('cannot-tell');
    expect(lastStart(days, null, need, 3).kind).toBe('cannot-tell');
  });
});
