import { toMoment } from '../../contract/moment.ts';
import type { FaultEffect, FaultKind, SensorFault } from '../../contract/sensor-fault.ts';
import type { FaultFact } from '../facts.ts';

interface FaultWords {
  name: string;
  explanation: string;
  effect: FaultEffect;
}

/** Each fault: its name, what it means and what to do, and what it does to verdicts. */
export const faultWords: Readonly<Record<FaultKind, FaultWords>> = {
  silent: {
    name: 'Silent',
    explanation:
      'It sends no more at its own rhythm: look at its battery, its radio and its place. What it measured before still counts; from then on there is nothing to count.',
    effect: 'none',
  },
  stuck: {
    name: 'Stuck',
    explanation:
      'It repeats one figure for far longer than it ever did, though there is reason to think that the air moved on: switch it off and on, or replace it.',
    effect: 'not-counted',
  },
  jumps: {
    name: 'Jumps',
    explanation:
      'Its figures jump as no air does: look for a loose plug, a wet contact or a broken wire.',
    effect: 'not-counted',
  },
  'out-of-physics': {
    name: 'Not possible',
    explanation:
      'It sends what no air here can be, such as the figure some sensors give when they fail: look at its wires, then replace it.',
    effect: 'not-counted',
  },
  drift: {
    name: 'Drifts away',
    explanation:
      'It has left the others about it, further than it ever was from them: compare them in a closed box over night, then calibrate or replace it.',
    effect: 'not-counted',
  },
  'pinned-humidity': {
    name: 'Humidity pinned',
    explanation:
      'Its humidity stands at the top of its range: it is wet or broken. Dry it in warm air; its temperature still counts.',
    effect: 'humidity-not-counted',
  },
  'swapped-places': {
    name: 'Places swapped?',
    explanation:
      'Since a moment it reads as another sensor did, and that one as this: were they hung back the wrong way round? Only a suspicion; if so, say where they hang now.',
    effect: 'none',
  },
  'low-battery': {
    name: 'Battery low',
    explanation: 'Change its battery before it falls silent. Its readings still count.',
    effect: 'none',
  },
  'time-wrong': {
    name: 'Time wrong',
    explanation:
      'The times it gives are off by the same amount all the while: set its clock, or let it send none. Cure gathered at wrong times is not counted.',
    effect: 'not-counted',
  },
};

/** A fault as the outside sees it. */
export function faultReply(fault: FaultFact): SensorFault {
  return {
    kind: fault.kind,
    quantity: fault.quantity,
    since: toMoment(fault.fromAt),
    until: toMoment(fault.untilAt),
    says: fault.says,
    ...faultWords[fault.kind],
  };
}
