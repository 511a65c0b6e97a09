import { toMoment } from '../../contract/moment.ts';
import type { FaultEffect, FaultKind, SensorFault } from '../../contract/sensor-fault.ts';
import { sentence } from '../../wording/english.ts';
import type { FaultFact } from '../facts.ts';
import { seenOf } from './fault-reason.ts';

/** What each fault does to verdicts. */
const effects: Readonly<Record<FaultKind, FaultEffect>> = {
  silent: 'none',
  stuck: 'not-counted',
  jumps: 'not-counted',
  'out-of-physics': 'not-counted',
  drift: 'not-counted',
  'pinned-humidity': 'humidity-not-counted',
  'swapped-places': 'none',
  'low-battery': 'none',
  'time-wrong': 'not-counted',
};

export const faultEffect = (kind: FaultKind): FaultEffect => effects[kind];

/** A fault as the outside sees it: what it is called, what it means and what to do. */
export function faultReply(fault: FaultFact): SensorFault {
  const { kind } = fault;
  const nameSaid = sentence(`fault-name/${kind}`, {});
  const explanationSaid = sentence(`fault-explanation/${kind}`, {});
  return {
    kind,
    ...{ name: nameSaid.text, nameSaid },
    quantity: fault.quantity,
    since: toMoment(fault.fromAt),
    until: toMoment(fault.untilAt),
    ...{ says: fault.says, saysSaid: seenOf(fault) },
    ...{ explanation: explanationSaid.text, explanationSaid },
    effect: faultEffect(kind),
  };
}
