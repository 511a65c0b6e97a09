import type { Quantity } from '../../contract/quantity.ts';
import type { FaultKind } from '../../contract/sensor-fault.ts';
import type { Inner, Nothing } from '../phrase.ts';

/** A fault that stands: whose, for how long, and what was seen (as text where that is all that was kept). */
export interface StandingFault {
  sensor: string;
  /** As finely as it is told: minutes, then full hours, then full days. */
  forMinutes: number;
  seen: Inner | string;
}

type FaultNames = { [Kind in FaultKind as `fault-name/${Kind}`]: Nothing };
type FaultExplanations = { [Kind in FaultKind as `fault-explanation/${Kind}`]: Nothing };
type StandingFaults = { [Kind in FaultKind as `sensor-${Kind}`]: StandingFault };

/** What was seen of a fault. */
export interface SeenSentences {
  'seen-silent': { everyMs: number };
  'seen-stuck': { value: number; quantity: Quantity };
  'seen-jumps': { times: number; minutes: number };
  'seen-impossible': { value: number; quantity: Quantity };
  'seen-drift/above': { difference: number; quantity: Quantity };
  'seen-drift/below': { difference: number; quantity: Quantity };
  'seen-pinned': { rhPercent: number };
  'seen-pinned/others-drier': { rhPercent: number; othersPercent: number };
  'seen-swapped': { sensor: string; other: string };
  'seen-battery': { percent: number };
  'seen-battery/empty-soon': { percent: number; days: number };
  'seen-time/behind': { offMs: number };
  'seen-time/ahead': { offMs: number };
}

/** What is wrong with a sensor: its name, what it means and what to do, and what was seen. */
export interface FaultSentences
  extends FaultNames,
    FaultExplanations,
    StandingFaults,
    SeenSentences {
  'damp-unknown': { fault: Inner };
}
