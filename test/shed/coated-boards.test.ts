import { describe, expect, it } from 'vitest';
import { coatOf, drawnTins } from '../../sensors/shed/drawn-paints.ts';
import {
  type CoatedBoards,
  cureBoards,
  feel,
  freshCoat,
  isTrulyReady,
  sharePassing,
} from '../../sensors/shed/physics/coated-boards.ts';
import { MIDDLING_PAINT } from '../../sensors/shed/physics/paint-truth.ts';
import { seededRandom } from '../../sensors/shed/physics/random.ts';

const NORMAL = { tempC: 20, rhPercent: 55, light: 0.05, renewalsPerHour: 20 };

function hoursUntil(coat: CoatedBoards, is: (coat: CoatedBoards) => boolean): number {
  let current = coat;
  for (let hours = 0; hours < 400; hours += 0.25) {
    if (is(current)) return hours;
    current = cureBoards(current, NORMAL, 0.25);
  }
  return Number.POSITIVE_INFINITY;
}

describe('the boards of one coat', () => {
  it('cure apart: some are there while others are not, the lowest shelf last', () => {
    const coat = freshCoat(MIDDLING_PAINT, seededRandom(1));
    const first = hoursUntil(coat, (one) => sharePassing(one, 'recoat') > 0);
    const ready = hoursUntil(coat, (one) => isTrulyReady(one, 'recoat'));
    const last = hoursUntil(coat, (one) => sharePassing(one, 'recoat') === 1);
    expect(first).toBeLessThan(ready - 4);
    expect(last).toBeGreaterThanOrEqual(ready);
  });

  it('are told by the hand, a little roughly', () => {
    const hand = seededRandom(5);
    const share = (hours: number) => {
      const coat = cureBoards(freshCoat(MIDDLING_PAINT, seededRandom(2)), NORMAL, hours);
      const felt = Array.from({ length: 200 }, () => feel(coat, 'recoat', 'offcut', hand));
      return felt.filter((passed) => passed).length / felt.length;
    };
    expect(share(30)).toBe(0);
    expect(share(100)).toBe(1);
  });

  it('of many colours, tins and coats are there after two to three days at 20 °C', () => {
    // common practice, no source: two to three days, read as the 10 and 90 % points
    const hours: number[] = [];
    for (let seed = 1; seed <= 60; seed++) {
      const random = seededRandom(seed, 40);
      for (const tins of drawnTins(seed, 2)) {
        for (let coat = 0; coat < 3; coat++) {
          const tin = tins[coat];
          if (tin === undefined) continue;
          const boards = freshCoat(coatOf(tin, coat, 1, random), random);
          hours.push(hoursUntil(boards, (one) => isTrulyReady(one, 'recoat')));
        }
      }
    }
    hours.sort((a, b) => a - b);
    const at = (share: number) => hours[Math.floor(share * hours.length)] ?? 0;
    expect(at(0.1)).toBeGreaterThan(48 * 0.93);
    expect(at(0.1)).toBeLessThan(48 * 1.07);
    expect(at(0.9)).toBeGreaterThan(72 * 0.93);
    expect(at(0.9)).toBeLessThan(72 * 1.07);
  });
});
