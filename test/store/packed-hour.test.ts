import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bitReader, bitWriter } from '../../daemon/store/bit-stream.ts';
import { readIntegers, writeIntegers } from '../../daemon/store/integer-column.ts';
import { hourMs, packHour, timesOfHour, unpackHour } from '../../daemon/store/packed-hour.ts';
import { readValues, writeValues } from '../../daemon/store/value-column.ts';
import { day1 } from './site-of-facts.ts';

const hour = day1 / hourMs;

const there = (values: number[]) => {
  const bits = bitWriter();
  writeValues(bits, values);
  return bits.bytes();
};
const back = (bytes: Uint8Array, count: number) => readValues(bitReader(bytes), count);
const bytesOf = (values: number[]) => there(values).length;

/** What sensors send: decimal fractions, sixteenths, single and double precision, and anything. */
const sent = fc.oneof(
  fc.array(
    fc.integer({ min: -4000, max: 12_000 }).map((n) => n / 100),
    { minLength: 1 },
  ),
  fc.array(
    fc.integer({ min: -640, max: 1360 }).map((n) => n / 16),
    { minLength: 1 },
  ),
  fc.array(fc.float({ noNaN: true, noDefaultInfinity: true }), { minLength: 1 }),
  fc.array(fc.double({ noNaN: true, noDefaultInfinity: true }), { minLength: 1 }),
  fc.array(
    fc.oneof(
      fc.integer({ min: -(2 ** 53), max: 2 ** 53 }),
      fc.constantFrom(0, -0, 0.1 + 0.2, 1e15, 268_435_456.5, 2_684_354.56, 1e-7, 5e-324),
    ),
    { minLength: 1 },
  ),
);

describe('the readings of an hour, packed', () => {
  it('give every integer back', () => {
    const integer = fc.oneof(
      fc.integer({ min: -300, max: 300 }),
      fc.integer({ min: -(2 ** 28), max: 2 ** 28 }),
    );
    fc.assert(
      fc.property(fc.array(integer, { minLength: 1, maxLength: 200 }), (values) => {
        const bits = bitWriter();
        writeIntegers(bits, values);
        expect([...readIntegers(bitReader(bits.bytes()), values.length)]).toEqual(values);
      }),
    );
  });

  it('give every value back bit for bit, whatever was sent', () => {
    fc.assert(
      fc.property(sent, (values) => {
        const got = back(there(values), values.length);
        expect(got.every((value, i) => Object.is(value, values[i]))).toBe(true);
      }),
      { numRuns: 500 },
    );
  });

  it('give times, values and flags back together, with what a chart needs of them', () => {
    const reading = fc.record({
      ms: fc.integer({ min: 0, max: hourMs - 1 }),
      raw: fc.double({ noNaN: true, noDefaultInfinity: true }),
      flags: fc.integer({ min: 0, max: 7 }),
    });
    const readings = fc.uniqueArray(reading, { minLength: 1, selector: ({ ms }) => ms });
    fc.assert(
      fc.property(readings, (given) => {
        const kept = given
          .map(({ ms, raw, flags }) => ({ at: hour * hourMs + ms, raw, flags }))
          .sort((a, b) => a.at - b.at);
        const packed = packHour(kept);
        expect(unpackHour(packed.hour, packed.count, packed.packed)).toEqual(kept);
        expect([...timesOfHour(packed.hour, packed.count, packed.packed)]).toEqual(
          kept.map(({ at }) => at),
        );
        expect(packed).toMatchObject({
          hour,
          count: kept.length,
          firstAt: kept[0]?.at,
          lastAt: kept.at(-1)?.at,
        });
        expect(kept.every(({ raw }) => packed.low <= raw && raw <= packed.high)).toBe(true);
        expect(kept.find(({ at }) => at === packed.lowAt)?.raw).toBe(packed.low);
        expect(kept.find(({ at }) => at === packed.highAt)?.raw).toBe(packed.high);
      }),
    );
  });

  it('take few bytes where a sensor has a resolution, and no more than they were elsewhere', () => {
    const wave = Array.from({ length: 60 }, (_, i) => Math.sin(i / 9));
    expect(bytesOf(wave.map((x) => Math.round(1850 + 40 * x) / 100))).toBeLessThan(60);
    expect(bytesOf(wave.map((x) => Math.round(300 + 8 * x) / 16))).toBeLessThan(45);
    expect(bytesOf(wave.map((x) => Math.fround(18 + x)))).toBeLessThanOrEqual(60 * 4 + 1);
    expect(bytesOf(wave)).toBeLessThanOrEqual(60 * 8 + 1);
    expect(bytesOf(wave.map(() => 18.4))).toBeLessThan(8);
  });

  it('are not taken for others when their bytes are cut off or of a later form', () => {
    const { count, packed } = packHour([
      { at: day1, raw: 18.4, flags: 0 },
      { at: day1 + 61_007, raw: 18.5, flags: 0 },
      { at: day1 + 120_011, raw: 18.7, flags: 0 },
    ]);
    expect(() => unpackHour(hour, count, packed.slice(0, -2))).toThrow('end too early');
    const later = packed.slice();
    later[0] = (later[0] ?? 0) | 0xe0;
    expect(() => unpackHour(hour, count, later)).toThrow('form 7');
  });
});
