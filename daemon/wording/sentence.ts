import type { Sentence, SentenceValues } from '../contract/sentence.ts';
import type { Inner, Phrase, Phrases } from './phrase.ts';
import type { Speaker } from './speaker.ts';
import type { VerdictSentences } from './subject/verdict.ts';

/**
 * Every sentence that the daemon says, and what it tells. A code that has several sentences is
 * written with its variant, as `code/variant`; in replies the variant is the value of that name.
 */
export interface SentenceTable extends VerdictSentences {}

export type SentenceCode = keyof SentenceTable;

/** All sentences in one language. */
export type Wording = Phrases<SentenceTable>;

/** The sentences of some subjects: what is missing is said by its English text. */
export type SomeWording = Partial<Wording>;

/** What is sent of a sentence besides its text. */
export interface Told {
  code: string;
  values: SentenceValues;
}

/** A sentence as code and values, to be said where its language is known. */
export function told<Code extends SentenceCode>(code: Code, values: SentenceTable[Code]): Told {
  const [plain = code, variant] = code.split('/');
  return {
    code: plain,
    values: { ...(variant === undefined ? {} : { variant }), ...(values as SentenceValues) },
  };
}

const keyOf = (code: string, values: SentenceValues): string =>
  typeof values.variant === 'string' ? `${code}/${values.variant}` : code;

/**
 * Says a sentence in the language of a wording. One that is not known there, as after an upgrade of
 * the other side, is said by its text.
 *
 * @param sentence - `text` may be left out where no reply is at hand; the code stands in for it
 */
export function say(
  wording: SomeWording,
  sentence: Pick<Sentence, 'code' | 'values'> & { text?: string },
  speak: Speaker,
): string {
  const { code, values, text = code } = sentence;
  if (values === undefined) return text;
  const phrase = Object.hasOwn(wording, keyOf(code, values))
    ? (wording[keyOf(code, values) as SentenceCode] as Phrase<SentenceValues>)
    : undefined;
  if (phrase === undefined) return text;
  try {
    return phrase(values, speak, (inner: Inner) => say(wording, inner, speak));
  } catch {
    // Values of another version than this wording’s.
    return text;
  }
}
