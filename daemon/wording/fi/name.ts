import type { Surface } from '../../contract/plan.ts';
import type { Phrases } from '../phrase.ts';
import type { NameSentences } from '../subject/name.ts';

const boards: Readonly<Record<Surface, string>> = {
  sawn: 'sahatulle laudalle',
  planed: 'höylätylle laudalle',
};

export const name: Phrases<NameSentences> = {
  'coat-name/primer': () => 'Pohjamaalaus',
  'coat-name/second': () => 'Välimaalaus',
  'coat-name/last': () => 'Pintamaalaus',
  'coat-name/number': ({ number }) => `Kerros ${number}`,
  'plan-name/usual': ({ surface }) => `Kolme kerrosta ${boards[surface]}`,
  'plan-name/without-turpentine': ({ surface }) =>
    `Kolme kerrosta ${boards[surface]}, ilman tärpättiä`,
  'plan-name/resinous': ({ surface }) =>
    `Kolme kerrosta ${boards[surface]}, pihkainen tai parkkiainepitoinen puu`,
};
