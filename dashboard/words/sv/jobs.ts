import type { Gate } from '../../../daemon/contract/gate.ts';
import { gateVerbs } from '../../../daemon/wording/sv/gate-names.ts';
import type { jobs as English } from '../en/jobs.ts';

const named = (gate: Gate) => ({ noun: gateVerbs[gate], infinitive: `att ${gateVerbs[gate]}` });

/** Stacking and mounting ask the same of a coat. */
const palm = {
  test: 'Tryck handflatan hårt mot färgen och räkna till fem. Den måste släppa rent.',
  passed: 'Släpper rent',
  failed: 'Det klibbar',
};

export const jobs: typeof English = {
  turn: {
    ...named('turn'),
    question: 'Får brädorna vändas?',
    test: 'Lägg fingrets baksida mot färgen. Ingenting får fastna på det, och det får inte lämna något märke.',
    passed: 'Inget på fingret',
    failed: 'Det blir märke',
  },
  stack: {
    ...named('stack'),
    question: 'Får de staplas tätt?',
    ...palm,
  },
  mount: {
    ...named('mount'),
    question: 'Får de sättas upp?',
    ...palm,
  },
  sand: {
    ...named('sand'),
    question: 'Får de slipas?',
    test: 'Slipa på ett ställe som inte syns. Det måste damma; papperet får inte rulla färgen eller sätta igen.',
    passed: 'Det dammar',
    failed: 'Rullar eller sätter igen',
  },
  recoat: {
    ...named('recoat'),
    question: 'Kan nästa strykning läggas på?',
    test: 'Tryck med tumnageln: det får inte bli något märke. Gnid med en ren trasa: den får inte ta färg.',
    passed: 'Inget märke, ingen färg',
    failed: 'Märke eller färg',
  },
};
