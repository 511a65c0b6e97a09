import type { Gate, Stage } from '../contract/gate.ts';

/**
 * What a job needs, as a multiple of what recoating needs, and how the trade tests for it.
 *
 * The multiples are assumptions, in the order that turning ≤ stacking ≤ mounting ≤ sanding and
 * recoating: touch-dry is not through-dry, a skin can seal a soft film.
 * The tests are common practice, no source.
 */
export const gateNeeds: Readonly<Record<Gate, { multiple: number; easier: readonly Gate[] }>> = {
  turn: {
    multiple: 0.45,
    easier: [],
  },
  stack: {
    multiple: 0.8,
    easier: ['turn'],
  },
  mount: {
    multiple: 0.9,
    easier: ['turn', 'stack'],
  },
  sand: {
    multiple: 1.1,
    easier: ['turn', 'stack', 'mount'],
  },
  recoat: {
    multiple: 1,
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
