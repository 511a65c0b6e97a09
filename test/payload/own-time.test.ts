import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { epochSeconds, ownTime } from '../../sensors/payload/own-time.ts';

describe('the time a message gives itself', () => {
  it.each([
    // RFC 3339 (2002), section 5.8, examples, with the equivalents it states.
    ['1985-04-12T23:20:50.52Z', Date.UTC(1985, 3, 12, 23, 20, 50, 520)],
    ['1996-12-19T16:39:57-08:00', Date.UTC(1996, 11, 20, 0, 39, 57)],
    ['1990-12-31T23:59:60Z', Date.UTC(1991, 0, 1)],
    ['1990-12-31T15:59:60-08:00', Date.UTC(1991, 0, 1)],
    ['1937-01-01T12:00:27.87+00:20', Date.UTC(1937, 0, 1, 11, 40, 27, 870)],
    // ISO 8601: basic form, comma, hours-only offset, seconds left out.
    ['20260504T073000Z', Date.UTC(2026, 4, 4, 7, 30)],
    ['2026-05-04T07:30:00,25Z', Date.UTC(2026, 4, 4, 7, 30, 0, 250)],
    ['2026-05-04T09:30+02', Date.UTC(2026, 4, 4, 7, 30)],
    ['2026-05-04T09:30:00+0200', Date.UTC(2026, 4, 4, 7, 30)],
    ['2026-05-04 07:30:00z', Date.UTC(2026, 4, 4, 7, 30)],
    ['2024-02-29T00:00:00Z', Date.UTC(2024, 1, 29)],
    ['2026-05-04T07:30:00.123456789Z', Date.UTC(2026, 4, 4, 7, 30, 0, 123)],
    ['2026-05-04T07:30:00.9996Z', Date.UTC(2026, 4, 4, 7, 30, 1)],
    ['0000-01-01T00:00:00Z', -62_167_219_200_000],
    ['0099-12-31T00:00:00Z', -59_011_545_600_000],
  ])('%s', (time, at) => {
    expect(ownTime(time)).toEqual({ kind: 'time', at });
  });

  it.each([
    '2026-02-29T00:00:00Z',
    '2026-13-01T00:00:00Z',
    '2026-00-01T00:00:00Z',
    '2026-05-00T00:00:00Z',
    '2026-05-04T24:00:00Z',
    '2026-05-04T07:60:00Z',
    '2026-05-04T07:30:61Z',
    '2026-05-04T07:30:00+25:00',
    '2026-05-04T07:30:00',
    '2026-05-04',
    '20260504',
    '04.05.2026 07:30',
    'Mon, 04 May 2026 07:30:00 GMT',
    '1777879800',
    '',
    'Z',
  ])('%j is not guessed at', (time) => {
    expect(ownTime(time).kind).toBe('refused');
  });

  it('is in seconds below 10¹¹ and in milliseconds from there on', () => {
    expect(ownTime(99_999_999_999)).toEqual({ kind: 'time', at: 99_999_999_999_000 });
    expect(ownTime(100_000_000_000)).toEqual({ kind: 'time', at: 100_000_000_000 });
    expect(ownTime(1777879800.25)).toEqual({ kind: 'time', at: 1777879800250 });
    expect(ownTime(1777879800250.4)).toEqual({ kind: 'time', at: 1777879800250 });
    expect(ownTime(-1)).toEqual({ kind: 'time', at: -1000 });
    expect(ownTime(-0)).toEqual({ kind: 'time', at: 0 });
  });

  it('stays within what a date can name', () => {
    expect(ownTime(8.64e15)).toEqual({ kind: 'time', at: 8.64e15 });
    expect(ownTime(8.64e15 + 2).kind).toBe('refused');
    expect(epochSeconds(8.64e12 + 1).kind).toBe('refused');
    for (const time of [Number.NaN, Number.POSITIVE_INFINITY, true, [], {}, null]) {
      expect(ownTime(time).kind).toBe('refused');
    }
  });

  it('agrees with the clock of the platform on every moment of the years 0 to 9999', () => {
    fc.assert(
      fc.property(
        fc.date({
          min: new Date(-62_167_219_200_000),
          max: new Date(253_402_300_799_999),
          noInvalidDate: true,
        }),
        (date) => {
          expect(ownTime(date.toISOString())).toEqual({ kind: 'time', at: date.getTime() });
        },
      ),
      { numRuns: 2_000 },
    );
  });
});
