import type { unsent as English } from '../en/unsent.ts';
import { plural } from '../plural.ts';

export const unsent: typeof English = {
  waits: (count) => `Venter på å bli sendt (${plural('nb', count, { one: '#', other: '#' })})`,
  refused: (count) =>
    plural('nb', count, {
      one: '# notat ble ikke tatt imot: se på det',
      other: '# notater ble ikke tatt imot: se på dem',
    }),
  needsPin: 'Venter på PIN-koden',
  keepsNothing: 'Denne nettleseren lagrer ingenting: det du skriver inn uten nett, ville gå tapt.',
};
