import type { Gate } from '../../../daemon/contract/gate.ts';
import { gateNouns } from '../../../daemon/wording/de/gate-names.ts';
import type { jobs as English } from '../en/jobs.ts';

const named = (gate: Gate) => ({ noun: gateNouns[gate], infinitive: `zum ${gateNouns[gate]}` });

/** Stacking and mounting ask the same of a coat. */
const palm = {
  test: 'Die Handfläche fest aufdrücken und bis fünf zählen. Sie muss sich sauber lösen.',
  passed: 'Löst sich sauber',
  failed: 'Klebt',
};

export const jobs: typeof English = {
  turn: {
    ...named('turn'),
    question: 'Dürfen die Bretter gewendet werden?',
    test: 'Einen Fingerrücken auf die Farbe legen. Nichts darf daran hängen bleiben, und kein Abdruck darf zurückbleiben.',
    passed: 'Nichts am Finger',
    failed: 'Gibt einen Abdruck',
  },
  stack: {
    ...named('stack'),
    question: 'Dürfen sie dicht gestapelt werden?',
    ...palm,
  },
  mount: {
    ...named('mount'),
    question: 'Dürfen sie angebracht werden?',
    ...palm,
  },
  sand: {
    ...named('sand'),
    question: 'Dürfen sie geschliffen werden?',
    test: 'Eine Stelle schleifen, die man später nicht sieht. Das Papier muss stauben; es darf die Farbe nicht rollen und sich nicht zusetzen.',
    passed: 'Es staubt',
    failed: 'Rollt oder setzt sich zu',
  },
  recoat: {
    ...named('recoat'),
    question: 'Darf der nächste Anstrich drauf?',
    test: 'Mit dem Daumennagel drücken: Es darf keine Spur bleiben. Mit einem sauberen Tuch reiben: Es darf keine Farbe annehmen.',
    passed: 'Keine Spur, keine Farbe',
    failed: 'Spur oder Farbe am Tuch',
  },
};
