import { type Quantity, quantityFacts } from '../../daemon/contract/quantity.ts';
import type { Inner } from '../../daemon/wording/phrase.ts';
import { because, type Refusal, type Refused, refuse } from './refusal.ts';

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
 * @param where where the value stood, to go into a sentence
 */
export function measured(measurement: Measurement, where: Inner): Measured {
  const { sensor, quantity, value } = measurement;
  const { low, high, senmlUnits } = quantityFacts[quantity];
  if (!Number.isFinite(value)) {
    return refuse({
      code: 'value-not-finite',
      ...because('value-not-finite', { spot: where, word: String(value) }),
      sensor,
      quantity,
    });
  }
  if (value < low || value > high) {
    const code = senmlUnits.includes('/') ? 'value-beyond/share' : 'value-beyond';
    return refuse({
      code: 'value-out-of-range',
      ...because(code, { spot: where, value, quantity, low, high }),
      sensor,
      quantity,
      value,
    });
  }
  // −0 and 0 are one reading; adding 0 makes them one number.
  if (value !== 0) return { kind: 'measurement', measurement };
  return { kind: 'measurement', measurement: { ...measurement, value: 0 } };
}
