import type { MixtureReply } from '../../daemon/contract/mixture.ts';
import type { UnitSystem } from '../format/units.ts';

type Pot = NonNullable<MixtureReply['pot']>;

/**
 * Longer than this a strip does not fit on the reader’s paper with its margins, mm.
 *
 * **Source:** A4 is 297 mm high (ISO 216), a letter sheet 11 in (ANSI/ASME Y14.1, from memory).
 */
export const longestStripMm: Readonly<Record<UnitSystem, number>> = { metric: 250, us: 235 };
/** The line to lay a ruler on, mm: 100 mm or 4 in. */
export const checkLineMm: Readonly<Record<UnitSystem, number>> = { metric: 100, us: 101.6 };
/** Above the last mark, for the thumb, mm. */
const thumbMm = 12;
/** Labels nearer together than this run into each other, mm. */
const labelMm = 5;

/** Where the words beside a mark begin, mm from the left edge of the strip. */
export const wordsAtMm = 14.5;
/** Widths of a strip, mm: it goes around a stick, and beside it stands the line to lay a ruler on. */
const narrowestMm = 48;
const widestMm = 66;
/** Room that a letter takes in the words of a strip, mm. */
const letterMm = 1.9;

export interface StripMark {
  words: string;
  /** From the bottom of the strip, which stands on the bottom of the pot, mm. */
  fromBottomMm: number;
  /** Where its label is written: moved up where it would touch the one below. */
  labelMm: number;
}

/**
 * The strip that is glued to a stick: its size, and where its marks are.
 *
 * @param words - what is written beside a mark
 */
export function stripMarks(
  pot: Pot,
  words: (mark: Pot['marks'][number]) => string,
): { widthMm: number; heightMm: number; marks: StripMark[] } {
  let below = Number.NEGATIVE_INFINITY;
  const marks = pot.marks.map((mark) => {
    const fromBottomMm = mark.stickCm * 10;
    const label = Math.max(fromBottomMm, below + labelMm);
    below = label;
    return { words: words(mark), fromBottomMm, labelMm: label };
  });
  const top = Math.max(0, ...marks.map((mark) => mark.labelMm));
  const longest = Math.max(0, ...marks.map((mark) => mark.words.length));
  const widthMm = Math.ceil(wordsAtMm + longest * letterMm);
  return {
    widthMm: Math.min(widestMm, Math.max(narrowestMm, widthMm)),
    heightMm: Math.ceil(top + thumbMm),
    marks,
  };
}
