import { faultEffects } from '../contract/fault-effect.ts';
import type { Quantity } from '../contract/quantity.ts';
import { sortedStays, stayAt } from './place.ts';
import type { FaultFact, SensorStay } from './sensor-facts.ts';

/** A stretch in which readings do not count; `untilAt` exclusive, null while it lasts. */
interface Span {
  fromAt: number;
  untilAt: number | null;
}

/** Whether a fault keeps readings of a quantity from counting. */
export function silences(fault: FaultFact, quantity: Quantity): boolean {
  return (
    faultEffects[fault.kind] !== 'none' && (fault.quantity === null || fault.quantity === quantity)
  );
}

/**
 * Where sensors speak for one quantity: their stays without the stretches in which a fault keeps
 * their readings from counting. A sensor that does not count is as one that was taken down.
 *
 * @param stays - by sensor, in any order
 */
export function countedStays(
  stays: ReadonlyMap<number, readonly SensorStay[]>,
  faults: readonly FaultFact[],
  quantity: Quantity,
): Map<number, readonly SensorStay[]> {
  const counted = new Map(stays);
  const spans = new Map<number, Span[]>();
  for (const fault of faults) {
    if (!silences(fault, quantity)) continue;
    spans.set(fault.sensorKey, [...(spans.get(fault.sensorKey) ?? []), fault]);
  }
  for (const [sensorKey, ofSensor] of spans) {
    const own = stays.get(sensorKey);
    if (own) counted.set(sensorKey, without(sortedStays(own), joined(ofSensor), sensorKey));
  }
  return counted;
}

function without(stays: SensorStay[], spans: Span[], sensorKey: number): SensorStay[] {
  let left = stays;
  for (const { fromAt, untilAt } of spans) {
    const after = untilAt === null ? null : stayAt(stays, untilAt);
    left = left.filter(
      (stay) =>
        stay.fromAt === null || stay.fromAt < fromAt || (untilAt !== null && stay.fromAt > untilAt),
    );
    left.push({ sensorKey, placeId: null, fromAt });
    if (untilAt !== null) {
      left.push({ sensorKey, placeId: after?.placeId ?? null, fromAt: untilAt });
    }
  }
  return sortedStays(left);
}

/** Spans in the order of time, those that touch made one. */
function joined(spans: readonly Span[]): Span[] {
  const all: Span[] = [];
  for (const span of [...spans].sort((a, b) => a.fromAt - b.fromAt)) {
    if (span.untilAt !== null && span.untilAt <= span.fromAt) continue;
    const last = all.at(-1);
    if (!last || (last.untilAt !== null && last.untilAt < span.fromAt)) {
      all.push({ fromAt: span.fromAt, untilAt: span.untilAt });
    } else if (last.untilAt !== null) {
      last.untilAt = span.untilAt === null ? null : Math.max(last.untilAt, span.untilAt);
    }
  }
  return all;
}
