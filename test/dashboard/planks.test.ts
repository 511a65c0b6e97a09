import { describe, expect, it } from 'vitest';
import {
  canBeLaid,
  LETTER_HEIGHT,
  LETTER_RISE,
  LONGEST_WORD,
  layWord,
  risesAbove,
} from '../../dashboard/lettering/planks.ts';
import { firstWords } from '../../dashboard/words/catalogue.ts';
import { languages } from '../../dashboard/words/language.ts';

const corners = (path: string) =>
  [...path.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(
    ([, x, y]) => [Number(x), Number(y)] as const,
  );

/** The capitals of English, Swedish, German, Norwegian and Finnish (from memory). */
const alphabet = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZÅÄÖÜØÆ'];

describe('letters laid from planks', () => {
  it('are drawn for the capitals of all five languages', () => {
    expect(alphabet.filter((letter) => !canBeLaid(letter))).toEqual([]);
  });

  it('reach from the top of the line to its foot, so that a word is as high as it is measured', () => {
    for (const letter of alphabet) {
      const heights = corners(layWord(letter).path).map(([, y]) => y);
      expect(heights, letter).toContain(0);
      expect(Math.max(...heights), letter).toBe(LETTER_HEIGHT);
      const top = Math.min(...heights);
      expect(top, letter).toBeGreaterThanOrEqual(risesAbove(letter) ? -LETTER_RISE : 0);
      expect(top < 0, letter).toBe(risesAbove(letter));
    }
  });

  it('stay within the width that is claimed for them, with a word before and after', () => {
    for (const one of alphabet) {
      for (const other of alphabet) {
        const { width, path } = layWord(one + other);
        for (const [x] of corners(path)) {
          expect(x, one + other).toBeGreaterThanOrEqual(0);
          expect(x, one + other).toBeLessThanOrEqual(width);
        }
      }
    }
  });

  it('each differ from every other', () => {
    expect(new Set(alphabet.map((letter) => layWord(letter).path)).size).toBe(alphabet.length);
  });

  it('are refused where none is drawn, instead of leaving a hole in a word', () => {
    expect(() => layWord('É')).toThrow(RangeError);
  });
});

describe.each(languages)('the words of the wall in %s', (language) => {
  it('can be laid, and are short enough for a tablet that hangs upright', async () => {
    const { signs } = await firstWords(language);
    for (const { laid } of Object.values(signs)) {
      expect(canBeLaid(laid), laid).toBe(true);
      expect(layWord(laid).width, laid).toBeLessThanOrEqual(LONGEST_WORD);
    }
  });
});
