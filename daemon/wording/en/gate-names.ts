import type { Gate } from '../../contract/gate.ts';

/** The job as it stands within a sentence. */
export const gateVerbs: Readonly<Record<Gate, string>> = {
  turn: 'turning',
  stack: 'stacking',
  mount: 'mounting',
  sand: 'sanding',
  recoat: 'recoating',
};

/** How the trade tests for a job. */
export const gateTests: Readonly<Record<Gate, string>> = {
  turn: 'Touch it with the back of a finger: nothing comes off and no print stays.',
  stack: 'Press a palm on it for five seconds: it lifts clean.',
  mount: 'Press a palm firmly on it for five seconds: it lifts clean.',
  sand: 'Try the paper on an edge: it dusts and does not roll or clog.',
  recoat: 'Press a thumbnail in: no mark stays, and a cloth takes no colour.',
};
