/**
 * Refuses a number outside its allowed range, so that no later formula runs on nonsense.
 *
 * @param name - the argument as the caller knows it, unit included (`tempC`)
 * @param value - the number to check
 * @param lowest - smallest allowed value, included
 * @param highest - largest allowed value, included
 * @returns the value itself
 * @throws RangeError naming argument, value and allowed range (NaN and infinities always)
 */
export function within(name: string, value: number, lowest: number, highest: number): number {
  if (!(value >= lowest && value <= highest) || !Number.isFinite(value)) {
    throw new RangeError(`${name} is ${value}; allowed: ${lowest} to ${highest}`);
  }
  return value;
}

/**
 * Refuses a number that is not above zero and finite.
 *
 * @param name - the argument as the caller knows it, unit included
 * @param value - the number to check
 * @returns the value itself
 * @throws RangeError naming argument, value and allowed range
 */
export function positive(name: string, value: number): number {
  if (!(value > 0) || !Number.isFinite(value)) {
    throw new RangeError(`${name} is ${value}; allowed: above 0 and finite`);
  }
  return value;
}
