import type { Gate, Reason } from '../contract/gate.ts';
import type { PlannedCoat } from '../contract/plan.ts';
import { gateNeeds } from './gate-need.ts';

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
  const { verb } = gateNeeds[gate];
  const { leastHours, leastDegreeHours } = limit;
  if (leastHours !== undefined && hoursSince < leastHours) {
    holds.push({
      code: 'plan-hours',
      text: `The plan waits at least ${leastHours} h before ${verb}; ${Math.floor(hoursSince)} h have gone by.`,
    });
  }
  if (leastDegreeHours !== undefined && degreeHours < leastDegreeHours) {
    holds.push({
      code: 'plan-degree-hours',
      text: `The plan asks for at least ${leastDegreeHours} °C·h before ${verb}; it has ${Math.round(degreeHours)}.`,
    });
  }
  return holds;
}
