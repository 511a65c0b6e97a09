import type { unsent as English } from '../en/unsent.ts';
import { plural } from '../plural.ts';

export const unsent: typeof English = {
  waits: (count) => `Wartet aufs Senden (${plural('de', count, { one: '#', other: '#' })})`,
  refused: (count) =>
    plural('de', count, {
      one: '# Eintrag wurde nicht angenommen: ansehen',
      other: '# Einträge wurden nicht angenommen: ansehen',
    }),
  needsPin: 'Wartet auf die PIN',
  keepsNothing: 'Dieser Browser behält nichts: Was ohne Netz eingegeben wird, ginge verloren.',
};
