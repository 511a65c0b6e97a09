import type { Sentence } from '../contract/sentence.ts';
import { name as english } from './en/name.ts';
import { contractSpeaker } from './metric-speaker.ts';
import { say, told } from './sentence.ts';

const builtIn = [
  told('coat-name/primer', {}),
  told('coat-name/second', {}),
  told('coat-name/last', {}),
  ...(['sawn', 'planed'] as const).flatMap((surface) => [
    told('plan-name/usual', { surface }),
    told('plan-name/without-turpentine', { surface }),
    told('plan-name/resinous', { surface }),
  ]),
];
const byName = new Map(builtIn.map((one) => [say(english, one, contractSpeaker()), one]));

/**
 * The name of a coat or a plan as a sentence: one that came with the program is said in the
 * language of the reader, one that somebody wrote stays as it is.
 */
export function builtInName(text: string): Sentence {
  const [, number] = /^Coat (\d{1,2})$/.exec(text) ?? [];
  if (number !== undefined)
    return { ...told('coat-name/number', { number: Number(number) }), text };
  return { ...(byName.get(text) ?? { code: 'name' }), text };
}
