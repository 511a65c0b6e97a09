import { type CalibrationLine, calibrationLine } from '../sensors/correct/calibration.ts';
import { correctedValue } from '../sensors/correct/corrected-value.ts';
import { aheadAllowedMs, flagsOf } from '../sensors/correct/reading-time.ts';
import type { Quantity } from './contract/quantity.ts';
import type { Corrected } from './monitor/ports.ts';
import type { CalibrationFact } from './rules/sensor-facts.ts';

interface Step {
  fromAt: number;
  line: CalibrationLine;
}

/**
 * The values to reckon with, of those that were sent: a reading is corrected by the calibration that
 * was in force when it was measured. Of two that begin at one moment the later recorded holds.
 *
 * @param calibrations - those that stand, in the order they were recorded
 */
export function correction(calibrations: readonly CalibrationFact[]): Corrected {
  const steps = new Map<number, Map<Quantity, Step[]>>();
  for (const { sensorKey, quantity, fromAt, how } of calibrations) {
    const ofSensor = steps.get(sensorKey) ?? new Map<Quantity, Step[]>();
    steps.set(sensorKey, ofSensor);
    const step = {
      fromAt: fromAt ?? Number.NEGATIVE_INFINITY,
      line: calibrationLine(quantity, how),
    };
    // The sort is stable: what was recorded later stays behind.
    const all = [...(ofSensor.get(quantity) ?? []), step].sort((a, b) => a.fromAt - b.fromAt);
    ofSensor.set(quantity, all);
  }
  return ({ sensorKey, quantity, at, raw }) => {
    const line = steps
      .get(sensorKey)
      ?.get(quantity)
      ?.findLast((one) => one.fromAt <= at)?.line;
    return correctedValue(quantity, raw, line ?? null).value;
  };
}

/** What is to be known about a reading's time, in words. */
export const flagWords = (flags: number): string => flagsOf(flags).join(' ');

/** Whether a time lies further ahead of the clock than a sensor's may run. */
export const isAhead = (at: number, now: number): boolean => at > now + aheadAllowedMs;
