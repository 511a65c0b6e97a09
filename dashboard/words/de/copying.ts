import type { copying as English } from '../en/copying.ts';

export const copying: typeof English = {
  copy: 'Kopieren',
  copyIt: (what) => `Kopieren: ${what}`,
  copied: 'Kopiert.',
  selected: 'Ausgewählt: jetzt mit Strg+C kopieren.',
};
