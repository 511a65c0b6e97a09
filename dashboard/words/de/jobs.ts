import type { jobs as English } from '../en/jobs.ts';

export const jobs: typeof English = {
  turn: {
    noun: 'Wenden',
    infinitive: 'zum Wenden',
    question: 'Dürfen die Bretter gewendet werden?',
    test: 'Einen Fingerrücken auf die Farbe legen. Nichts darf daran hängen bleiben, und kein Abdruck darf zurückbleiben.',
    passed: 'Nichts am Finger',
    failed: 'Gibt einen Abdruck',
  },
  stack: {
    noun: 'Stapeln',
    infinitive: 'zum Stapeln',
    question: 'Dürfen sie dicht gestapelt werden?',
    test: 'Die Handfläche fest aufdrücken und bis fünf zählen. Sie muss sich sauber lösen.',
    passed: 'Löst sich sauber',
    failed: 'Klebt',
  },
  mount: {
    noun: 'Anbringen',
    infinitive: 'zum Anbringen',
    question: 'Dürfen sie angebracht werden?',
    test: 'Die Handfläche fest aufdrücken und bis fünf zählen. Sie muss sich sauber lösen.',
    passed: 'Löst sich sauber',
    failed: 'Klebt',
  },
  sand: {
    noun: 'Schleifen',
    infinitive: 'zum Schleifen',
    question: 'Dürfen sie geschliffen werden?',
    test: 'Eine Stelle schleifen, die man später nicht sieht. Das Papier muss stauben; es darf die Farbe nicht rollen und sich nicht zusetzen.',
    passed: 'Es staubt',
    failed: 'Rollt oder setzt sich zu',
  },
  recoat: {
    noun: 'Überstreichen',
    infinitive: 'zum Überstreichen',
    question: 'Darf der nächste Anstrich drauf?',
    test: 'Mit dem Daumennagel drücken: Es darf keine Spur bleiben. Mit einem sauberen Tuch reiben: Es darf keine Farbe annehmen.',
    passed: 'Keine Spur, keine Farbe',
    failed: 'Spur oder Farbe am Tuch',
  },
};
