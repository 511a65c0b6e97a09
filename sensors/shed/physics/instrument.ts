import type { Random } from './random.ts';

/** How a cheap sensor departs from the truth. */
export interface Instrument {
  /** constant error, in the unit of the quantity */
  readonly bias: number;
  /** standard deviation of the noise of one reading */
  readonly noise: number;
  /** smallest step of what it sends */
  readonly step: number;
  /** share of its readings that never arrive */
  readonly lost?: number;
  readonly lowest?: number;
  readonly highest?: number;
}

/**
 * What a sensor sends when the truth is `truth`.
 *
 * @param instrument - its errors
 * @param truth - in the unit of the quantity
 * @param random - draws one normal number
 * @returns a multiple of the step, within the sensor's range
 */
export function measure(instrument: Instrument, truth: number, random: Random): number {
  const { bias, noise, step, lowest = -Infinity, highest = Infinity } = instrument;
  const shown = Math.min(highest, Math.max(lowest, truth + bias + noise * random.normal()));
  // the second rounding only removes binary dust such as 0.30000000000000004
  return Number((Math.round(shown / step) * step).toFixed(6));
}
