import type { unsent as English } from '../en/unsent.ts';
import { plural } from '../plural.ts';

export const unsent: typeof English = {
  waits: (count) => `Odottaa lähetystä (${plural('fi', count, { one: '#', other: '#' })})`,
  refused: (count) =>
    plural('fi', count, {
      one: '# kirjausta ei hyväksytty: katso se',
      other: '# kirjausta ei hyväksytty: katso ne',
    }),
  needsPin: 'Odottaa PIN-koodia',
  keepsNothing: 'Tämä selain ei tallenna mitään: ilman verkkoa kirjattu katoaisi.',
};
