import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  delayOfStrangersMs,
  noTries,
  type Tries,
  waitMs,
  wrongAgain,
  wrongOfAll,
} from '../../daemon/rules/try-limit.ts';

const hourMs = 3_600_000;

/** Tries as fast as it is let, and returns how many it got in. */
function hammer(spanMs: number): number {
  let tries: Tries = noTries;
  let now = 0;
  let count = 0;
  while (now <= spanMs) {
    const wait = waitMs(tries, now);
    if (wait > 0) now += wait;
    else {
      tries = wrongAgain(tries, now);
      count++;
    }
  }
  return count;
}

describe('wrong PINs', () => {
  it('are free five times, then cost half a minute, then twice as much each time', () => {
    let tries: Tries = noTries;
    const waits = Array.from({ length: 8 }, () => {
      tries = wrongAgain(tries, 0);
      return waitMs(tries, 0) / 1000;
    });
    expect(waits).toEqual([0, 0, 0, 0, 30, 60, 120, 240]);
  });

  it('are forgotten after a quiet day', () => {
    let tries: Tries = noTries;
    for (let i = 0; i < 50; i++) tries = wrongAgain(tries, 0);
    expect(waitMs(tries, 0)).toBe(hourMs);
    expect(waitMs(tries, 25 * hourMs)).toBe(0);
    expect(waitMs(wrongAgain(tries, 25 * hourMs), 25 * hourMs)).toBe(0);
  });

  it('get one device no further than thirty a day', () => {
    const day = hammer(24 * hourMs);
    expect(day).toBeGreaterThan(20);
    expect(day).toBeLessThan(40);
  });

  it('of strangers hold all strangers back for seconds, and shut nobody out', () => {
    fc.assert(
      fc.property(fc.array(fc.nat(10_000), { maxLength: 500 }), (gaps) => {
        let all: Tries = noTries;
        let now = 0;
        for (const gap of gaps) {
          now += gap;
          all = wrongOfAll(all, now);
          const delay = delayOfStrangersMs(all, now);
          expect(delay).toBeGreaterThanOrEqual(0);
          expect(delay).toBeLessThanOrEqual(8000);
        }
        expect(delayOfStrangersMs(all, now + 24 * hourMs)).toBe(0);
      }),
    );
  });
});
