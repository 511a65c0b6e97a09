import type { Quantity } from '../../daemon/contract/quantity.ts';

/** A value as it may be calculated with, and whether it had to be pushed back into its range. */
export type CorrectedValue = { readonly value: number; readonly clamped: boolean };

/**
 * The value to calculate with: humidity and battery are held within 0–100 %, the rest is as sent.
 * A cheap sensor in wet air reads a little over 100 %, in dry air a little below 0.
 * @param rawValue in the unit of the quantity, finite
 */
export function correctedValue(quantity: Quantity, rawValue: number): CorrectedValue {
  if (quantity !== 'relative-humidity' && quantity !== 'battery') {
    return { value: rawValue, clamped: false };
  }
  const value = Math.min(100, Math.max(0, rawValue));
  return { value, clamped: value !== rawValue };
}
