import type { DayRate } from '../../../daemon/rules/ahead/season-rate.ts';
import type { WorkDay } from '../../../daemon/rules/ahead/work-calendar.ts';

export const hourMs = 3_600_000;
export const dayMs = 24 * hourMs;
/** A Monday in UTC, which stands for local time here. */
export const monday = Date.UTC(2026, 4, 4);

/** Days from a Monday on, worked from 8 to 16 except on Saturdays and Sundays. */
export function workDays(count: number, from = monday): WorkDay[] {
  return Array.from({ length: count }, (_, i) => {
    const startAt = from + i * dayMs;
    const isOff = i % 7 >= 5;
    return {
      startAt,
      opensAt: isOff ? null : startAt + 8 * hourMs,
      closesAt: isOff ? null : startAt + 16 * hourMs,
    };
  });
}

/** Days that all give the same, hours at 20 °C; 24 is a day at 20 °C. */
export function steady(count: number, hoursAt20 = 24, spread = 0): DayRate[] {
  return Array.from({ length: count }, () => ({
    hoursAt20,
    spread,
    ground: 'own-record' as const,
  }));
}
