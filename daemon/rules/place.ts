import type { PlaceFact } from './facts.ts';
import type { SensorStay } from './sensor-facts.ts';

/**
 * The places whose sensors may speak for a place, nearest first: itself, then what encloses it.
 * Outdoors never speaks for a room or a rack, but does for a wall.
 *
 * @param places - all places by id
 * @param placeId - the place in question; an unknown one has no sources
 */
export function airSources(places: ReadonlyMap<string, PlaceFact>, placeId: string): string[] {
  const start = places.get(placeId);
  const sources: string[] = [];
  let place = start;
  while (place && start && !sources.includes(place.id)) {
    if (place.kind === 'outdoors' && start.kind !== 'outdoors' && start.kind !== 'wall') break;
    sources.push(place.id);
    place = place.within === null ? undefined : places.get(place.within);
  }
  return sources;
}

/** The places that hear a sensor sitting at `sourceId`: the inverse of `airSources`. */
export function placesFed(places: ReadonlyMap<string, PlaceFact>, sourceId: string): string[] {
  const fed: string[] = [];
  for (const id of places.keys()) {
    if (airSources(places, id).includes(sourceId)) fed.push(id);
  }
  return fed;
}

/** One sensor's stays in the order of time, a stay from ever first. */
export function sortedStays(stays: readonly SensorStay[]): SensorStay[] {
  return [...stays].sort(
    (a, b) => (a.fromAt ?? Number.NEGATIVE_INFINITY) - (b.fromAt ?? Number.NEGATIVE_INFINITY),
  );
}

/** Where a sensor sat at a moment, and until when; null where it was unplaced. */
export function stayAt(
  stays: readonly SensorStay[],
  at: number,
): { placeId: string; fromAt: number | null; untilAt: number | null } | null {
  const ordered = sortedStays(stays);
  for (let i = ordered.length - 1; i >= 0; i--) {
    const stay = ordered[i];
    if (!stay || (stay.fromAt !== null && stay.fromAt > at)) continue;
    if (stay.placeId === null) return null;
    return {
      placeId: stay.placeId,
      fromAt: stay.fromAt,
      untilAt: ordered[i + 1]?.fromAt ?? null,
    };
  }
  return null;
}

/** A stretch during which a sensor speaks for a place; `untilAt` exclusive, null while it stays. */
export interface HeardSensor {
  sensorKey: number;
  level: number;
  fromAt: number | null;
  untilAt: number | null;
}

/** Every stretch in which some sensor speaks for a place, its own and those of enclosing places. */
export function sensorsHeard(
  places: ReadonlyMap<string, PlaceFact>,
  stays: ReadonlyMap<number, readonly SensorStay[]>,
  placeId: string,
): HeardSensor[] {
  const sources = airSources(places, placeId);
  const heard: HeardSensor[] = [];
  for (const [sensorKey, ofSensor] of stays) {
    const ordered = sortedStays(ofSensor);
    ordered.forEach((stay, i) => {
      const level = stay.placeId === null ? -1 : sources.indexOf(stay.placeId);
      if (level < 0) return;
      heard.push({
        sensorKey,
        level,
        fromAt: stay.fromAt,
        untilAt: ordered[i + 1]?.fromAt ?? null,
      });
    });
  }
  return heard;
}
