import { letters } from './letters.ts';
import type { Plank } from './plain-letters.ts';

/** Height of every letter in its own units. */
export const LETTER_HEIGHT = 100;
/** How far dots and a ring rise above a letter, in the same units. */
export const LETTER_RISE = 30;
/**
 * A word as wide as this, in the same units, still has letters of 17.5 mm on a 10-inch tablet that hangs
 * upright: eight common letters. A longer one is refused in the test.
 */
export const LONGEST_WORD = 655;
const LETTER_GAP = 12;
const WORD_GAP = 38;

/** Pairs whose slants leave a hole; how much closer they stand. */
const closer: Readonly<Record<string, number>> = {
  WA: 15,
  AI: 2,
  LT: 8,
  AT: 9,
  DY: 4,
  TA: 9,
  LV: 10,
  VA: 15,
  AV: 15,
  LY: 8,
  KO: 3,
  TÄ: 9,
  VÄ: 12,
};

export interface LaidWord {
  readonly width: number;
  /** An SVG path of all planks. */
  readonly path: string;
}

/** Whether a letter of the word has dots or a ring above it. */
export function risesAbove(word: string): boolean {
  return /[ÄÖÜÅ]/.test(word);
}

/** Whether every letter of the word can be laid. */
export function canBeLaid(word: string): boolean {
  return [...word].every((sign) => sign === ' ' || letters[sign] !== undefined);
}

/**
 * Lays a word from planks.
 *
 * @param word - capitals and spaces
 * @returns its width in units of which a letter is 100 high, and the path of its planks
 * @throws RangeError for a letter that is not drawn
 */
export function layWord(word: string): LaidWord {
  let x = 0;
  let path = '';
  let before = '';
  for (const sign of word) {
    if (sign === ' ') {
      x += WORD_GAP - LETTER_GAP;
      before = '';
      continue;
    }
    const letter = letters[sign];
    if (letter === undefined) throw new RangeError(`no letter is drawn for ${sign}`);
    x -= closer[before + sign] ?? 0;
    for (const plank of letter.planks) path += plankPath(plank, x);
    x += letter.width + LETTER_GAP;
    before = sign;
  }
  return { width: Math.max(0, x - LETTER_GAP), path };
}

function plankPath(plank: Plank, shift: number): string {
  let path = '';
  for (let i = 0; i + 1 < plank.length; i += 2) {
    const x = Math.round(((plank[i] ?? 0) + shift) * 10) / 10;
    path += `${i === 0 ? 'M' : 'L'}${x} ${plank[i + 1] ?? 0}`;
  }
  return `${path}Z`;
}
