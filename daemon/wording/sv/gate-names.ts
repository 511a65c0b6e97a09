import type { Gate } from '../../contract/gate.ts';

/** The job as it stands within a sentence, after “att”. */
export const gateVerbs: Readonly<Record<Gate, string>> = {
  turn: 'vända',
  stack: 'stapla',
  mount: 'montera',
  sand: 'slipa',
  recoat: 'stryka igen',
};

/** How the trade tests for a job. */
export const gateTests: Readonly<Record<Gate, string>> = {
  turn: 'Rör med fingrets baksida: inget fastnar och inget märke blir kvar.',
  stack: 'Tryck handflatan mot färgen i fem sekunder: den släpper rent.',
  mount: 'Tryck handflatan hårt mot färgen i fem sekunder: den släpper rent.',
  sand: 'Pröva papperet på en kant: det dammar och varken rullar eller sätter igen.',
  recoat: 'Tryck in en tumnagel: inget märke blir kvar, och en trasa tar ingen färg.',
};
