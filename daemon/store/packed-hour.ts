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

/**
 * Packs the readings of one hour so that times, values and flags come back exactly.
 *
 * @param readings - ascending by `at`, all of one UTC hour, one at least
 */
export function packHour(readings: readonly KeptReading[]): PackedHour {
  const hour = hourOf(readings[0]?.at ?? Number.NaN);
  const bits = bitWriter();
  const flagged = readings.some((reading) => reading.flags !== 0);
  bits.write(form, 3);
  bits.write(flagged ? 1 : 0, 1);
  writeIntegers(
    bits,
    readings.map((reading) => reading.at - hour * hourMs),
  );
  writeValues(
    bits,
    readings.map((reading) => reading.raw),
  );
  if (flagged) {
    writeIntegers(
      bits,
      readings.map((reading) => reading.flags),
    );
  }
  return { hour, ...outlineOf(readings), packed: bits.bytes() };
}

/** @param from, to - only the readings from one time to the other, both included */
export function unpackHour(
  hour: number,
  count: number,
  packed: Uint8Array,
  from = Number.NEGATIVE_INFINITY,
  to = Number.POSITIVE_INFINITY,
): KeptReading[] {
  const { bits, flagged, times } = opened(hour, count, packed);
  const values = readValues(bits, count);
  const flags = flagged ? readIntegers(bits, count) : null;
  const readings: KeptReading[] = [];
  for (const [i, at] of times.entries()) {
    if (at < from || at > to) continue;
    readings.push({ at, raw: values[i] ?? Number.NaN, flags: flags?.[i] ?? 0 });
  }
  return readings;
}

/** Only the times of a packed hour, ascending. */
export const timesOfHour = (hour: number, count: number, packed: Uint8Array): number[] =>
  opened(hour, count, packed).times;

function opened(
  hour: number,
  count: number,
  packed: Uint8Array,
): { bits: BitReader; flagged: boolean; times: number[] } {
  const bits = bitReader(packed);
  const found = bits.read(3);
  if (found !== form) throw new Error(`Packed readings of form ${found} are not known here.`);
  const flagged = bits.read(1) === 1;
  const times = readIntegers(bits, count);
  for (let i = 0; i < times.length; i++) times[i] = (times[i] ?? 0) + hour * hourMs;
  return { bits, flagged, times };
}

function outlineOf(readings: readonly KeptReading[]): Outline {
  const first = readings[0];
  const last = readings.at(-1);
  if (!first || !last) throw new RangeError('An hour without readings cannot be packed.');
  let low = first;
  let high = first;
  let sum = 0;
  for (const reading of readings) {
    if (reading.raw < low.raw) low = reading;
    if (reading.raw > high.raw) high = reading;
    sum += reading.raw;
  }
  return {
    count: readings.length,
    firstAt: first.at,
    lastAt: last.at,
    lowAt: low.at,
    highAt: high.at,
    low: low.raw,
    high: high.raw,
    sum,
  };
}
