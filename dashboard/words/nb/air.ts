import type { air as English } from '../en/air.ts';

export const air: typeof English = {
  flows: { good: 'god', poor: 'dårlig', 'cannot-tell': 'vet ikke' },
  poor: {
    few: 'Innestengt luft: åpne, om det ikke er fuktigere ute.',
    stagnant: 'Stillestående luft mellom bordene: slipp luft gjennom.',
    damp: 'Fuktig i timevis: skift luft når det er tørrere ute.',
    other: 'Dårlig luft her. Skift luft; ingen vifte på våt maling.',
  },
};
