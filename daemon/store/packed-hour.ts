import { type ReadingRun, runOf } from '../rules/reading-run.ts';
import { type BitReader, bitReader, bitWriter } from './bit-stream.ts';
import { readIntegers, writeIntegers } from './integer-column.ts';
import { readValues, writeValues } from './value-column.ts';

export const hourMs = 3_600_000;
export const hourOf = (at: number): number => Math.floor(at / hourMs);

/** A reading as it is kept, without what it is a reading of. */
export interface KeptReading {
  /** Epoch ms, integer. */
  at: number;
  raw: number;
  flags: number;
}

/** What is known of the readings of an hour or a day without unpacking them. */
export interface Outline {
  count: number;
  firstAt: number;
  lastAt: number;
  /** The first reading with the lowest raw value. */
  lowAt: number;
  highAt: number;
  low: number;
  high: number;
  sum: number;
}

export interface PackedHour extends Outline {
  hour: number;
  packed: Uint8Array;
}

/** The form the bytes are in; a later one gets another number. */
const form = 1;

/** Packs readings as `packRun` does. */
export const packHour = (readings: readonly KeptReading[]): PackedHour => packRun(runOf(readings));

/**
 * Packs the readings of one hour so that times, values and flags come back exactly.
 *
 * @param run - all of one UTC hour, one at least
 */
export function packRun(run: ReadingRun): PackedHour {
  const hour = hourOf(run.length > 0 ? (run.at[0] as number) : Number.NaN);
  const bits = bitWriter();
  const flags = run.flags.subarray(0, run.length);
  const flagged = flags.some((one) => one !== 0);
  bits.write(form, 3);
  bits.write(flagged ? 1 : 0, 1);
  writeIntegers(
    bits,
    run.at.slice(0, run.length).map((at) => at - hour * hourMs),
  );
  writeValues(bits, run.raw.subarray(0, run.length));
  if (flagged) writeIntegers(bits, flags);
  return { hour, ...outlineOf(run), packed: bits.bytes() };
}

/** @param from, to - only the readings from one time to the other, both included */
export function unpackHour(
  hour: number,
  count: number,
  packed: Uint8Array,
  from = Number.NEGATIVE_INFINITY,
  to = Number.POSITIVE_INFINITY,
): KeptReading[] {
  const { times, values, flags } = hourColumns(hour, count, packed);
  const readings: KeptReading[] = [];
  for (let i = 0; i < count; i++) {
    const at = times[i] as number;
    if (at < from || at > to) continue;
    readings.push({ at, raw: values[i] as number, flags: flags?.[i] ?? 0 });
  }
  return readings;
}

/** The readings of an hour as columns, ascending; where none has a flag there is no column of them. */
export interface UnpackedHour {
  times: Float64Array;
  values: Float64Array;
  flags: Float64Array | null;
}

export function hourColumns(hour: number, count: number, packed: Uint8Array): UnpackedHour {
  const { bits, flagged, times } = opened(hour, count, packed);
  const values = readValues(bits, count);
  return { times, values, flags: flagged ? readIntegers(bits, count) : null };
}

/** Only the times of a packed hour, ascending. */
export const timesOfHour = (hour: number, count: number, packed: Uint8Array): Float64Array =>
  opened(hour, count, packed).times;

function opened(
  hour: number,
  count: number,
  packed: Uint8Array,
): { bits: BitReader; flagged: boolean; times: Float64Array } {
  const bits = bitReader(packed);
  const found = bits.read(3);
  if (found !== form) throw new Error(`Packed readings of form ${found} are not known here.`);
  const flagged = bits.read(1) === 1;
  const times = readIntegers(bits, count);
  for (let i = 0; i < count; i++) times[i] = (times[i] as number) + hour * hourMs;
  return { bits, flagged, times };
}

function outlineOf({ length, at, raw }: ReadingRun): Outline {
  if (length === 0) throw new RangeError('An hour without readings cannot be packed.');
  let [low, high, sum] = [0, 0, 0];
  for (let i = 0; i < length; i++) {
    const value = raw[i] as number;
    if (value < (raw[low] as number)) low = i;
    if (value > (raw[high] as number)) high = i;
    sum += value;
  }
  return {
    count: length,
    firstAt: at[0] as number,
    lastAt: at[length - 1] as number,
    lowAt: at[low] as number,
    highAt: at[high] as number,
    low: raw[low] as number,
    high: raw[high] as number,
    sum,
  };
}
