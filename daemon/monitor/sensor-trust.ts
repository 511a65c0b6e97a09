import type { Reason } from '../contract/gate.ts';
import type { Quantity } from '../contract/quantity.ts';
import type { AirNow } from '../rules/brush-air.ts';
import { silences } from '../rules/counted-stays.ts';
import { faultReason } from '../rules/fault/fault-reason.ts';
import { floorHolds, floorReasons, type LoneSensor } from '../rules/floor-shelf.ts';
import { sensorsHeard } from '../rules/place.ts';
import type { FaultFact } from '../rules/sensor-facts.ts';
import { sentence } from '../wording/english.ts';
import { inner } from '../wording/sentence.ts';
import type { SiteFacts } from './site-facts.ts';

/** Faults that stand now and keep a quantity of sensors that a place hears from counting. */
function faultsHeard(
  { places, stays, faults }: SiteFacts,
  placeId: string,
  quantity: Quantity,
): FaultFact[] {
  const here = new Set(
    sensorsHeard(places, stays, placeId)
      .filter(({ untilAt }) => untilAt === null)
      .map(({ sensorKey }) => sensorKey),
  );
  return faults.filter(
    (fault) => fault.untilAt === null && here.has(fault.sensorKey) && silences(fault, quantity),
  );
}

/** Why readings at a place are not counted, as reasons of a verdict. */
function trustReasons(facts: SiteFacts, placeId: string, now: number): Reason[] {
  const air = faultsHeard(facts, placeId, 'air-temperature');
  const damp = faultsHeard(facts, placeId, 'relative-humidity').filter(
    (fault) => !air.some(({ sensorKey }) => sensorKey === fault.sensorKey),
  );
  return [...air, ...damp].map((fault) =>
    faultReason(fault, facts.sensors.get(fault.sensorKey), now),
  );
}

/** What forbids brushing while nobody knows how damp it is, because the sensor that told is not believed. */
function dampDoubts(
  facts: SiteFacts,
  placeId: string,
  { rhPercent }: AirNow,
  now: number,
): Reason[] {
  if (rhPercent !== null) return [];
  const [fault] = faultsHeard(facts, placeId, 'relative-humidity');
  if (!fault) return [];
  const why = inner(faultReason(fault, facts.sensors.get(fault.sensorKey), now));
  return [sentence('damp-unknown', { fault: why })];
}

interface DoubtParts {
  facts: () => SiteFacts;
  /** How much colder the bottom shelf is taken to be beside a lone sensor, K. */
  floorShelfColderK: number;
  /** Rate of cure at a temperature, by the ruling model. */
  rateAt: (tempC: number) => number;
}

/** What a verdict has to say about the sensors it rests on. */
export function sensorDoubts({ facts, floorShelfColderK, rateAt }: DoubtParts) {
  /** The one sensor that speaks for the air of a room or rack; null where there are more, or none. */
  function loneSensor(placeId: string): LoneSensor | null {
    const { places, counted, sensors } = facts();
    const kind = places.get(placeId)?.kind;
    if (kind !== 'room' && kind !== 'rack') return null;
    const heard = sensorsHeard(places, counted('air-temperature'), placeId).filter(
      ({ untilAt }) => untilAt === null,
    );
    const nearest = Math.min(...heard.map(({ level }) => level));
    const keys = new Set(
      heard.filter(({ level }) => level === nearest).map(({ sensorKey }) => sensorKey),
    );
    const [key] = keys;
    const sensor = key === undefined || keys.size > 1 ? undefined : sensors.get(key);
    return sensor ? { name: sensor.name ?? sensor.id, height: sensor.height } : null;
  }

  return {
    /** What forbids brushing at a place, besides the air that its sensors tell. */
    holds: (placeId: string, air: AirNow, leastMarginK: number, now: number): Reason[] => [
      ...dampDoubts(facts(), placeId, air, now),
      ...floorHolds(loneSensor(placeId), air, floorShelfColderK, leastMarginK),
    ],
    reasons: (placeId: string, tempC: number | null, now: number): Reason[] => [
      ...trustReasons(facts(), placeId, now),
      ...floorReasons(loneSensor(placeId), tempC, floorShelfColderK, rateAt),
    ],
  };
}
export type SensorDoubts = ReturnType<typeof sensorDoubts>;
