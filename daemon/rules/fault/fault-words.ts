import { faultEffects } from '../../contract/fault-effect.ts';
import { toMoment } from '../../contract/moment.ts';
import type { SensorFault } from '../../contract/sensor-fault.ts';
import { sentence } from '../../wording/english.ts';
import type { FaultFact } from '../sensor-facts.ts';
import { seenOf } from './fault-reason.ts';

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
    effect: faultEffects[kind],
  };
}
