import type { signs as English } from '../en/signs.ts';

export const signs: typeof English = {
  wait: { laid: 'ODOTA', spoken: 'Odota', meaning: 'Ei vielä.' },
  test: {
    laid: 'KOETA',
    spoken: 'Koeta',
    meaning: 'Niin todennäköistä, että kannattaa käydä tunnustelemassa.',
  },
  ready: {
    laid: 'VALMIS',
    spoken: 'Valmis',
    meaning: 'Yhdeksän kymmenestä, että se on kovettunut tarpeeksi. Tunnustele ennen kuin jatkat.',
  },
  hold: { laid: 'ESTE', spoken: 'Este', meaning: 'Kovettunut tarpeeksi, mutta jokin muu estää.' },
  bare: { laid: 'PALJAS', spoken: 'Paljas', meaning: 'Yhtään kerrosta ei ole vielä kirjattu.' },
  done: {
    laid: 'TEHTY',
    spoken: 'Tehty',
    meaning: 'Kaikki kerrokset on maalattu, eikä mitään odoteta.',
  },
  empty: { laid: 'TYHJÄ', spoken: 'Tyhjä', meaning: 'Tässä ei ole yhtään erää.' },
  'no-data': {
    laid: 'EI OLE',
    spoken: 'Ei tietoa',
    meaning: 'Mikään ei kerro, millaista ilma täällä on.',
  },
};
