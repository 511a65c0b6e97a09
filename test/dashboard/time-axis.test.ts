import { describe, expect, it } from 'vitest';
import { rowStarts } from '../../dashboard/chart/table-rows.ts';
import { timeTicks } from '../../dashboard/chart/time-ticks.ts';
import { tickDecimals, valueTicks } from '../../dashboard/chart/value-ticks.ts';
import { createZoneClock } from '../../dashboard/chart/zone-clock.ts';

const HOUR = 3_600;
const stockholm = createZoneClock('Europe/Stockholm');
const seconds = (text: string) => Date.parse(text) / 1000;

// EU summer time 2026: clocks go on at 01:00 UTC on 29 March and back at 01:00 UTC on 25 October
// (Directive 2000/84/EC: last Sunday of March and of October).
describe('the clock of a time zone', () => {
  it('is read and set, also beyond the end of a month', () => {
    expect(stockholm.read(Date.parse('2026-07-01T10:30:00Z'))).toEqual({
      ...{ year: 2026, month: 7, day: 1, hour: 12, minute: 30 },
    });
    const set = stockholm.set({ year: 2026, month: 1, day: 32, hour: 0, minute: 0 });
    expect(new Date(set).toISOString()).toBe('2026-01-31T23:00:00.000Z');
  });

  it('shows an hour twice in autumn, of which the first is meant, and skips one in spring', () => {
    const autumn = stockholm.set({ year: 2026, month: 10, day: 25, hour: 2, minute: 30 });
    expect(new Date(autumn).toISOString()).toBe('2026-10-25T00:30:00.000Z');
    const spring = stockholm.set({ year: 2026, month: 3, day: 29, hour: 2, minute: 30 });
    expect(new Date(spring).toISOString()).toBe('2026-03-29T01:30:00.000Z');
  });
});

describe('the marks of a time axis', () => {
  const texts = (from: string, to: string, most: number, clock = stockholm) =>
    timeTicks({ from: seconds(from), to: seconds(to) }, most, clock).map(({ at, kind }) => [
      new Date(at * 1000).toISOString().slice(0, 16),
      kind,
    ]);

  it('stand at round times of the reader’s own clock', () => {
    expect(texts('2026-05-04T04:10:00Z', '2026-05-05T04:00:00Z', 5)).toEqual([
      ['2026-05-04T10:00', 'clock'],
      ['2026-05-04T16:00', 'clock'],
      ['2026-05-04T22:00', 'date'],
      ['2026-05-05T04:00', 'clock'],
    ]);
  });

  it('stay at the same hours on the day on which summer time begins, and none is doubled', () => {
    const spring = texts('2026-03-28T22:00:00Z', '2026-03-30T00:00:00Z', 30);
    const hours = spring.map(([at]) => stockholm.read(Date.parse(`${at}Z`)).hour);
    expect(hours).toEqual([23, 0, 1, ...Array.from({ length: 21 }, (_, i) => i + 3), 0, 1, 2]);
    const days = texts('2026-03-27T12:00:00Z', '2026-04-01T12:00:00Z', 6);
    expect(days.map(([at]) => at?.slice(11))).toEqual([
      '23:00',
      '23:00',
      '22:00',
      '22:00',
      '22:00',
    ]);
    expect(days.every(([, kind]) => kind === 'date')).toBe(true);
  });

  it('stand at the first of months over a season, and at half hours in zones that have them', () => {
    expect(texts('2026-04-10T00:00:00Z', '2026-10-10T00:00:00Z', 7).map(([at]) => at)).toEqual(
      ['04-30', '05-31', '06-30', '07-31', '08-31', '09-30'].map((day) => `2026-${day}T22:00`),
    );
    const kolkata = createZoneClock('Asia/Kolkata');
    expect(texts('2026-05-04T00:00:00Z', '2026-05-04T03:00:00Z', 4, kolkata)).toEqual([
      ['2026-05-04T00:30', 'clock'],
      ['2026-05-04T01:30', 'clock'],
      ['2026-05-04T02:30', 'clock'],
    ]);
  });

  it('are never more than there is room for by much, from a minute to ten years', () => {
    for (const length of [60, HOUR, 24 * HOUR, 7 * 24 * HOUR, 183 * 24 * HOUR, 3_650 * 24 * HOUR]) {
      const from = seconds('2026-02-03T07:11:00Z');
      for (const most of [3, 8, 20]) {
        const ticks = timeTicks({ from, to: from + length }, most, stockholm);
        expect(ticks.length).toBeLessThanOrEqual(most + 1);
        expect(new Set(ticks.map(({ at }) => at)).size).toBe(ticks.length);
      }
    }
  });
});

describe('rows of a table', () => {
  it('are days of the reader: one of 23 hours when summer time begins', () => {
    const range = { from: seconds('2026-03-28T12:00:00Z'), to: seconds('2026-03-31T12:00:00Z') };
    const starts = rowStarts(range, 24 * HOUR, stockholm);
    expect(starts.map((at) => new Date(at * 1000).toISOString().slice(5, 16))).toEqual([
      '03-27T23:00',
      '03-28T23:00',
      '03-29T22:00',
      '03-30T22:00',
    ]);
  });
});

describe('the figures of a scale', () => {
  it('are 1, 2 or 5 times a power of ten, within its ends', () => {
    expect(valueTicks(-3, 21, 5)).toEqual([0, 5, 10, 15, 20]);
    expect(valueTicks(0, 0.7, 4)).toEqual([0, 0.2, 0.4, 0.6]);
    expect(tickDecimals([0, 0.2])).toBe(1);
    expect(tickDecimals([100, 150])).toBe(0);
  });
});
