import type { InnerSentence } from '../contract/sentence.ts';
import type { Speaker } from './speaker.ts';

/** A sentence without figures. */
export type Nothing = Record<never, never>;

/** A sentence that stands within another: which, and what it tells. */
export type Inner = InnerSentence;

/** How one sentence is said. @param say - says a sentence that stands within it */
export type Phrase<Values> = (
  values: Values,
  speak: Speaker,
  say: (inner: Inner) => string,
) => string;

/** How the sentences of a subject are said: one missing or too many does not compile. */
export type Phrases<Subject> = { readonly [Code in keyof Subject]: Phrase<Subject[Code]> };
