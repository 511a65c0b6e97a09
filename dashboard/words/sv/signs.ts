import type { signs as English } from '../en/signs.ts';

export const signs: typeof English = {
  wait: { laid: 'VÄNTA', spoken: 'Vänta', meaning: 'Inte än.' },
  test: {
    laid: 'KÄNN PÅ',
    spoken: 'Känn på',
    meaning: 'Så troligt att det är värt att gå dit och känna.',
  },
  ready: {
    laid: 'KLAR',
    spoken: 'Klar',
    meaning: 'Nio av tio att det har härdat nog. Känn innan du går vidare.',
  },
  hold: { laid: 'HINDER', spoken: 'Hinder', meaning: 'Härdat nog, men något annat hindrar.' },
  bare: { laid: 'BART', spoken: 'Bart trä', meaning: 'Ingen strykning antecknad än.' },
  done: { laid: 'FÄRDIG', spoken: 'Färdig', meaning: 'Allt är struket och inget väntas.' },
  empty: { laid: 'TOMT', spoken: 'Tomt', meaning: 'Här ligger inget parti.' },
  'no-data': { laid: 'OKÄNT', spoken: 'Okänt', meaning: 'Ingenting berättar hur luften är här.' },
};
