import type { BitReader, BitWriter } from './bit-stream.ts';
import { largestInColumn, readIntegers, writeIntegers } from './integer-column.ts';

/** Decimals that are tried; more is no sensor’s resolution. */
const mostDecimals = 6;
const asFloat32 = 14;
const asFloat64 = 15;

/**
 * Writes numbers so that each comes back bit for bit: as integers where all are decimal fractions of
 * one resolution, else as 32-bit or 64-bit floating-point numbers, whichever holds them exactly.
 */
export function writeValues(bits: BitWriter, values: readonly number[] | Float64Array): void {
  const decimals = decimalsOf(values);
  if (decimals !== null) {
    const scale = 10 ** decimals;
    bits.write(decimals, 4);
    writeIntegers(
      bits,
      Float64Array.from(values, (value) => Math.round(value * scale)),
    );
    return;
  }
  const single = values.every((value) => Object.is(Math.fround(value), value));
  bits.write(single ? asFloat32 : asFloat64, 4);
  const view = new DataView(new ArrayBuffer(8));
  for (const value of values) {
    if (single) view.setFloat32(0, value);
    else view.setFloat64(0, value);
    bits.write(view.getUint32(0), 32);
    if (!single) bits.write(view.getUint32(4), 32);
  }
}

/** @param count - how many were written, 1 at least */
export function readValues(bits: BitReader, count: number): Float64Array {
  const form = bits.read(4);
  if (form <= mostDecimals) {
    const scale = 10 ** form;
    const values = readIntegers(bits, count);
    for (let i = 0; i < count; i++) values[i] = (values[i] as number) / scale;
    return values;
  }
  if (form !== asFloat32 && form !== asFloat64) {
    throw new Error(`Packed readings have a form, ${form}, that is not known here.`);
  }
  const view = new DataView(new ArrayBuffer(8));
  return Float64Array.from({ length: count }, () => {
    view.setUint32(0, bits.read(32));
    if (form === asFloat32) return view.getFloat32(0);
    view.setUint32(4, bits.read(32));
    return view.getFloat64(0);
  });
}

/** The fewest decimals in which all values are exact; null when there are none. */
function decimalsOf(values: readonly number[] | Float64Array): number | null {
  let decimals = 0;
  for (const value of values) {
    while (!isExact(value, decimals)) {
      decimals++;
      if (decimals > mostDecimals) return null;
    }
  }
  // A large value that fits with fewer decimals may not with as many as another one needs.
  return values.every((value) => isExact(value, decimals)) ? decimals : null;
}

function isExact(value: number, decimals: number): boolean {
  const scale = 10 ** decimals;
  // An integer knows no negative zero.
  const scaled = Math.round(value * scale) + 0;
  return Math.abs(scaled) <= largestInColumn && Object.is(scaled / scale, value);
}
