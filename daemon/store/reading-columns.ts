import type { IncomingReading, ReadingFact } from '../rules/facts.ts';
import { codeOf, quantityOf } from './quantity-code.ts';

/**
 * Readings as flat numbers, five each: sensor, quantity’s code, time, value, flags. Between threads
 * that is one piece of memory to copy, where objects would be taken apart and put together one by one.
 */
export type ReadingColumns = Float64Array;

const width = 5;

/** Readings on their way in; the sensor is the place of its name in the list. */
export interface NamedColumns {
  sensors: string[];
  columns: ReadingColumns;
}

export function namedColumns(readings: readonly IncomingReading[]): NamedColumns {
  const columns = new Float64Array(readings.length * width);
  const sensors: string[] = [];
  const places = new Map<string, number>();
  let next = 0;
  for (const reading of readings) {
    let place = places.get(reading.sensor);
    if (place === undefined) {
      place = sensors.push(reading.sensor) - 1;
      places.set(reading.sensor, place);
    }
    next = put(columns, next, place, reading);
  }
  return { sensors, columns };
}

export function fromNamedColumns({ sensors, columns }: NamedColumns): IncomingReading[] {
  const readings: IncomingReading[] = [];
  for (let next = 0; next < columns.length; next += width) {
    readings.push({
      sensor: sensors[columns[next] as number] ?? '',
      quantity: quantityOf(columns[next + 1] as number),
      at: columns[next + 2] as number,
      raw: columns[next + 3] as number,
      flags: columns[next + 4] as number,
    });
  }
  return readings;
}

export function factColumns(facts: readonly ReadingFact[]): ReadingColumns {
  const columns = new Float64Array(facts.length * width);
  let next = 0;
  for (const fact of facts) next = put(columns, next, fact.sensorKey, fact);
  return columns;
}

export function fromFactColumns(columns: ReadingColumns): ReadingFact[] {
  const facts: ReadingFact[] = [];
  for (let next = 0; next < columns.length; next += width) facts.push(factAt(columns, next));
  return facts;
}

function put(
  columns: ReadingColumns,
  at: number,
  sensor: number,
  reading: Omit<ReadingFact, 'sensorKey'>,
): number {
  columns[at] = sensor;
  columns[at + 1] = codeOf(reading.quantity);
  columns[at + 2] = reading.at;
  columns[at + 3] = reading.raw;
  columns[at + 4] = reading.flags;
  return at + width;
}

const factAt = (columns: ReadingColumns, at: number): ReadingFact => ({
  sensorKey: columns[at] as number,
  quantity: quantityOf(columns[at + 1] as number),
  at: columns[at + 2] as number,
  raw: columns[at + 3] as number,
  flags: columns[at + 4] as number,
});
