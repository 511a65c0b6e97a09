import type { jobs as English } from '../en/jobs.ts';

export const jobs: typeof English = {
  turn: {
    noun: 'kääntö',
    infinitive: 'kääntämiseen',
    question: 'Voiko laudat kääntää?',
    test: 'Paina sormen selkämys maaliin. Sormeen ei saa tarttua mitään, eikä pintaan saa jäädä jälkeä.',
    passed: 'Ei mitään sormessa',
    failed: 'Jää jälki',
  },
  stack: {
    noun: 'pinoaminen',
    infinitive: 'pinoamiseen',
    question: 'Voiko ne pinota tiiviisti?',
    test: 'Paina kämmen lujasti pintaan ja laske viiteen. Sen pitää irrota puhtaasti.',
    passed: 'Irtoaa puhtaasti',
    failed: 'Tarttuu',
  },
  mount: {
    noun: 'asennus',
    infinitive: 'asentamiseen',
    question: 'Voiko ne asentaa seinään?',
    test: 'Paina kämmen lujasti pintaan ja laske viiteen. Sen pitää irrota puhtaasti.',
    passed: 'Irtoaa puhtaasti',
    failed: 'Tarttuu',
  },
  sand: {
    noun: 'hionta',
    infinitive: 'hiomiseen',
    question: 'Voiko ne hioa?',
    test: 'Hio kohtaa, joka ei jää näkyviin. Pinnan pitää pölytä; paperi ei saa rullata maalia eikä tukkeutua.',
    passed: 'Pölyää',
    failed: 'Rullaa tai tukkii',
  },
  recoat: {
    noun: 'uusi kerros',
    infinitive: 'uuteen kerrokseen',
    question: 'Voiko seuraavan kerroksen maalata?',
    test: 'Paina peukalonkynnellä: jälkeä ei saa jäädä. Hiero puhtaalla rätillä: siihen ei saa tarttua väriä.',
    passed: 'Ei jälkeä, ei väriä',
    failed: 'Jälki tai väri',
  },
};
