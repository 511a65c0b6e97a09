import { type Quantity, quantityFacts } from '../../daemon/contract/quantity.ts';
import { type Refusal, type Refused, refuse } from './refusal.ts';

/** One measured value, in the unit of its quantity. */
export type Measurement = {
  readonly sensor: string;
  readonly quantity: Quantity;
  readonly value: number;
  /** The time the message itself gives, epoch ms, integer, not yet judged; null when it gives none. */
  readonly ownAt: number | null;
  /** Set when `ownAt` was counted back from the arrival, so that it dates nothing that was kept. */
  readonly ownAtIsRelative?: true;
};

export type Measured =
  | { readonly kind: 'measurement'; readonly measurement: Measurement }
  | Refused;

/** A payload apart: what can be used and what was refused, or one refusal of it all. */
export type DecodedPayload =
  | {
      readonly kind: 'readings';
      readonly readings: readonly Measurement[];
      readonly refused: readonly Refusal[];
    }
  | Refused;

/**
 * Makes a measurement of a value, unless it is no number or lies outside what can be measured.
 * @param measurement `value` in the unit of the quantity, any number
 * @param where where the value stood, to go after "the value" in a sentence, for example `in record 3`
 */
export function measured(measurement: Measurement, where: string): Measured {
  const { sensor, quantity, value } = measurement;
  const { unit, low, high, words, senmlUnits } = quantityFacts[quantity];
  if (!Number.isFinite(value)) {
    return refuse({
      code: 'value-not-finite',
      detail: `The value ${where} is ${value}, which is not a finite number; send nothing when the sensor gives no reading.`,
      sensor,
      quantity,
    });
  }
  if (value < low || value > high) {
    const ratioHint = senmlUnits.includes('/')
      ? ' (in SenML, "/" and "%" are ratios from 0 to 1)'
      : '';
    return refuse({
      code: 'value-out-of-range',
      detail: `The value ${where} is ${value} ${unit}, but ${words} lies between ${low} and ${high} ${unit}; check the sensor, its wiring and its unit${ratioHint}.`,
      sensor,
      quantity,
      value,
    });
  }
  // −0 and 0 are one reading; adding 0 makes them one number.
  if (value !== 0) return { kind: 'measurement', measurement };
  return { kind: 'measurement', measurement: { ...measurement, value: 0 } };
}
