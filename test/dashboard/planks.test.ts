import { describe, expect, it } from 'vitest';
import { canBeLaid, LETTER_HEIGHT, layWord } from '../../dashboard/lettering/planks.ts';
import { signs } from '../../dashboard/words/verdict-words.ts';

const corners = (path: string) =>
  [...path.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(
    ([, x, y]) => [Number(x), Number(y)] as const,
  );

describe('letters laid from planks', () => {
  it('are drawn for every word that can stand on the wall', () => {
    for (const { laid } of Object.values(signs)) expect(canBeLaid(laid), laid).toBe(true);
  });

  it('reach from the top of the line to its foot, so that a word is as high as it is measured', () => {
    for (const { laid } of Object.values(signs)) {
      for (const letter of laid.replace(' ', '')) {
        const heights = corners(layWord(letter).path).map(([, y]) => y);
        expect(Math.min(...heights), letter).toBe(0);
        expect(Math.max(...heights), letter).toBe(LETTER_HEIGHT);
      }
    }
  });

  it('stay within the width that is claimed for the word', () => {
    for (const { laid } of Object.values(signs)) {
      const { width, path } = layWord(laid);
      for (const [x] of corners(path)) {
        expect(x, laid).toBeGreaterThanOrEqual(0);
        expect(x, laid).toBeLessThanOrEqual(width);
      }
    }
  });

  it('are refused where none is drawn, instead of leaving a hole in a word', () => {
    expect(() => layWord('Q')).toThrow(RangeError);
  });
});
