import type { Quantity } from '../contract/quantity.ts';
import type { CalibrationFact } from './sensor-facts.ts';

/**
 * The calibration that corrects what a sensor measures at a moment: the one that began last; of two
 * that began together the later recorded.
 *
 * @param calibrations - those that stand, in the order they were recorded
 */
export function calibrationInForce(
  calibrations: readonly CalibrationFact[],
  sensorKey: number,
  quantity: Quantity,
  at: number,
): CalibrationFact | null {
  let found: CalibrationFact | null = null;
  for (const one of calibrations) {
    if (one.sensorKey !== sensorKey || one.quantity !== quantity) continue;
    const begins = one.fromAt ?? Number.NEGATIVE_INFINITY;
    if (begins > at) continue;
    if (found === null || begins >= (found.fromAt ?? Number.NEGATIVE_INFINITY)) found = one;
  }
  return found;
}
