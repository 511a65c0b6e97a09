import type { copying as English } from '../en/copying.ts';

export const copying: typeof English = {
  copy: 'Kopiera',
  copyIt: (what) => `Kopiera: ${what}`,
  copied: 'Kopierat.',
  selected: 'Markerat: kopiera nu med Ctrl+C.',
};
