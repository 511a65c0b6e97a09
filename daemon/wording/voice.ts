import type { Language } from '../contract/language.ts';
import type { Sentence } from '../contract/sentence.ts';
import { de } from './de.ts';
import { en } from './en.ts';
import { fi } from './fi.ts';
import { metricSpeaker } from './metric-speaker.ts';
import { nb } from './nb.ts';
import { say, type Wording } from './sentence.ts';
import { sv } from './sv.ts';

/** The languages that every sentence is written in. */
const wordings: Readonly<Record<Language, Wording>> = { en, de, sv, nb, fi };

/** Says a sentence in one language, with figures and times as its people write them. */
export type Voice = (sentence: Pick<Sentence, 'code' | 'values'> & { text?: string }) => string;

/**
 * Who speaks for the site where no reader has chosen a language: in notices and digests.
 *
 * @param timeZone - IANA name, for days and clock times
 */
export function siteVoice(language: Language, timeZone: string): Voice {
  const speak = metricSpeaker(language, timeZone);
  return (sentence) => say(wordings[language], sentence, speak);
}
