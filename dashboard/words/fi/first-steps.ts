import type { firstSteps as English } from '../en/first-steps.ts';
import { plural } from '../plural.ts';

export const firstSteps: typeof English = {
  title: 'Taulu on tyhjä',
  says: 'Tästä kestää noin viisi minuuttia ensimmäiseen arvioon: huone, teline, anturi, laudat, ensimmäinen kerros. Voit lopettaa milloin vain ja jatkaa myöhemmin.',
  waiting: (count) =>
    plural('fi', count, {
      one: '# anturi lähettää jo ja odottaa paikkaansa.',
      other: '# anturia lähettää jo ja odottaa paikkaansa.',
    }),
  begin: 'Aloita',
  goOn: 'Jatka käyttöönottoa',
  allAtOnce: 'Perustiedot',
};
