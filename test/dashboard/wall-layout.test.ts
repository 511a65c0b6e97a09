import { describe, expect, it } from 'vitest';
import { LONGEST_WORD } from '../../dashboard/lettering/planks.ts';
import {
  leastLetter,
  textScale,
  type WallRoom,
  wallLayout,
} from '../../dashboard/wall/wall-layout.ts';

/** 20 arc-minutes at 3 m (trigonometry), on 1280 × 800 pixels of a 10.1-inch screen: 103 px. */
const READ_PX = ((2 * 3000 * Math.tan(((20 / 60 / 2) * Math.PI) / 180)) / 25.4) * (1509.4 / 10.1);

/** What head and foot leave of a window. */
function roomIn(width: number, height: number, changes: Partial<WallRoom> = {}): WallRoom {
  const textPx = 16 * textScale(Math.min(width, height));
  return {
    widthPx: width,
    heightPx: height - 7 * textPx,
    textPx,
    longestWord: 5.3,
    rise: 0,
    leastLetterPx: leastLetter(Math.min(width, height)),
    extraLines: 0,
    ...changes,
  };
}

const longest = { longestWord: LONGEST_WORD / 100, rise: 0.3 };

describe('the boards of the wall', () => {
  const screens = [
    [1280, 800],
    [800, 1280],
    [1920, 1080],
    [3840, 2160],
  ] as const;

  it.each(screens)(
    'have letters for three metres at %i × %i, with any word and 1 to 20 racks',
    (width, height) => {
      for (const words of [{}, longest]) {
        for (let boards = 1; boards <= 20; boards += 1) {
          const layout = wallLayout(roomIn(width, height, words), boards);
          expect(layout.form).not.toBe('list');
          expect(layout.letterPx).toBeGreaterThanOrEqual(READ_PX);
          expect(layout.columns * layout.rows).toBeGreaterThanOrEqual(layout.perPage);
          const widest = layout.letterPx * ((words as WallRoom).longestWord ?? 5.3);
          expect(widest).toBeLessThan(width / layout.columns);
        }
      }
    },
  );

  it('are four on a tablet that lies, and are spread evenly over the pages', () => {
    expect(wallLayout(roomIn(1280, 800), 4).perPage).toBe(4);
    expect(wallLayout(roomIn(1280, 800), 20).perPage).toBe(4);
    expect(wallLayout(roomIn(1280, 800), 9).perPage).toBe(3);
  });

  it('have larger letters the fewer there are', () => {
    const letters = [1, 2, 4].map((boards) => wallLayout(roomIn(1280, 800), boards).letterPx);
    expect(letters).toEqual([...letters].sort((a, b) => b - a));
    expect(letters[0]).toBeGreaterThan(letters[2] ?? 0);
  });

  it('are fewer at once where their text needs more lines or is twice as large', () => {
    const room = roomIn(1280, 800);
    expect(wallLayout({ ...room, extraLines: 3 }, 20).perPage).toBeLessThan(4);
    const twice = wallLayout({ ...room, textPx: 32, heightPx: 560 }, 20);
    expect(twice).toMatchObject({ perPage: 1 });
    expect(twice.letterPx).toBeGreaterThanOrEqual(READ_PX);
  });

  it('are a list to be scrolled where letters would be too small: in a hand', () => {
    for (const [width, height] of [
      [390, 844],
      [640, 400],
    ] as const) {
      const layout = wallLayout(roomIn(width, height), 8);
      expect(layout).toMatchObject({ form: 'list', perPage: 8, columns: 1 });
      expect(layout.letterPx * 5.3).toBeLessThan(width);
    }
  });
});
