import type { jobs as English } from '../en/jobs.ts';

export const jobs: typeof English = {
  turn: {
    noun: 'vända',
    infinitive: 'att vända',
    question: 'Får brädorna vändas?',
    test: 'Lägg fingrets baksida mot färgen. Ingenting får fastna på det, och det får inte lämna något märke.',
    passed: 'Inget på fingret',
    failed: 'Det blir märke',
  },
  stack: {
    noun: 'stapla',
    infinitive: 'att stapla',
    question: 'Får de staplas tätt?',
    test: 'Tryck handflatan hårt mot färgen och räkna till fem. Den måste släppa rent.',
    passed: 'Släpper rent',
    failed: 'Det klibbar',
  },
  mount: {
    noun: 'montera',
    infinitive: 'att montera',
    question: 'Får de sättas upp?',
    test: 'Tryck handflatan hårt mot färgen och räkna till fem. Den måste släppa rent.',
    passed: 'Släpper rent',
    failed: 'Det klibbar',
  },
  sand: {
    noun: 'slipa',
    infinitive: 'att slipa',
    question: 'Får de slipas?',
    test: 'Slipa på ett ställe som inte syns. Det måste damma; papperet får inte rulla färgen eller sätta igen.',
    passed: 'Det dammar',
    failed: 'Rullar eller sätter igen',
  },
  recoat: {
    noun: 'stryka igen',
    infinitive: 'att stryka igen',
    question: 'Kan nästa strykning läggas på?',
    test: 'Tryck med tumnageln: det får inte bli något märke. Gnid med en ren trasa: den får inte ta färg.',
    passed: 'Inget märke, ingen färg',
    failed: 'Märke eller färg',
  },
};
