import { describe, expect, it } from 'vitest';
import { curedAt, type RecordedDay, seasonRates } from '../../../daemon/rules/ahead/season-rate.ts';
import { dayMs, hourMs, monday, steady, workDays } from './calendar.ts';

const nothing = { outlook: [], recorded: [], months: null };
const recordedFrom = (startAt: number, values: number[], coveredHours = 24): RecordedDay[] =>
  values.map((hoursAt20, i) => ({ startAt: startAt + i * dayMs, hoursAt20, coveredHours }));

describe('what coming days are expected to give', () => {
  it('takes the outlook first', () => {
    const rates = seasonRates(workDays(3), {
      ...nothing,
      outlook: [{ hoursAt20: 10, spread: 1 }],
      recorded: recordedFrom(monday - 3 * dayMs, [6, 6, 6]),
    });
    expect(rates?.map((rate) => [rate.hoursAt20, rate.ground])).toEqual([
      [10, 'outlook'],
      [6, 'last-days'],
      [6, 'last-days'],
    ]);
  });

  it('then the days about the same date of earlier years, and no others', () => {
    // 28 May 2025 lies 10 days from 7 June; 20 June does not.
    const near = recordedFrom(Date.UTC(2025, 4, 28), [8, 9, 10, 11, 12]);
    const far = recordedFrom(Date.UTC(2025, 5, 20), [50, 50, 50]);
    const [rate] =
      seasonRates(workDays(1, Date.UTC(2026, 5, 4)), { ...nothing, recorded: [...near, ...far] }) ??
      [];
    expect(rate).toEqual({ hoursAt20: 10, spread: Math.sqrt(2.5) / 2, ground: 'own-record' });
  });

  it('scales a day that was not read throughout, and leaves out one hardly read', () => {
    const recorded = [
      ...recordedFrom(monday - 2 * dayMs, [9], 18),
      ...recordedFrom(monday - dayMs, [1], 3),
    ];
    expect(seasonRates(workDays(1), { ...nothing, recorded })?.[0]?.hoursAt20).toBe(12);
  });

  it('then typed monthly means', () => {
    const months = Array.from({ length: 12 }, (_, month) => month);
    const rates = seasonRates(workDays(40), { ...nothing, months });
    expect(rates?.[0]).toMatchObject({ hoursAt20: 4, ground: 'typed-months' });
    expect(rates?.[39]).toMatchObject({ hoursAt20: 5, ground: 'typed-months' });
  });

  it('carries the last days on with growing doubt', () => {
    const rates = seasonRates(workDays(61), {
      ...nothing,
      recorded: recordedFrom(monday - 4 * dayMs, [10, 12, 10, 12]),
    });
    expect(rates?.[60]?.hoursAt20).toBe(11);
    expect(rates?.[60]?.spread).toBeGreaterThan((rates?.[1]?.spread ?? 0) + 3);
    // However far ahead, a season is not lost altogether.
    expect(rates?.[60]?.spread).toBeLessThan(11 / 2);
  });

  it('knows nothing from nothing', () => {
    expect(seasonRates(workDays(3), nothing)).toBeNull();
  });
});

describe('when a coat has gathered what it needs', () => {
  const days = workDays(20);

  it('takes 2.45 days at 20 °C for the middle of two to three days', () => {
    const need = Math.sqrt(48 * 72);
    const from = monday + 9 * hourMs;
    expect(((curedAt(days, steady(20), from, need, 0) ?? 0) - from) / dayMs).toBeCloseTo(2.449, 3);
  });

  it('waits through days that give nothing', () => {
    const rates = [...steady(2, 12), ...steady(3, 0), ...steady(15, 24)];
    expect(curedAt(days, rates, monday, 36, 0)).toBe(monday + 5.5 * dayMs);
  });

  it('goes by colder days', () => {
    expect(curedAt(days, steady(20, 12, 4), monday, 24, -1)).toBe(monday + 3 * dayMs);
  });

  it('says so when the calendar ends before', () => {
    expect(curedAt(days, steady(20, 1), monday, 100, 0)).toBeNull();
  });
});
