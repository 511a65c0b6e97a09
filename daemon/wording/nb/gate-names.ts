import type { Gate } from '../../contract/gate.ts';

/** The job as it stands within a sentence, after “å”. */
export const gateVerbs: Readonly<Record<Gate, string>> = {
  turn: 'vende',
  stack: 'stable',
  mount: 'montere',
  sand: 'slipe',
  recoat: 'male igjen',
};

/** How the trade tests for a job. */
export const gateTests: Readonly<Record<Gate, string>> = {
  turn: 'Kjenn på den med baksiden av en finger: ingenting smitter av, og det blir ikke merke.',
  stack: 'Press håndflaten mot malingen i fem sekunder: den slipper rent.',
  mount: 'Press håndflaten hardt mot malingen i fem sekunder: den slipper rent.',
  sand: 'Prøv papiret på en kant: det støver og verken ruller opp malingen eller går tett.',
  recoat: 'Press inn en tommelnegl: det blir ikke merke, og en klut tar ingen farge.',
};
