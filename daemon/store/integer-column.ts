import type { BitReader, BitWriter } from './bit-stream.ts';

/** Integers up to this size fit a column; their differences then fit 32 bits. */
export const largestInColumn = 2 ** 28;

/** So many ones announce a step that is written out, since it is far from all others. */
const longestUnary = 18;
const unaryOnes = 2 ** longestUnary - 1;
const widestRemainder = 24;

/**
 * Writes integers as their steps from one to the next: the middling step once, and of each step how
 * far it is from that, in units of what divides them all.
 *
 * **Source:** Golomb–Rice code with the parameter that makes the column shortest (R. F. Rice, “Some
 * practical universal noiseless coding techniques”, JPL 79-22, 1979; from memory).
 *
 * @param values - integers, at most `largestInColumn` in size, one at least
 */
export function writeIntegers(bits: BitWriter, values: ArrayLike<number>): void {
  const first = values[0] ?? 0;
  const steps = new Float64Array(Math.max(0, values.length - 1));
  for (let i = 0; i < steps.length; i++) steps[i] = (values[i + 1] ?? 0) - (values[i] ?? 0);
  const usual = middle(steps);
  let unit = 0;
  for (const step of steps) unit = commonDivisor(unit, Math.abs(step - usual));
  const parts = steps.map((step) => folded((step - usual) / (unit || 1)));
  const width = shortestRemainder(parts);
  writeNumber(bits, folded(first));
  writeNumber(bits, folded(usual));
  writeNumber(bits, unit);
  // Steps that are all alike need no more than that.
  if (unit === 0) return;
  bits.write(width, 5);
  for (const part of parts) {
    const ones = part >>> width;
    if (ones < longestUnary) {
      bits.write(2 ** (ones + 1) - 2, ones + 1);
      bits.write(part & (2 ** width - 1), width);
    } else {
      bits.write(unaryOnes, longestUnary);
      bits.write(part, 32);
    }
  }
}

/** @param count - how many were written, 1 at least */
export function readIntegers(bits: BitReader, count: number): Float64Array {
  let value = unfolded(readNumber(bits));
  const usual = unfolded(readNumber(bits));
  const unit = readNumber(bits);
  const width = unit === 0 ? 0 : bits.read(5);
  const values = new Float64Array(count);
  values[0] = value;
  for (let i = 1; i < count; i++) {
    value += usual;
    if (unit !== 0) {
      let ones = 0;
      while (ones < longestUnary && bits.read(1) === 1) ones++;
      const part = ones < longestUnary ? ones * 2 ** width + bits.read(width) : bits.read(32);
      value += unfolded(part) * unit;
    }
    values[i] = value;
  }
  return values;
}

/** The number of remainder bits with which the parts take the fewest bits. */
function shortestRemainder(parts: Float64Array): number {
  let best = 0;
  let fewest = Number.POSITIVE_INFINITY;
  for (let width = 0; width <= widestRemainder; width++) {
    let bits = 0;
    for (const part of parts) {
      const ones = part >>> width;
      bits += ones < longestUnary ? ones + 1 + width : longestUnary + 32;
    }
    // Narrower was too narrow, wider is too wide: there is one valley.
    if (bits > fewest && width > best + 2) break;
    if (bits < fewest) {
      fewest = bits;
      best = width;
    }
  }
  return best;
}

function middle(steps: Float64Array): number {
  return steps.slice().sort()[steps.length >> 1] ?? 0;
}

function commonDivisor(a: number, b: number): number {
  let [x, y] = [a, b];
  while (y !== 0) [x, y] = [y, x % y];
  return x;
}

/** Signed to unsigned, small ones staying small: 0, −1, 1, −2, 2 become 0, 1, 2, 3, 4. */
const folded = (value: number) => (value < 0 ? -2 * value - 1 : 2 * value);
const unfolded = (value: number) => (value % 2 === 1 ? -(value + 1) / 2 : value / 2);

function writeNumber(bits: BitWriter, value: number): void {
  const width = value === 0 ? 0 : 32 - Math.clz32(value);
  bits.write(width, 6);
  bits.write(value, width);
}

const readNumber = (bits: BitReader): number => bits.read(bits.read(6));
