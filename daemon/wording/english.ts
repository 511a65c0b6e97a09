import type { Said } from '../contract/sentence.ts';
import { en } from './en.ts';
import { contractSpeaker } from './metric-speaker.ts';
import { type SentenceCode, type SentenceTable, say, told } from './sentence.ts';

const plain = contractSpeaker();

/**
 * A sentence as replies carry it: code, values, and its English text.
 *
 * @param code - with its variant, `code/variant`, where it has one
 * @param timeZone - IANA name, for a sentence that names a clock time or a day
 */
export function sentence<Code extends SentenceCode>(
  code: Code,
  values: SentenceTable[Code],
  timeZone?: string,
): Said {
  const what = told(code, values);
  const speak = timeZone === undefined ? plain : contractSpeaker(timeZone);
  return { ...what, text: say(en, what, speak) };
}
