import { describe, expect, it } from 'vitest';
import { isOutdated, scriptOf } from '../../dashboard/screen/new-build.ts';
import { SHIFT_PX, shiftAt } from '../../dashboard/screen/shift.ts';

const MINUTE_MS = 60_000;

describe('the place of the page on the screen', () => {
  const day = Array.from({ length: 24 * 60 }, (_, minute) => shiftAt(minute * MINUTE_MS));

  it('never moves by more than a pixel at once, and no further than is left around it', () => {
    for (const [i, { x, y }] of day.entries()) {
      const before = day[i - 1] ?? { x, y };
      expect(Math.abs(x - before.x)).toBeLessThanOrEqual(1);
      expect(Math.abs(y - before.y)).toBeLessThanOrEqual(1);
      expect(Math.max(Math.abs(x), Math.abs(y))).toBeLessThanOrEqual(SHIFT_PX);
    }
  });

  it('comes by many places within a day, and stands for minutes at each', () => {
    expect(new Set(day.map(({ x, y }) => `${x} ${y}`)).size).toBeGreaterThan(20);
    const moves = day.filter(({ x }, i) => i > 0 && x !== day[i - 1]?.x);
    expect(moves.length).toBeLessThanOrEqual(24 * 6);
  });
});

describe('the build of the page', () => {
  it('is known by its script, whose name holds a hash', () => {
    const html = '<head><script type="module" crossorigin src="./assets/index-a1.js"></script>';
    expect(scriptOf(html)).toBe('./assets/index-a1.js');
    expect(scriptOf('<p>Log in to this network</p>')).toBeNull();
  });

  it('is loaded anew when the daemon hands out another one, but once', () => {
    const builds = { running: 'a', offered: 'b', triedFor: null };
    expect(isOutdated(builds)).toBe(true);
    expect(isOutdated({ ...builds, offered: 'a' })).toBe(false);
    expect(isOutdated({ ...builds, triedFor: 'b' })).toBe(false);
    expect(isOutdated({ ...builds, offered: null })).toBe(false);
    expect(isOutdated({ ...builds, offered: 'c', triedFor: 'b' })).toBe(true);
  });
});
