import type { air as English } from '../en/air.ts';

export const air: typeof English = {
  flows: { good: 'bra', poor: 'dålig', 'cannot-tell': 'vet inte' },
  poor: {
    few: 'Instängd luft: öppna, om det inte är fuktigare ute.',
    stagnant: 'Stillastående luft mellan brädorna: släpp igenom luft.',
    damp: 'Fuktigt i timmar: byt luft när det är torrare ute.',
    other: 'Dålig luft här. Byt luft; ingen fläkt på våt färg.',
  },
};
