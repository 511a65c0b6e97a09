import { type Quantity, quantityFacts } from '../../daemon/contract/quantity.ts';

/** What one sensor measured at one moment. */
export interface Sample {
  readonly sensor: string;
  readonly values: readonly { readonly quantity: Quantity; readonly value: number }[];
}

/** First moment that SenML can name absolutely, s. **Source:** RFC 8428 (2018), section 4.5.3. */
export const FIRST_SENML_S = 2 ** 28;

/**
 * A SenML pack of a sample: base name and base time in its first record, so that sending it twice
 * is the same as once.
 *
 * @param sample - one value or more
 * @param at - UTC epoch ms, from mid-1978 on
 * @throws RangeError on an earlier moment
 *
 * **Source:** RFC 8428 (2018), sections 4.1 (base fields) and 4.2.
 */
export function senmlPack({ sensor, values }: Sample, at: number): string {
  if (!(at >= FIRST_SENML_S * 1000)) throw new RangeError(`at is ${at}; allowed: 1978 or later`);
  return JSON.stringify(
    values.map(({ quantity, value }, index) => ({
      ...(index === 0 ? { bn: `${sensor}:`, bt: at / 1000 } : {}),
      n: quantity,
      u: quantityFacts[quantity].senmlUnits[0],
      v: value,
    })),
  );
}
