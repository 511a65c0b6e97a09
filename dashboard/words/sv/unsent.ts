import type { unsent as English } from '../en/unsent.ts';
import { plural } from '../plural.ts';

export const unsent: typeof English = {
  waits: (count) => `Väntar på att skickas (${plural('sv', count, { one: '#', other: '#' })})`,
  refused: (count) =>
    plural('sv', count, {
      one: '# anteckning togs inte emot: titta på den',
      other: '# anteckningar togs inte emot: titta på dem',
    }),
  needsPin: 'Väntar på PIN-koden',
  keepsNothing:
    'Den här webbläsaren sparar ingenting: det du skriver in utan nät skulle gå förlorat.',
};
