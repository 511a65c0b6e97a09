import { lagWeights } from './lagged-response.ts';

/**
 * A temperature smoothed by a first-order lag, hour by hour.
 *
 * @param values - hourly, without gaps
 * @param lagHours - 0 or more
 * @returns the lagged values, started in balance
 */
export function lagged(values: readonly number[], lagHours: number): number[] {
  if (lagHours === 0) return [...values];
  const { kept, start, end } = lagWeights(1 / lagHours);
  let out = values[0] ?? 0;
  let before = out;
  return values.map((value) => {
    out = kept * out + start * before + end * value;
    before = value;
    return out;
  });
}
