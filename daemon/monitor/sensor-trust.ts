import type { Reason } from '../contract/gate.ts';
import type { Quantity } from '../contract/quantity.ts';
import type { AirNow } from '../rules/brush-air.ts';
import { silences } from '../rules/counted-stays.ts';
import type { FaultFact } from '../rules/facts.ts';
import { faultReason } from '../rules/fault/fault-reason.ts';
import { sensorsHeard } from '../rules/place.ts';
import type { SiteFacts } from './site-facts.ts';

/** Faults that stand now and keep a quantity of sensors that a place hears from counting. */
export function faultsHeard(
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
export function trustReasons(facts: SiteFacts, placeId: string, now: number): Reason[] {
  const air = faultsHeard(facts, placeId, 'air-temperature');
  const damp = faultsHeard(facts, placeId, 'relative-humidity').filter(
    (fault) => !air.some(({ sensorKey }) => sensorKey === fault.sensorKey),
  );
  return [...air, ...damp].map((fault) =>
    faultReason(fault, facts.sensors.get(fault.sensorKey), now),
  );
}

/** What forbids brushing while nobody knows how damp it is, because the sensor that told is not believed. */
export function dampDoubts(
  facts: SiteFacts,
  placeId: string,
  { rhPercent }: AirNow,
  now: number,
): Reason[] {
  if (rhPercent !== null) return [];
  const [fault] = faultsHeard(facts, placeId, 'relative-humidity');
  if (!fault) return [];
  const { text } = faultReason(fault, facts.sensors.get(fault.sensorKey), now);
  return [
    {
      code: 'damp-unknown',
      text: `How damp it is nobody knows: ${text} Look yourself before you brush.`,
    },
  ];
}
