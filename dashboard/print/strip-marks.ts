import type { MixtureReply } from '../../daemon/contract/mixture.ts';

type Pot = NonNullable<MixtureReply['pot']>;

/** Longer than this a strip does not fit on a sheet of A4 with its margins, mm. */
export const longestStripMm = 250;
/** Above the last mark, for the thumb, mm. */
const thumbMm = 12;
/** Labels nearer together than this run into each other, mm. */
const labelMm = 5;

export interface StripMark {
  words: string;
  /** From the bottom of the strip, which stands on the bottom of the pot, mm. */
  fromBottomMm: number;
  /** Where its label is written: moved up where it would touch the one below. */
  labelMm: number;
}

/** The strip that is glued to a stick: how long, and where its marks are. */
export function stripMarks(pot: Pot): { heightMm: number; marks: StripMark[] } {
  let below = Number.NEGATIVE_INFINITY;
  const marks = pot.marks.map(({ words, stickCm }) => {
    const fromBottomMm = stickCm * 10;
    const label = Math.max(fromBottomMm, below + labelMm);
    below = label;
    return { words: `${words} ${stickCm.toFixed(1)}`, fromBottomMm, labelMm: label };
  });
  const top = Math.max(0, ...marks.map((mark) => mark.labelMm));
  return { heightMm: Math.ceil(top + thumbMm), marks };
}
