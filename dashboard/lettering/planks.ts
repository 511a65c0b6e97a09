/** One sawn plank of a letter: corner points, x and y in turn, in a letter 100 units high. */
type Plank = readonly number[];

interface Letter {
  readonly width: number;
  readonly planks: readonly Plank[];
}

/** Height of every letter in its own units. */
export const LETTER_HEIGHT = 100;
const LETTER_GAP = 12;
const WORD_GAP = 38;

/**
 * The letters that the wall’s words need, each laid from planks 19 wide with a kerf of 3 between
 * them and corners sawn off at 45°. Our own drawing.
 */
const letters: Readonly<Record<string, Letter>> = {
  A: {
    width: 80,
    planks: [
      [0, 100, 20, 100, 38.5, 38, 38.5, 0, 30, 0],
      [80, 100, 60, 100, 41.5, 38, 41.5, 0, 50, 0],
      [34.9, 60, 45.1, 60, 50.2, 77, 29.8, 77],
    ],
  },
  B: {
    width: 72,
    planks: [
      [0, 0, 19, 0, 19, 100, 0, 100],
      [22, 0, 56, 0, 63, 7, 52, 22, 49, 19, 22, 19],
      [65.2, 9.2, 70, 14, 70, 38, 62, 46, 50, 37, 52, 35, 52, 25, 54, 24.3],
      [22, 41, 48, 41, 60, 50, 48, 59, 22, 59],
      [62.2, 52, 72, 61, 72, 85, 66.4, 90.6, 54, 77, 54, 63, 51, 60.6],
      [22, 81, 50, 81, 52, 79, 64.2, 92.8, 57, 100, 22, 100],
    ],
  },
  D: {
    width: 75,
    planks: [
      [0, 0, 19, 0, 19, 100, 0, 100],
      [22, 0, 55, 0, 64, 9, 51, 22, 48, 19, 22, 19],
      [66, 11, 75, 20, 75, 80, 66, 89, 53, 76, 56, 73, 56, 27, 53, 24],
      [22, 81, 48, 81, 51, 78, 64, 91, 55, 100, 22, 100],
    ],
  },
  E: {
    width: 66,
    planks: [
      [0, 0, 19, 0, 19, 100, 0, 100],
      [22, 0, 66, 0, 66, 19, 22, 19],
      [22, 41, 58, 41, 58, 59, 22, 59],
      [22, 81, 66, 81, 66, 100, 22, 100],
    ],
  },
  F: {
    width: 64,
    planks: [
      [0, 0, 19, 0, 19, 100, 0, 100],
      [22, 0, 64, 0, 64, 19, 22, 19],
      [22, 43, 56, 43, 56, 61, 22, 61],
    ],
  },
  H: {
    width: 74,
    planks: [
      [0, 0, 19, 0, 19, 100, 0, 100],
      [55, 0, 74, 0, 74, 100, 55, 100],
      [22, 41, 52, 41, 52, 59, 22, 59],
    ],
  },
  I: { width: 19, planks: [[0, 0, 19, 0, 19, 100, 0, 100]] },
  L: {
    width: 61,
    planks: [
      [0, 0, 19, 0, 19, 100, 0, 100],
      [22, 81, 61, 81, 61, 100, 22, 100],
    ],
  },
  M: {
    width: 92,
    planks: [
      [0, 0, 19, 0, 19, 100, 0, 100],
      [73, 0, 92, 0, 92, 100, 73, 100],
      [22, 0, 29, 0, 44.5, 38, 44.5, 70, 22, 18],
      [70, 0, 63, 0, 47.5, 38, 47.5, 70, 70, 18],
    ],
  },
  N: {
    width: 76,
    planks: [
      [0, 0, 19, 0, 19, 100, 0, 100],
      [57, 0, 76, 0, 76, 100, 57, 100],
      [22, 0, 29, 0, 54, 66, 54, 100, 47, 100, 22, 34],
    ],
  },
  O: {
    width: 80,
    planks: [
      [9, 11, 22, 24, 19, 27, 19, 73, 22, 76, 9, 89, 0, 80, 0, 20],
      [11, 9, 20, 0, 60, 0, 69, 9, 56, 22, 53, 19, 27, 19, 24, 22],
      [71, 11, 80, 20, 80, 80, 71, 89, 58, 76, 61, 73, 61, 27, 58, 24],
      [69, 91, 60, 100, 20, 100, 11, 91, 24, 78, 27, 81, 53, 81, 56, 78],
    ],
  },
  P: {
    width: 70,
    planks: [
      [0, 0, 19, 0, 19, 100, 0, 100],
      [22, 0, 54, 0, 61, 7, 48, 20, 47, 19, 22, 19],
      [63, 9, 70, 16, 70, 44, 63, 51, 50, 38, 51, 37, 51, 23, 50, 22],
      [22, 41, 47, 41, 48, 40, 61, 53, 54, 60, 22, 60],
    ],
  },
  R: {
    width: 74,
    planks: [
      [0, 0, 19, 0, 19, 100, 0, 100],
      [22, 0, 55, 0, 62, 7, 49, 20, 48, 19, 22, 19],
      [64, 9, 71, 16, 71, 42, 64, 49, 51, 36, 52, 35, 52, 23, 51, 22],
      [22, 39, 48, 39, 49, 38, 62, 51, 55, 58, 22, 58],
      [30, 61, 50, 61, 74, 100, 53.5, 100],
    ],
  },
  T: {
    width: 70,
    planks: [
      [0, 0, 70, 0, 70, 19, 0, 19],
      [25.5, 22, 44.5, 22, 44.5, 100, 25.5, 100],
    ],
  },
  W: {
    width: 116,
    planks: [
      [0, 0, 20, 0, 42, 100, 22, 100],
      [48, 0, 35.5, 56.8, 45, 100, 46, 100, 56.5, 52, 56.5, 0],
      [68, 0, 80.5, 56.8, 71, 100, 70, 100, 59.5, 52, 59.5, 0],
      [116, 0, 96, 0, 74, 100, 94, 100],
    ],
  },
  Y: {
    width: 78,
    planks: [
      [0, 0, 21, 0, 37.5, 34, 37.5, 54, 29.5, 57],
      [78, 0, 57, 0, 40.5, 34, 40.5, 54, 48.5, 57],
      [29.5, 60.5, 39, 57, 48.5, 60.5, 48.5, 100, 29.5, 100],
    ],
  },
};

/** Pairs whose slants leave a hole; how much closer they stand. */
const closer: Readonly<Record<string, number>> = { WA: 15, AI: 2, LT: 8, AT: 9, DY: 4, TA: 9 };

export interface LaidWord {
  readonly width: number;
  /** An SVG path of all planks. */
  readonly path: string;
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
