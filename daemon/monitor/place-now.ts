import { toMoment } from '../contract/moment.ts';
import type { PlaceAir } from '../contract/place.ts';
import type { AirNow } from '../rules/brush-air.ts';
import { airSources } from '../rules/place.ts';
import { absoluteHumidity, dewPoint } from '../science/air.ts';
import type { PlaceAirReader } from './place-air.ts';
import type { SiteFacts } from './site-facts.ts';

/** The air at a place as far as it is known now. */
export type PlaceNow = (placeId: string, now: number) => AirNow & { at: number | null };

/** Below this humidity no dew point is worth naming, and a sensor is broken. */
const leastRhPercent = 1;

export function placeNow(air: PlaceAirReader, staleMs: number): PlaceNow {
  return (placeId, now) => {
    const temperature = air.latest(placeId, 'air-temperature');
    const humidity = air.latest(placeId, 'relative-humidity');
    const at = temperature?.at ?? humidity?.at ?? null;
    // Humidity from another day than the temperature says nothing about the air.
    const together = humidity !== null && at !== null && Math.abs(at - humidity.at) <= staleMs;
    return {
      at,
      tempC: temperature?.value ?? null,
      rhPercent: together ? humidity.value : null,
      stale: at === null || now - at > staleMs,
    };
  };
}

/** The same, as the outside sees it. */
export function placeAirReply(
  air: PlaceAirReader,
  read: PlaceNow,
  facts: SiteFacts,
  placeId: string,
  now: number,
): PlaceAir {
  const { at, tempC, rhPercent, stale } = read(placeId, now);
  const known = tempC !== null && rhPercent !== null && rhPercent >= leastRhPercent;
  const level = air.speaker(placeId);
  const sources = airSources(facts.places, placeId);
  return {
    at: toMoment(at),
    tempC,
    rhPercent,
    dewPointC: known ? dewPoint(tempC, rhPercent, { over: 'water' }) : null,
    absoluteHumidityGM3: known ? absoluteHumidity(tempC, rhPercent, { over: 'water' }) : null,
    stale,
    apartK: air.apart(placeId, 'air-temperature'),
    apartRhPercent: air.apart(placeId, 'relative-humidity'),
    from: level === null || level === 0 ? null : (sources[level] ?? null),
  };
}
