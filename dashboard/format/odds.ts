import type { FirstWords } from '../words/words.ts';

/** A probability in words that do not pretend to be exact: “7 in 10”. */
export function oddsLine(probability: number, { odds }: FirstWords['times']): string {
  if (probability >= 0.985) return odds.almostSurely;
  if (probability < 0.015) return odds.nextToNone;
  const inTen = Math.round(probability * 10);
  if (inTen === 0) return odds.lessThanOneInTen;
  if (inTen === 10) return odds.moreThanNineInTen;
  return odds.inTen(inTen);
}
