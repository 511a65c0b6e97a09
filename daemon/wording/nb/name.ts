import type { Surface } from '../../contract/plan.ts';
import type { Phrases } from '../phrase.ts';
import type { NameSentences } from '../subject/name.ts';

const boards: Readonly<Record<Surface, string>> = {
  sawn: 'skårne bord',
  planed: 'høvlede bord',
};

export const name: Phrases<NameSentences> = {
  'coat-name/primer': () => 'Grunning',
  'coat-name/second': () => 'Mellomstrøk',
  'coat-name/last': () => 'Toppstrøk',
  'coat-name/number': ({ number }) => `Strøk ${number}`,
  'plan-name/usual': ({ surface }) => `Tre strøk på ${boards[surface]}`,
  'plan-name/without-turpentine': ({ surface }) =>
    `Tre strøk på ${boards[surface]}, uten terpentin`,
  'plan-name/resinous': ({ surface }) =>
    `Tre strøk på ${boards[surface]}, kvaerikt eller garvesyrerikt virke`,
};
