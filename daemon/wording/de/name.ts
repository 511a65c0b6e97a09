import type { Surface } from '../../contract/plan.ts';
import type { Phrases } from '../phrase.ts';
import type { NameSentences } from '../subject/name.ts';

const boards: Readonly<Record<Surface, string>> = {
  sawn: 'sägerauen Brettern',
  planed: 'gehobelten Brettern',
};

export const name: Phrases<NameSentences> = {
  'coat-name/primer': () => 'Grundanstrich',
  'coat-name/second': () => 'Zwischenanstrich',
  'coat-name/last': () => 'Schlussanstrich',
  'coat-name/number': ({ number }) => `Anstrich ${number}`,
  'plan-name/usual': ({ surface }) => `Drei Anstriche auf ${boards[surface]}`,
  'plan-name/without-turpentine': ({ surface }) =>
    `Drei Anstriche auf ${boards[surface]}, ohne Terpentinöl`,
  'plan-name/resinous': ({ surface }) =>
    `Drei Anstriche auf ${boards[surface]}, harz- oder gerbstoffreiches Holz`,
};
