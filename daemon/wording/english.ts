import type { Said } from '../contract/sentence.ts';
import { en } from './en.ts';
import { contractSpeaker } from './metric-speaker.ts';
import { type SentenceCode, type SentenceTable, say, told } from './sentence.ts';

const plain = contractSpeaker();
/** Sentences that tell nothing but themselves are made once: verdicts say them thousands of times. */
const still = new Map<string, Said>();

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
  const known = still.get(code);
  if (known !== undefined) return known;
  const what = told(code, values);
  const speak = timeZone === undefined ? plain : contractSpeaker(timeZone);
  const said = { ...what, text: say(en, what, speak) };
  if (Object.keys(values).length === 0) still.set(code, said);
  return said;
}
