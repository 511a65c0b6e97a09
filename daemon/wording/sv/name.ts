import type { Surface } from '../../contract/plan.ts';
import type { Phrases } from '../phrase.ts';
import type { NameSentences } from '../subject/name.ts';

const boards: Readonly<Record<Surface, string>> = {
  sawn: 'sågade brädor',
  planed: 'hyvlade brädor',
};

export const name: Phrases<NameSentences> = {
  'coat-name/primer': () => 'Grundstrykning',
  'coat-name/second': () => 'Mellanstrykning',
  'coat-name/last': () => 'Slutstrykning',
  'coat-name/number': ({ number }) => `Strykning ${number}`,
  'plan-name/usual': ({ surface }) => `Tre strykningar på ${boards[surface]}`,
  'plan-name/without-turpentine': ({ surface }) =>
    `Tre strykningar på ${boards[surface]}, utan terpentin`,
  'plan-name/resinous': ({ surface }) =>
    `Tre strykningar på ${boards[surface]}, kådrikt eller garvsyrerikt virke`,
};
