import type { copying as English } from '../en/copying.ts';

export const copying: typeof English = {
  copy: 'Kopier',
  copyIt: (what) => `Kopier: ${what}`,
  copied: 'Kopiert.',
  selected: 'Merket: kopier nå med Ctrl+C.',
};
