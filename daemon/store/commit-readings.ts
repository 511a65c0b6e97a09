import type { Database } from 'better-sqlite3';
import type { Quantity } from '../contract/quantity.ts';
import type { PlaceFact, ReadingFact, ReadingGroup, RefusedMessage } from '../rules/facts.ts';
import { placesFed, stayAt } from '../rules/place.ts';
import type { SensorStay } from '../rules/sensor-facts.ts';
import { sentence } from '../wording/english.ts';
import type { HourTable } from './hours.ts';
import type { OpenMessageTable } from './open-messages.ts';
import type { PlaceTable } from './places.ts';
import { keptRefused, type RefusedTable } from './refused.ts';
import type { SensorTable } from './sensors.ts';
import type { ReadingIntake } from './take-in-readings.ts';

export interface Committed {
  /** What was new, in the order of arrival. */
  fresh: ReadingFact[];
  duplicates: number;
  /** Readings of sensors beyond the number that is allowed. */
  refused: number;
  /** Ids of sensors that appeared with this group. */
  newSensors: string[];
  /** True when late readings left hour sums to be made again. */
  dirtied: boolean;
}

interface Tables {
  places: PlaceTable;
  sensors: SensorTable;
  readings: ReadingIntake;
  hours: HourTable;
  refused: RefusedTable;
  openMessages: OpenMessageTable;
}

const curing: Quantity = 'air-temperature';
const hourMs = 3_600_000;
const none: readonly never[] = [];

/**
 * The transaction that takes in a group of readings. Whatever it returns is on disk.
 *
 * A reading at or before the newest one that its place has heard is late: the hours about it are
 * marked in this same transaction, so that no crash can leave a sum that disagrees.
 */
export function readingCommitter(
  db: Database,
  tables: Tables,
  timeUnknownBit: number,
  maxSensors: number,
) {
  let placement = readPlacement();
  const newest = new Map<string, number>();

  function readPlacement() {
    const places = new Map(tables.places.all().map((place) => [place.id, place]));
    const stays = new Map<number, SensorStay[]>();
    for (const stay of tables.sensors.stays()) {
      stays.set(stay.sensorKey, [...(stays.get(stay.sensorKey) ?? []), stay]);
    }
    const keys = new Map(tables.sensors.all().map((sensor) => [sensor.id, sensor.key]));
    const fedBy = new Map<string, string[]>();
    return { places, stays, keys, fedBy };
  }

  function fed(sensorKey: number, at: number): string[] {
    const stay = stayAt(placement.stays.get(sensorKey) ?? [], at);
    return stay ? fedFrom(stay.placeId) : [];
  }

  function fedFrom(placeId: string): string[] {
    let places = placement.fedBy.get(placeId);
    if (!places) {
      places = placesFed(placement.places, placeId);
      placement.fedBy.set(placeId, places);
    }
    return places;
  }

  /** The newest reading a place can have heard; where it is told too new, late is marked early. */
  function newestAt(placeId: string): number {
    const known = newest.get(placeId);
    if (known !== undefined) return known;
    let at = Number.NEGATIVE_INFINITY;
    for (const [sensorKey, stays] of placement.stays) {
      const everHeard = stays.some(
        (stay) => stay.placeId && fedFrom(stay.placeId).includes(placeId),
      );
      const last = everHeard ? tables.readings.extent(sensorKey, curing)?.lastAt : undefined;
      if (last !== undefined && last > at) at = last;
    }
    newest.set(placeId, at);
    return at;
  }

  function takeIn(group: ReadingGroup): Committed {
    const fresh: ReadingFact[] = [];
    const newSensors: string[] = [];
    const late = new Map<string, number[]>();
    const crowdedOut: RefusedMessage[] = [];
    let duplicates = 0;
    for (const { sensor, quantity, at, raw, flags } of group.readings) {
      let sensorKey = placement.keys.get(sensor);
      if (sensorKey === undefined) {
        if (placement.keys.size >= maxSensors) {
          crowdedOut.push(tooManySensors(sensor, at, maxSensors));
          continue;
        }
        sensorKey = tables.sensors.insert(sensor, group.arrivedAt);
        placement.keys.set(sensor, sensorKey);
        newSensors.push(sensor);
      }
      const fact: ReadingFact = { sensorKey, quantity, at, raw, flags };
      const counts = quantity === curing && (flags & timeUnknownBit) === 0;
      const places = counts ? fed(sensorKey, at) : none;
      // Looked up before this one is among them.
      for (const place of places) newestAt(place);
      if (!tables.readings.insert(fact)) {
        duplicates++;
        continue;
      }
      fresh.push(fact);
      for (const place of places) {
        if (at > newestAt(place)) {
          newest.set(place, at);
          continue;
        }
        const times = late.get(place);
        if (times) times.push(at);
        else late.set(place, [at]);
      }
    }
    for (const [placeId, times] of late) {
      for (const span of merged(times)) tables.hours.addDirty(placeId, span.fromAt, span.toAt);
    }
    tables.openMessages.note(group);
    tables.refused.insert([...group.refused, ...crowdedOut.slice(0, keptRefused)]);
    const refused = crowdedOut.length;
    return { fresh, duplicates, refused, newSensors, dirtied: late.size > 0 };
  }

  const transaction = db.transaction(takeIn);
  return {
    commit(group: ReadingGroup): Committed {
      try {
        return transaction.immediate(group);
      } catch (cause) {
        this.forget();
        tables.readings.forget();
        throw cause;
      }
    },
    /** Called when places or stays changed, or a transaction was rolled back. */
    forget(): void {
      placement = readPlacement();
      newest.clear();
    },
    fedPlaces: (placeId: string): string[] => placesFed(readPlacement().places, placeId),
  };
}
export type ReadingCommitter = ReturnType<typeof readingCommitter>;
export type PlacesById = ReadonlyMap<string, PlaceFact>;

/** Joins late times that lie within an hour of each other into spans. */
function merged(times: number[]): { fromAt: number; toAt: number }[] {
  const spans: { fromAt: number; toAt: number }[] = [];
  for (const at of [...times].sort((a, b) => a - b)) {
    const last = spans.at(-1);
    if (last && at - last.toAt <= hourMs) last.toAt = at;
    else spans.push({ fromAt: at, toAt: at });
  }
  return spans;
}

function tooManySensors(sensor: string, at: number, maxSensors: number): RefusedMessage {
  const said = sentence('sensor-too-many', { sensor, sensors: maxSensors });
  return {
    at,
    topic: sensor,
    code: 'too-many-sensors',
    detail: said.text,
    detailSaid: said,
    payloadStart: '',
    payloadBytes: 0,
  };
}
