import type { Inner } from './phrase.ts';
import type { DigestSentences } from './subject/digest.ts';

/** The weather of a place in a digest: its name, and what speaks for and against brushing there. */
export const weather = (
  { placeName, sentences }: DigestSentences['digest-brush'],
  say: (inner: Inner) => string,
): string => `${placeName}: ${sentences.map(say).join(' ')}`;
