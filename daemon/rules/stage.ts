import type { Stage } from '../contract/gate.ts';
import { probabilityReached, type Requirement } from '../science/touch.ts';
import { stageNeeds } from './gate-need.ts';

/**
 * The furthest stage that a coat has reached with enough certainty.
 *
 * @param degreeHours - its sum, °C·h
 * @param film - factor of its film on what it needs
 * @param certainty - probability from which a stage counts as reached
 * @param boardSpread - standard deviation of the logarithm of what its boards need
 */
export function stageOf(
  requirement: Requirement,
  degreeHours: number,
  film: number,
  certainty: number,
  boardSpread: number,
): Stage {
  let reached: Stage = 'wet';
  for (const { stage, multiple } of stageNeeds) {
    if (multiple === 0) continue;
    const probability = probabilityReached(requirement, degreeHours / (multiple * film), {
      boardSpread,
    });
    if (probability < certainty) break;
    reached = stage;
  }
  return reached;
}
