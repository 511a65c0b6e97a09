import { describe, expect, it } from 'vitest';
import { atLocal, clockWords, localTime } from '../../daemon/rules/local-time.ts';
import { quietUntil } from '../../daemon/rules/quiet-hours.ts';

const zone = 'Europe/Stockholm';
const night = { from: '22:00', to: '06:00' };
const utc = (text: string) => Date.parse(`${text}Z`);
const until = (text: string, quiet = night) => {
  const at = quietUntil(utc(text), quiet, zone);
  return at === null ? null : new Date(at).toISOString().slice(0, 16);
};

// Clocks in Sweden: EU directive 2000/84/EC, changes at 01:00 UTC on the last Sundays of March and
// October; in 2026 the 29th of March and the 25th of October.
describe('the clock of the site', () => {
  it('shows summer and winter time', () => {
    expect(localTime(utc('2026-01-15T23:30'), zone)).toEqual({ day: '2026-01-16', minute: 30 });
    expect(localTime(utc('2026-07-15T21:59'), zone)).toEqual({ day: '2026-07-15', minute: 1439 });
    expect(clockWords(utc('2026-07-15T04:05'), zone)).toBe('06:05');
  });
  it('is turned back into a moment, also where it is changed', () => {
    expect(atLocal('2026-01-16', 30, zone)).toBe(utc('2026-01-15T23:30'));
    expect(atLocal('2026-07-16', 30, zone)).toBe(utc('2026-07-15T22:30'));
    expect(atLocal('2026-03-29', 6 * 60, zone)).toBe(utc('2026-03-29T04:00'));
    expect(atLocal('2026-10-25', 6 * 60, zone)).toBe(utc('2026-10-25T05:00'));
    // 02:30 is not there in March, and is there twice in October.
    expect(atLocal('2026-03-29', 150, zone)).toBe(utc('2026-03-29T01:30'));
    expect(atLocal('2026-10-25', 150, zone)).toBe(utc('2026-10-25T00:30'));
  });
});

describe('quiet hours', () => {
  it('go over midnight', () => {
    expect(until('2026-05-20T19:59')).toBeNull();
    expect(until('2026-05-20T20:00')).toBe('2026-05-21T04:00');
    expect(until('2026-05-21T03:59')).toBe('2026-05-21T04:00');
    expect(until('2026-05-21T04:00')).toBeNull();
  });
  it('end by the clock on the nights it is changed', () => {
    expect(until('2026-03-28T22:00')).toBe('2026-03-29T04:00');
    expect(until('2026-10-24T22:00')).toBe('2026-10-25T05:00');
  });
  it('may lie within a day, and be none', () => {
    const noon = { from: '12:00', to: '13:00' };
    expect(until('2026-05-20T10:30', noon)).toBe('2026-05-20T11:00');
    expect(until('2026-05-20T11:00', noon)).toBeNull();
    expect(until('2026-05-20T22:00', { from: '06:00', to: '06:00' })).toBeNull();
    expect(quietUntil(0, null, zone)).toBeNull();
  });
});
