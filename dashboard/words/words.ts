import type { first as englishFirst } from './en/first.ts';
import type { rest as englishRest } from './en/rest.ts';

/** English is written first; a catalogue that lacks one of its keys does not compile. */
export type FirstWords = typeof englishFirst;
export type RestWords = typeof englishRest;
/** Every word of the pages, in one language. */
export type Words = FirstWords & RestWords;
