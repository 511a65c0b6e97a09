import type { signs as English } from '../en/signs.ts';

export const signs: typeof English = {
  wait: { laid: 'VENT', spoken: 'Vent', meaning: 'Ikke ennå.' },
  test: {
    laid: 'KJENN PÅ',
    spoken: 'Kjenn på',
    meaning: 'Så sannsynlig at det er verdt turen å kjenne etter.',
  },
  ready: {
    laid: 'KLAR',
    spoken: 'Klar',
    meaning: 'Ni av ti for at det har herdet nok. Kjenn etter før du går videre.',
  },
  hold: { laid: 'HINDRET', spoken: 'Hindret', meaning: 'Herdet nok, men noe annet hindrer.' },
  bare: { laid: 'BART', spoken: 'Bart tre', meaning: 'Ikke noe strøk er notert ennå.' },
  done: { laid: 'FERDIG', spoken: 'Ferdig', meaning: 'Alle strøk er på, og ingenting ventes.' },
  empty: { laid: 'TOMT', spoken: 'Tomt', meaning: 'Her ligger det ikke noe parti.' },
  'no-data': {
    laid: 'UKJENT',
    spoken: 'Ukjent',
    meaning: 'Ingenting forteller hvordan luften er her.',
  },
};
