import type { Gate } from '../../../daemon/contract/gate.ts';
import { gateVerbs } from '../../../daemon/wording/nb/gate-names.ts';
import type { jobs as English } from '../en/jobs.ts';

const named = (gate: Gate) => ({ noun: gateVerbs[gate], infinitive: `å ${gateVerbs[gate]}` });

/** Stacking and mounting ask the same of a coat. */
const palm = {
  test: 'Trykk håndflaten hardt ned og tell til fem. Den skal slippe rent.',
  passed: 'Den slipper rent',
  failed: 'Den klistrer',
};

export const jobs: typeof English = {
  turn: {
    ...named('turn'),
    question: 'Kan bordene vendes?',
    test: 'Legg baksiden av en finger mot malingen. Ingenting skal feste seg på den, og den skal ikke sette merke.',
    passed: 'Ingenting på fingeren',
    failed: 'Det blir merke',
  },
  stack: {
    ...named('stack'),
    question: 'Kan de stables tett?',
    ...palm,
  },
  mount: {
    ...named('mount'),
    question: 'Kan de settes opp?',
    ...palm,
  },
  sand: {
    ...named('sand'),
    question: 'Kan de slipes?',
    test: 'Slip på et sted som ikke synes. Det skal støve; papiret skal ikke rulle opp malingen eller gå tett.',
    passed: 'Det støver',
    failed: 'Ruller eller går tett',
  },
  recoat: {
    ...named('recoat'),
    question: 'Kan neste strøk legges på?',
    test: 'Trykk med tommelneglen: det skal ikke bli merke. Gni med en ren klut: den skal ikke ta farge.',
    passed: 'Ingen merker, ingen farge',
    failed: 'Merke eller farge',
  },
};
