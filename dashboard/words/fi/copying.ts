import type { copying as English } from '../en/copying.ts';

export const copying: typeof English = {
  copy: 'Kopioi',
  copyIt: (what) => `Kopioi: ${what}`,
  copied: 'Kopioitu.',
  selected: 'Valittu: kopioi nyt näppäimillä Ctrl+C.',
};
