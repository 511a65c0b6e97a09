import type { jobs as English } from '../en/jobs.ts';

export const jobs: typeof English = {
  turn: {
    noun: 'vende',
    infinitive: 'å vende',
    question: 'Kan bordene vendes?',
    test: 'Legg baksiden av en finger mot malingen. Ingenting skal feste seg på den, og den skal ikke sette merke.',
    passed: 'Ingenting på fingeren',
    failed: 'Det blir merke',
  },
  stack: {
    noun: 'stable',
    infinitive: 'å stable',
    question: 'Kan de stables tett?',
    test: 'Trykk håndflaten hardt ned og tell til fem. Den skal slippe rent.',
    passed: 'Den slipper rent',
    failed: 'Den klistrer',
  },
  mount: {
    noun: 'montere',
    infinitive: 'å montere',
    question: 'Kan de settes opp?',
    test: 'Trykk håndflaten hardt ned og tell til fem. Den skal slippe rent.',
    passed: 'Den slipper rent',
    failed: 'Den klistrer',
  },
  sand: {
    noun: 'slipe',
    infinitive: 'å slipe',
    question: 'Kan de slipes?',
    test: 'Slip på et sted som ikke synes. Det skal støve; papiret skal ikke rulle opp malingen eller gå tett.',
    passed: 'Det støver',
    failed: 'Ruller eller går tett',
  },
  recoat: {
    noun: 'male igjen',
    infinitive: 'å male igjen',
    question: 'Kan neste strøk legges på?',
    test: 'Trykk med tommelneglen: det skal ikke bli merke. Gni med en ren klut: den skal ikke ta farge.',
    passed: 'Ingen merker, ingen farge',
    failed: 'Merke eller farge',
  },
};
