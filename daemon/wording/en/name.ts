import type { Phrases } from '../phrase.ts';
import type { NameSentences } from '../subject/name.ts';

export const name: Phrases<NameSentences> = {
  'coat-name/primer': () => 'Primer',
  'coat-name/second': () => 'Second coat',
  'coat-name/last': () => 'Last coat',
  'coat-name/number': ({ number }) => `Coat ${number}`,
  'plan-name/usual': ({ surface }) => `Three coats on ${surface} boards`,
  'plan-name/without-turpentine': ({ surface }) =>
    `Three coats on ${surface} boards, without turpentine`,
  'plan-name/resinous': ({ surface }) =>
    `Three coats on ${surface} boards, resinous or tannin-rich timber`,
};
