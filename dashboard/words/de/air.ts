import type { air as English } from '../en/air.ts';

export const air: typeof English = {
  flows: { good: 'gut', poor: 'schlecht', 'cannot-tell': 'unklar' },
  poor: {
    few: 'Verbrauchte Luft: öffnen, außer wenn es draußen feuchter ist.',
    stagnant: 'Die Luft steht zwischen den Brettern: Luft durchlassen.',
    damp: 'Seit Stunden feucht: lüften, wenn es draußen trockener ist.',
    other: 'Schlechte Luft hier. Lüften; kein Gebläse auf nasse Farbe.',
  },
};
