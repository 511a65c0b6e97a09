import type { Phrases } from '../phrase.ts';
import type { SettingSentences } from '../subject/setting.ts';

export const setting: Phrases<SettingSentences> = {
  'setting-unknown': ({ name }) => `Det finnes ingen innstilling ${name}.`,
  'setting-by-hand': ({ name }) =>
    `Innstillingen ${name} endres i innstillingsfilen på selve datamaskinen, ikke på siden.`,
  'setting-given': ({ name, other }) =>
    `Innstillingen ${name} ble gitt ved oppstart med ${other}, og det går foran det som velges på siden.`,
  'chosen-damaged': ({ found }) =>
    `Det som ble valgt på innstillingssiden, kan ikke leses: ${found}. I stedet gjelder innstillingsfilen og standardverdiene. Velg på nytt på siden; den skadde filen blir da liggende ved siden av den nye.`,
  'settings-unwritten': ({ found }) =>
    `Endringen kunne ikke skrives i datamappen: ${found}. Ingenting ble endret.`,
  'settings-nothing-asked': () => 'Forespørselen nevner ingen innstilling.',
};
