import type { Gate } from '../../../daemon/contract/gate.ts';
import { gateNames, gateTo } from '../../../daemon/wording/fi/gate-names.ts';
import type { jobs as English } from '../en/jobs.ts';

const named = (gate: Gate) => ({ noun: gateNames[gate], infinitive: gateTo[gate] });

/** Stacking and mounting ask the same of a coat. */
const palm = {
  test: 'Paina kämmen lujasti pintaan ja laske viiteen. Sen pitää irrota puhtaasti.',
  passed: 'Irtoaa puhtaasti',
  failed: 'Tarttuu',
};

export const jobs: typeof English = {
  turn: {
    ...named('turn'),
    question: 'Voiko laudat kääntää?',
    test: 'Paina sormen selkämys maaliin. Sormeen ei saa tarttua mitään, eikä pintaan saa jäädä jälkeä.',
    passed: 'Ei mitään sormessa',
    failed: 'Jää jälki',
  },
  stack: {
    ...named('stack'),
    question: 'Voiko ne pinota tiiviisti?',
    ...palm,
  },
  mount: {
    ...named('mount'),
    question: 'Voiko ne asentaa seinään?',
    ...palm,
  },
  sand: {
    ...named('sand'),
    question: 'Voiko ne hioa?',
    test: 'Hio kohtaa, joka ei jää näkyviin. Pinnan pitää pölytä; paperi ei saa rullata maalia eikä tukkeutua.',
    passed: 'Pölyää',
    failed: 'Rullaa tai tukkii',
  },
  recoat: {
    ...named('recoat'),
    question: 'Voiko seuraavan kerroksen maalata?',
    test: 'Paina peukalonkynnellä: jälkeä ei saa jäädä. Hiero puhtaalla rätillä: siihen ei saa tarttua väriä.',
    passed: 'Ei jälkeä, ei väriä',
    failed: 'Jälki tai väri',
  },
};
