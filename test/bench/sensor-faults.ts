import type { PlaceKind } from '../../daemon/contract/place.ts';
import type { Quantity } from '../../daemon/contract/quantity.ts';
import type { FaultKind } from '../../daemon/contract/sensor-fault.ts';
import { faultFinder } from '../../daemon/rules/fault/fault-finder.ts';
import { type CheapSensor, type SensorReading, sent, truthOf } from './cheap-sensor.ts';
import type { RecordedSeries } from './recorded-series.ts';

const minute = 60_000;
const hour = 60 * minute;
export const dayMs = 24 * hour;
/** The daemon looks for silence every minute. */
const lookEveryMs = minute;

/** A place with its recorded air and the sensors that hang there. */
export interface PlaceUnderTest {
  readonly name: string;
  readonly kind: PlaceKind;
  readonly record: RecordedSeries;
  readonly sensors: readonly CheapSensor[];
}

/** What is done to the readings of sensors from a moment on; null drops one. */
export interface Injection {
  readonly kind: FaultKind;
  /** Sensors that it is found on, as `place/number`. */
  readonly on: readonly string[];
  readonly fromAt: number;
  change(reading: SensorReading, spot: Spot): Sent | null;
}

/** Where a reading was taken, and what an injection keeps in mind of that sensor. */
export interface Spot {
  readonly place: number;
  readonly truths: readonly ReturnType<typeof truthOf>[];
  readonly held: Map<string, number>;
}
export type Sent = Omit<SensorReading, 'quantity'> & { quantity: Quantity; heardAt?: number };

export interface Raised {
  kind: FaultKind;
  sensor: string;
  quantity: Quantity | null;
  /** When it was raised, and from when on it holds. */
  at: number;
  fromAt: number;
  says: string;
}

/** Lets sensors send over a time, with or without a fault, and notes every fault that is raised. */
export function watchSite(
  places: readonly PlaceUnderTest[],
  fromAt: number,
  toAt: number,
  injection: Injection | null = null,
): { raised: Raised[]; sensorMonths: number } {
  const sensors = places.flatMap((place, p) =>
    place.sensors.map((sensor, i) => ({ place, p, sensor, name: `${place.name}/${i}` })),
  );
  const about = sensors.map((one, key) =>
    sensors.flatMap((other, k) => (k !== key && other.p === one.p ? [k] : [])),
  );
  const finder = faultFinder((key) => {
    const { place, name } = sensors[key] as (typeof sensors)[number];
    return { placeId: place.name, kind: place.kind, name, about: about[key] ?? [] };
  });
  const truths = places.map(({ record }) => truthOf(record));
  const minds = sensors.map(() => new Map<string, number>());
  const all = sensors.map(({ place, sensor, name, p }, key) => {
    const stream = sent(truthOf(place.record), sensor, fromAt, toAt);
    return { key, name, p, stream, next: stream.next() };
  });
  const open = new Set<string>();
  const raised: Raised[] = [];
  const note = (at: number, keys: Iterable<number>) => {
    for (const key of keys) {
      for (const { kind, quantity, standing } of finder.findingsOf(key)) {
        const id = `${key} ${kind} ${quantity}`;
        if (standing === null) open.delete(id);
        else if (!open.has(id)) {
          open.add(id);
          const sensor = sensors[key]?.name ?? '';
          raised.push({ kind, sensor, quantity, at, fromAt: standing.fromAt, says: standing.says });
        }
      }
    }
  };
  let lookAt = fromAt;
  for (;;) {
    let first = null as (typeof all)[number] | null;
    for (const one of all) {
      if (one.next.done) continue;
      if (first === null || one.next.value.at < (first.next.value as SensorReading).at) first = one;
    }
    if (first === null || first.next.done) break;
    const reading = first.next.value;
    first.next = first.stream.next();
    for (; lookAt < reading.at; lookAt += lookEveryMs) {
      finder.lookAround(lookAt, fromAt);
      note(lookAt, finder.stirred());
    }
    const isHit = injection?.on.includes(first.name) === true && reading.at >= injection.fromAt;
    const spot = { place: first.p, truths, held: minds[first.key] as Map<string, number> };
    const changed: Sent | null = injection && isHit ? injection.change(reading, spot) : reading;
    if (changed === null) continue;
    const { at, quantity, value } = changed;
    const heardAt = changed.heardAt ?? at;
    finder.take({ sensorKey: first.key, quantity, at, raw: value, value, heardAt });
    note(heardAt, finder.stirred());
  }
  const covered = sensors.length * ((toAt - fromAt) / (30 * dayMs));
  return { raised, sensorMonths: covered };
}
