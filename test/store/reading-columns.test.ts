import { describe, expect, it } from 'vitest';
import { quantities } from '../../daemon/contract/quantity.ts';
import {
  factColumns,
  fromFactColumns,
  fromNamedColumns,
  namedColumns,
} from '../../daemon/store/reading-columns.ts';

/** What doubles hold exactly at their ends. **Source:** ECMAScript 2025, sections 6.1.6.1 and 21.1.2. */
const values = [0, -0, 0.1, -273.15, Number.MAX_VALUE, Number.MIN_VALUE];
const times = [0, 1, Date.UTC(2026, 4, 4), -8.64e15, 8.64e15];

describe('readings as columns', () => {
  const readings = quantities.flatMap((quantity, i) =>
    values.flatMap((raw) => times.map((at) => ({ quantity, raw, at, flags: i }))),
  );

  it('come back bit for bit, each with its sensor', () => {
    const named = readings.map((one, i) => ({ sensor: `n${i % 7}`, ...one }));
    const columns = namedColumns(named);
    expect(columns.sensors).toHaveLength(7);
    expect(structuredClone(fromNamedColumns(structuredClone(columns)))).toEqual(named);
  });

  it('come back the same way once they are facts', () => {
    const facts = readings.map((one, i) => ({ sensorKey: 2 ** 31 + i, ...one }));
    expect(fromFactColumns(structuredClone(factColumns(facts)))).toEqual(facts);
  });

  it('are none where there are none', () => {
    expect(fromNamedColumns(namedColumns([]))).toEqual([]);
    expect(fromFactColumns(factColumns([]))).toEqual([]);
  });
});
