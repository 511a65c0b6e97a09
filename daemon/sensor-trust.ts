import {
  calibrationFault,
  calibrationLine,
  calibrationScale,
} from '../sensors/correct/calibration.ts';
import { boxLimits, compareInBox } from '../sensors/correct/comparison.ts';
import type { CalibrationHow } from './contract/calibration.ts';
import type { Quantity } from './contract/quantity.ts';
import type { Trust } from './http/ports.ts';

/** What the pages need to know of calibrations, put together of the pure parts. */
export const sensorTrust: Trust = {
  calibrationFault,
  calibrationLine,
  boxQuantities: Object.keys(boxLimits) as (keyof typeof boxLimits)[],
  compareInBox: (quantity, box) => compareInBox(quantity as keyof typeof boxLimits, box),
  shifted,
};

/** The calibration that gives what another one gives, and so much more. */
function shifted(quantity: Quantity, how: CalibrationHow | null, change: number): CalibrationHow {
  const line = how === null ? { gain: 1, add: 0 } : calibrationLine(quantity, how);
  const add = line.add + change;
  if (line.gain === 1) return { kind: 'offset', add: rounded(add) };
  const { from } = calibrationScale(quantity);
  const points = [20, 80].map((shown) => ({
    shown: from(shown),
    actual: rounded(from(line.gain * shown + add)),
  }));
  return { kind: 'two-point', points };
}

const rounded = (value: number) => Number(value.toFixed(4));
