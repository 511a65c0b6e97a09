import { describe, expect, it } from 'vitest';
import {
  type Arrival,
  flagMask,
  flagsOf,
  readingFlagBits,
  readingTime,
} from '../../sensors/correct/reading-time.ts';

const at = Date.UTC(2026, 4, 4, 7, 30);
const minute = 60_000;
const live: Arrival = { at, clockTrusted: true, retained: false, backlog: false };
const use = (time: number, ...flags: string[]) => ({ kind: 'use', at: time, flags });

describe('the time a reading is given', () => {
  it('is its own from 2000 until five minutes ahead of a trusted clock, both included', () => {
    const year2000 = Date.UTC(2000, 0, 1);
    expect(readingTime(year2000, live)).toEqual(use(year2000));
    expect(readingTime(year2000 - 1, live)).toEqual(use(at, 'time-replaced'));
    expect(readingTime(at + 5 * minute, live)).toEqual(use(at + 5 * minute));
    expect(readingTime(at + 5 * minute + 1, live)).toEqual(use(at, 'time-replaced'));
  });

  it('is the arrival, flagged, for a time in 1970 or in 2100', () => {
    expect(readingTime(12_000, live)).toEqual(use(at, 'time-replaced'));
    expect(readingTime(Date.UTC(2100, 0, 1), live)).toEqual(use(at, 'time-replaced'));
    expect(readingTime(Number.NaN, live)).toEqual(use(at, 'time-replaced'));
  });

  it('may be years old: a recording is welcome', () => {
    const old = Date.UTC(2013, 0, 1, 6);
    for (const arrival of [live, { ...live, backlog: true }, { ...live, retained: true }]) {
      expect(readingTime(old, arrival)).toEqual(use(old));
    }
  });

  it('is the arrival without a flag when the message came as it was sent', () => {
    expect(readingTime(null, live)).toEqual(use(at));
  });

  it('is nothing for a retained message that does not date itself', () => {
    const dropped = { kind: 'drop', because: 'retained-without-time' };
    expect(readingTime(null, { ...live, retained: true })).toEqual(dropped);
    expect(readingTime(12_000, { ...live, retained: true })).toEqual(dropped);
    expect(readingTime(at - minute, { ...live, retained: true, ownAtIsRelative: true })).toEqual(
      dropped,
    );
    expect(readingTime(null, { ...live, retained: true, backlog: true })).toEqual(dropped);
  });

  it('is unknown for a backlog that does not date itself', () => {
    const backlog = { ...live, backlog: true };
    expect(readingTime(null, backlog)).toEqual(use(at, 'time-unknown'));
    expect(readingTime(12_000, backlog)).toEqual(use(at, 'time-replaced', 'time-unknown'));
    expect(readingTime(at - minute, { ...backlog, ownAtIsRelative: true })).toEqual(
      use(at - minute, 'time-unknown'),
    );
  });

  it('counts back from the arrival when a live message says so', () => {
    const relative = { ...live, ownAtIsRelative: true };
    expect(readingTime(at - minute, relative)).toEqual(use(at - minute));
    expect(readingTime(at + 60 * minute, relative)).toEqual(use(at, 'time-replaced'));
  });

  it('has to wait while it hangs on a clock that is not trusted', () => {
    // A computer without a battery for its clock may start in 1970.
    const wait = { kind: 'wait' };
    const untrusted = { ...live, at: 60_000, clockTrusted: false };
    expect(readingTime(at, untrusted)).toEqual(wait);
    expect(readingTime(Date.UTC(2100, 0, 1), untrusted)).toEqual(wait);
    expect(readingTime(null, untrusted)).toEqual(wait);
    expect(readingTime(12_000, untrusted)).toEqual(wait);
    expect(readingTime(at, { ...untrusted, retained: true })).toEqual(wait);
    expect(readingTime(null, { ...untrusted, retained: true })).toMatchObject({ kind: 'drop' });
    // A time that even the untrusted clock has passed needs no doubt.
    const slow = { ...live, clockTrusted: false };
    expect(readingTime(at - minute, slow)).toEqual(use(at - minute));
    expect(readingTime(at - minute, { ...slow, ownAtIsRelative: true })).toEqual(wait);
  });
});

describe('flags as a number', () => {
  it('never change their bits', () => {
    expect(readingFlagBits).toEqual({
      'time-replaced': 1,
      'time-unknown': 2,
      'clock-untrusted': 4,
    });
  });

  it('go there and back', () => {
    for (let mask = 0; mask < 8; mask += 1) expect(flagMask(flagsOf(mask))).toBe(mask);
    expect(flagMask(['time-replaced', 'clock-untrusted'])).toBe(5);
    expect(flagMask(['time-unknown', 'time-unknown'])).toBe(2);
    expect(flagsOf(8 + 2)).toEqual(['time-unknown']);
  });
});
