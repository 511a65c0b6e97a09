import type { Gate, Stage } from '../contract/gate.ts';

/**
 * What a job needs, as a multiple of what recoating needs, and how the trade tests for it.
 *
 * The multiples are assumptions, in the order that turning ≤ stacking ≤ mounting ≤ sanding and
 * recoating: touch-dry is not through-dry, a skin can seal a soft film.
 * The tests are common practice, no source.
 */
export const gateNeeds: Readonly<
  Record<Gate, { multiple: number; verb: string; test: string; easier: readonly Gate[] }>
> = {
  turn: {
    multiple: 0.45,
    verb: 'turning',
    test: 'Touch it with the back of a finger: nothing comes off and no print stays.',
    easier: [],
  },
  stack: {
    multiple: 0.8,
    verb: 'stacking',
    test: 'Press a palm on it for five seconds: it lifts clean.',
    easier: ['turn'],
  },
  mount: {
    multiple: 0.9,
    verb: 'mounting',
    test: 'Press a palm firmly on it for five seconds: it lifts clean.',
    easier: ['turn', 'stack'],
  },
  sand: {
    multiple: 1.1,
    verb: 'sanding',
    test: 'Try the paper on an edge: it dusts and does not roll or clog.',
    easier: ['turn', 'stack', 'mount'],
  },
  recoat: {
    multiple: 1,
    verb: 'recoating',
    test: 'Press a thumbnail in: no mark stays, and a cloth takes no colour.',
    easier: ['turn', 'stack', 'mount'],
  },
};

/**
 * At what multiple of the recoat need each stage is reached. Assumptions; dry-hard is the stage of
 * recoating. The order is that of ASTM D1640.
 */
export const stageNeeds: readonly { stage: Stage; multiple: number }[] = [
  { stage: 'wet', multiple: 0 },
  { stage: 'set-to-touch', multiple: 0.25 },
  { stage: 'tack-free', multiple: 0.45 },
  { stage: 'dry-hard', multiple: 1 },
  { stage: 'dry-through', multiple: 1.5 },
];

/**
 * The starting belief of what recoating needs: a coat dries in 2 to 3 days under normal
 * conditions, read as the 10 % and 90 % points at 20 °C over a datum of 5 °C.
 * **Source:** common practice, no source.
 */
export const startingPriorHoursAt20C = { p10: 48, p90: 72 } as const;
