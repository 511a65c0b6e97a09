import type { Quantity } from '../../daemon/contract/quantity.ts';
import { type CalibrationLine, calibrationScale } from './calibration.ts';

/** A value as it may be calculated with, and whether it had to be pushed back into its range. */
export type CorrectedValue = { readonly value: number; readonly clamped: boolean };

/**
 * The value to calculate with: by the calibration in force, then humidity and battery held within
 * 0–100 % and moisture not below 0; without a calibration the rest is as sent.
 * A cheap sensor in wet air reads a little over 100 %, in dry air a little below 0.
 * Growing values give growing ones, so that lowest and highest of a stretch stay so.
 * @param rawValue in the unit of the quantity, finite
 * @param line the calibration in force when it was measured; null for none
 */
export function correctedValue(
  quantity: Quantity,
  rawValue: number,
  line: CalibrationLine | null = null,
): CorrectedValue {
  const straight = line === null ? rawValue : onLine(quantity, rawValue, line);
  const isShare = quantity === 'relative-humidity' || quantity === 'battery';
  if (!isShare && quantity !== 'wood-moisture') return { value: straight, clamped: false };
  const value = Math.min(isShare ? 100 : Number.POSITIVE_INFINITY, Math.max(0, straight));
  return { value, clamped: value !== straight };
}

function onLine(quantity: Quantity, value: number, { gain, add }: CalibrationLine): number {
  const { to, from } = calibrationScale(quantity);
  return from(gain * to(value) + add);
}
