import { describe, expect, it } from 'vitest';
import { type ClockReadings, steadyTime } from '../../daemon/steady-time.ts';

const start = Date.UTC(2026, 4, 4, 8);
const minute = 60_000;
const hour = 60 * minute;

/** Clocks that a test turns, with the time that is made of them. */
function turned() {
  const clocks: ClockReadings = { wallMs: start, monotonicMs: 0, bootMs: 0 };
  const time = steadyTime({ ...clocks });
  let last = start;
  const look = (wallMs: number, monotonicMs: number, bootMs = monotonicMs) => {
    const step = time.look({ wallMs, monotonicMs, bootMs });
    expect(time.at()).toBeGreaterThanOrEqual(last);
    last = time.at();
    return step;
  };
  return { time, look, elapsed: () => time.at() - start };
}

describe('time that is not bent by setting the clock', () => {
  it.each([
    { what: 'an hour forward', by: hour },
    { what: 'an hour back', by: -hour },
    { what: 'ten seconds forward', by: 10_000 },
    { what: 'back to 1970', by: -start },
  ])('$what: goes on as before', ({ by }) => {
    const { look, elapsed, time } = turned();
    look(start + minute, minute);
    expect(look(start + 2 * minute + by, 2 * minute)).toBe(by);
    expect(elapsed()).toBe(2 * minute);
    look(start + 62 * minute + by, 62 * minute);
    expect(elapsed()).toBe(62 * minute);
    expect(time.held()).toBe(by);
  });

  it('and back again: as if nothing had been', () => {
    const { look, elapsed, time } = turned();
    look(start + minute + hour, minute);
    look(start + 2 * minute, 2 * minute);
    expect(time.held()).toBe(0);
    look(start + 3 * minute, 3 * minute);
    expect(elapsed()).toBe(3 * minute);
  });

  it('a step that is right after all is followed: forward at once', () => {
    const { look, elapsed, time } = turned();
    look(start + minute + hour, minute);
    time.follow();
    look(start + 2 * minute + hour, 2 * minute);
    expect(elapsed()).toBe(2 * minute + hour);
  });

  it('and back slowly: never does time go back or stand still', () => {
    const { look, elapsed, time } = turned();
    look(start + minute - hour, minute);
    time.follow();
    look(start + 3 * minute - hour, 3 * minute);
    expect(elapsed()).toBe(2 * minute);
    for (let at = 4; at <= 200; at++) look(start + at * minute - hour, at * minute);
    expect(elapsed()).toBe(200 * minute - hour);
  });
});

describe('time that follows the clock while it runs', () => {
  it('a leap second that is smeared over a day is followed', () => {
    // UTC gains one second over 24 h, linear: the smear that time services use. Common practice.
    const { look, elapsed } = turned();
    for (let at = minute; at <= 24 * hour; at += minute) {
      const smear = at / (24 * hour);
      expect(look(start + at - Math.round(smear * 1000), at)).toBe(0);
    }
    expect(elapsed()).toBe(24 * hour - 1000);
  });

  it('a leap second that is told twice neither goes back nor adds a second for good', () => {
    const { look, elapsed } = turned();
    look(start + 999, 999);
    expect(look(start, 1000)).toBe(0);
    for (let at = 1100; at <= 5000; at += 100) look(start + at - 1000, at);
    expect(elapsed()).toBe(4000);
  });

  it('a clock that a time service slows down or speeds up by 8 % is followed', () => {
    const { look, elapsed } = turned();
    for (let at = 1; at <= 600; at++) expect(look(start + at * 1080, at * 1000)).toBe(0);
    expect(elapsed()).toBe(600 * 1080);
  });

  it('a computer that slept for eight hours is not one whose clock was set', () => {
    const { look, elapsed } = turned();
    look(start + minute, minute, minute);
    expect(look(start + 2 * minute + 8 * hour, 2 * minute, 2 * minute + 8 * hour)).toBe(0);
    expect(elapsed()).toBe(2 * minute + 8 * hour);
    expect(look(start + 3 * minute + 9 * hour, 3 * minute, 3 * minute + 8 * hour)).toBe(hour);
  });
});
