import { BoardcureError } from '../contract/problem.ts';
import type { SensorFact } from '../rules/sensor-facts.ts';
import { sentence } from '../wording/english.ts';

/** Looks a sensor up by its topic segment. @throws BoardcureError when it was never heard */
export function sensorById(
  sensors: ReadonlyMap<number, SensorFact>,
  id: string,
  pointer?: string,
): SensorFact {
  for (const sensor of sensors.values()) if (sensor.id === id) return sensor;
  throw new BoardcureError(
    pointer === undefined ? 'BC_THING_UNKNOWN' : 'BC_REFERENCE_UNKNOWN',
    sentence('sensor-unheard/yet-to-come', { sensor: id }),
    pointer === undefined ? {} : { pointer },
  );
}
