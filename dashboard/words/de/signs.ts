import type { signs as English } from '../en/signs.ts';

export const signs: typeof English = {
  wait: { laid: 'WARTEN', spoken: 'Warten', meaning: 'Noch nicht.' },
  test: {
    laid: 'FÜHLEN',
    spoken: 'Fühlen',
    meaning: 'Wahrscheinlich genug, dass sich der Weg zum Fühlen lohnt.',
  },
  ready: {
    laid: 'BEREIT',
    spoken: 'Bereit',
    meaning: 'Neun von zehn, dass es genug gehärtet ist. Vor dem Weitermachen anfassen.',
  },
  hold: {
    laid: 'GESPERRT',
    spoken: 'Gesperrt',
    meaning: 'Genug gehärtet, aber etwas anderes verbietet es.',
  },
  bare: { laid: 'ROH', spoken: 'Roh', meaning: 'Noch kein Anstrich eingetragen.' },
  done: {
    laid: 'FERTIG',
    spoken: 'Fertig',
    meaning: 'Alle Anstriche sind drauf, und auf nichts wird gewartet.',
  },
  empty: { laid: 'LEER', spoken: 'Leer', meaning: 'Hier liegt keine Partie.' },
  'no-data': {
    laid: 'UNKLAR',
    spoken: 'Unklar',
    meaning: 'Nichts sagt, wie die Luft hier ist.',
  },
};
