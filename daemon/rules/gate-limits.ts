import type { Gate, Reason } from '../contract/gate.ts';
import type { PlannedCoat } from '../contract/plan.ts';
import { sentence } from '../wording/english.ts';

/**
 * What a plan makes a job wait for whatever else is known, as a maker’s sheet may ask.
 *
 * @param hoursSince - since the last board was done
 * @param degreeHours - the coat’s sum, °C·h
 */
export function planHolds(
  planned: Pick<PlannedCoat, 'gateLimits'> | undefined,
  gate: Gate,
  hoursSince: number,
  degreeHours: number,
): Reason[] {
  const limit = planned?.gateLimits?.[gate];
  if (!limit) return [];
  const holds: Reason[] = [];
  const { leastHours, leastDegreeHours } = limit;
  if (leastHours !== undefined && hoursSince < leastHours) {
    holds.push(sentence('plan-hours', { gate, leastHours, hours: Math.floor(hoursSince) }));
  }
  if (leastDegreeHours !== undefined && degreeHours < leastDegreeHours) {
    holds.push(sentence('plan-degree-hours', { gate, leastDegreeHours, degreeHours }));
  }
  return holds;
}
