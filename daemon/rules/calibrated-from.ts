import type { Quantity } from '../contract/quantity.ts';
import type { CalibrationFact } from './sensor-facts.ts';

/**
 * When each calibration of a sensor’s quantity begins, epoch ms: what is raw on one side of such a
 * moment may not be compared with what is raw on the other.
 *
 * @param calibrations - those that stand
 */
export function calibratedFrom(
  calibrations: readonly CalibrationFact[],
  sensorKey: number,
  quantity: Quantity,
): number[] {
  const moments: number[] = [];
  for (const one of calibrations) {
    if (one.sensorKey !== sensorKey || one.quantity !== quantity) continue;
    if (one.fromAt !== null) moments.push(one.fromAt);
  }
  return moments;
}
