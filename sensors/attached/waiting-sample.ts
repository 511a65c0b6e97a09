import { Quantity } from '../../daemon/contract/quantity.ts';
import type { Taken } from './dating.ts';
import type { Sample } from './senml-pack.ts';

/** A sample with when it was taken, as it lies in the queue. */
export interface WaitingSample {
  readonly sample: Sample;
  readonly taken: Taken;
}

/** As one line of text for the queue. */
export function sampleText({ sample, taken }: WaitingSample): string {
  const values = sample.values.map(({ quantity, value }) => [quantity, value]);
  return JSON.stringify([sample.sensor, values, taken.boot, taken.monotonicMs, taken.at]);
}

/** Reads {@link sampleText}; null where an older program wrote something else. */
export function textSample(text: string): WaitingSample | null {
  try {
    const [sensor, pairs, boot, monotonicMs, at] = JSON.parse(text);
    const values = pairs.map(([quantity, value]: [string, number]) => ({
      quantity: Quantity.parse(quantity),
      value,
    }));
    return { sample: { sensor, values }, taken: { boot, monotonicMs, at } };
  } catch {
    return null;
  }
}
