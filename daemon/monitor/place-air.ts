import type { Quantity } from '../contract/quantity.ts';
import { type HeardSensor, sensorsHeard } from '../rules/place.ts';
import {
  apartNow,
  type HeardReading,
  type Held,
  hear,
  moments,
  placeSeries,
  type Sample,
  type Speaker,
} from '../rules/place-series.ts';
import type { Corrected, FlagBits, ReadingSource } from './ports.ts';
import type { SiteFacts } from './site-facts.ts';

/** Quantities of the air that are followed at every place, and which of several sensors speaks. */
export const followed = {
  'air-temperature': 'lowest',
  'relative-humidity': 'highest',
  'carbon-dioxide': 'highest',
} as const satisfies Partial<Record<Quantity, Speaker>>;
export type Followed = keyof typeof followed;

/** The newest that a place has heard; carried on with each reading. */
interface Tail {
  held: Held;
  lastHeardAt: number | null;
  last: Sample | null;
}

/** One step of a place’s series: the line from the sample before to the new one. */
export interface Step {
  placeId: string;
  quantity: Followed;
  from: Sample | null;
  to: Sample;
}

interface PlaceAirParts {
  readings: ReadingSource;
  corrected: Corrected;
  flags: FlagBits;
  facts: () => SiteFacts;
  holdMs: number;
}

/** The air at places, from the readings of the sensors there. */
export function placeAir({ readings, corrected, flags, facts, holdMs }: PlaceAirParts) {
  const tails = new Map<string, Tail>();
  const heardOf = new Map<string, HeardSensor[]>();
  const tailKey = (placeId: string, quantity: Followed) => `${placeId} ${quantity}`;

  /** Every stretch in which a sensor speaks for a place, the earliest beginning first. */
  function heard(placeId: string, quantity: Followed): HeardSensor[] {
    const key = tailKey(placeId, quantity);
    let known = heardOf.get(key);
    if (!known) {
      const { places, counted } = facts();
      known = sensorsHeard(places, counted(quantity), placeId).sort(
        (a, b) => (a.fromAt ?? Number.NEGATIVE_INFINITY) - (b.fromAt ?? Number.NEGATIVE_INFINITY),
      );
      heardOf.set(key, known);
    }
    return known;
  }

  function collect(placeId: string, quantity: Followed, from: number, to: number): HeardReading[] {
    return heard(placeId, quantity).flatMap((sensor) => {
      const start = Math.max(from, sensor.fromAt ?? from);
      const end = Math.min(to, sensor.untilAt === null ? to : sensor.untilAt - 1);
      if (end < start) return [];
      return readings
        .readingsBetween(sensor.sensorKey, quantity, start, end)
        .filter((reading) => (reading.flags & flags.timeUnknown) === 0)
        .map((reading) => ({
          sensorKey: sensor.sensorKey,
          at: reading.at,
          value: corrected(reading),
          level: sensor.level,
          untilAt: sensor.untilAt,
        }));
    });
  }

  /** Time of the newest reading heard up to a moment, that moment included. */
  function newestUpTo(placeId: string, quantity: Followed, at: number): number | null {
    let newest: number | null = null;
    for (const { sensorKey, fromAt, untilAt } of heard(placeId, quantity).toReversed()) {
      // Stretches that were over before the newest found can hold none newer.
      if (newest !== null && untilAt !== null && untilAt <= newest) continue;
      if (fromAt !== null && fromAt > at) continue;
      const bound = Math.min(at + 1, untilAt ?? at + 1);
      const found = readings.readingBefore(sensorKey, quantity, bound, flags.timeUnknown);
      if (!found || (fromAt !== null && found.at < fromAt)) continue;
      if (newest === null || found.at > newest) newest = found.at;
    }
    return newest;
  }

  function oldestAfter(placeId: string, quantity: Followed, at: number): number | null {
    let oldest: number | null = null;
    for (const { sensorKey, fromAt, untilAt } of heard(placeId, quantity)) {
      if (untilAt !== null && untilAt <= at) continue;
      if (oldest !== null && fromAt !== null && fromAt > oldest) continue;
      const bound = Math.max(at, fromAt === null ? at : fromAt - 1);
      const found = readings.readingAfter(sensorKey, quantity, bound, flags.timeUnknown);
      if (!found || (untilAt !== null && found.at >= untilAt)) continue;
      if (oldest === null || found.at < oldest) oldest = found.at;
    }
    return oldest;
  }

  /**
   * The samples of a stretch, with the last one at or before its start and the first at or after
   * its end where there are such.
   */
  function samples(placeId: string, quantity: Followed, from: number, to: number): Sample[] {
    const before = newestUpTo(placeId, quantity, from);
    const start = (before ?? from) - 2 * holdMs;
    let end = to;
    for (;;) {
      const all = placeSeries(
        collect(placeId, quantity, start, end),
        holdMs,
        followed[quantity],
      ).samples;
      const next =
        (all.at(-1)?.at ?? Number.NEGATIVE_INFINITY) >= to
          ? null
          : oldestAfter(placeId, quantity, end);
      if (next === null) return trimmed(all, from, to);
      // A reading that a nearer sensor silences is no sample: look past the time it is silenced for.
      end = end === to ? next : next + holdMs;
    }
  }

  function rebuild(placeId: string, quantity: Followed): Tail {
    const newest = newestUpTo(placeId, quantity, Number.MAX_SAFE_INTEGER - 1);
    const tail: Tail = { held: new Map(), lastHeardAt: newest, last: null };
    if (newest !== null) {
      const recent = placeSeries(
        collect(placeId, quantity, newest - 2 * holdMs, newest),
        holdMs,
        followed[quantity],
      );
      tail.held = recent.held;
      tail.last = recent.samples.at(-1) ?? null;
    }
    tails.set(tailKey(placeId, quantity), tail);
    return tail;
  }

  const tailOf = (placeId: string, quantity: Followed) =>
    tails.get(tailKey(placeId, quantity)) ?? rebuild(placeId, quantity);

  /** What a place’s value was at one moment; null where every reading was too old by then. */
  function valueAt(placeId: string, quantity: Followed, at: number): Sample | null {
    const standing = heard(placeId, quantity).flatMap((sensor): HeardReading[] => {
      if (sensor.untilAt !== null && sensor.untilAt <= at) return [];
      if (sensor.fromAt !== null && sensor.fromAt > at) return [];
      const found = readings.readingBefore(sensor.sensorKey, quantity, at + 1, flags.timeUnknown);
      if (!found || at - found.at > holdMs) return [];
      if (sensor.fromAt !== null && found.at < sensor.fromAt) return [];
      const { sensorKey, level, untilAt } = sensor;
      return [{ sensorKey, level, untilAt, at, value: corrected(found) }];
    });
    return hear(new Map(), standing, holdMs, followed[quantity]);
  }

  return {
    samples,
    /** Every stretch in which a sensor speaks for a place. */
    heard: heard as (placeId: string, quantity: Followed) => readonly HeardSensor[],
    /** The value at steps through a stretch, looked up one by one: cheap where readings are many. */
    sparse(placeId: string, quantity: Followed, from: number, to: number, stepMs: number) {
      const values: Sample[] = [];
      if (tailOf(placeId, quantity).last === null) return values;
      for (let at = from; at < to; at += stepMs) {
        const sample = valueAt(placeId, quantity, at);
        if (sample) values.push(sample);
      }
      return values;
    },
    /** Time of the newest reading up to a moment that was heard at a place; null without one. */
    newestUpTo,
    /** Whether more than one sensor can speak for a place, so that one reading sways others. */
    isShared: (placeId: string): boolean => {
      const { places, stays } = facts();
      return new Set(sensorsHeard(places, stays, placeId).map((one) => one.sensorKey)).size > 1;
    },
    latest: (placeId: string, quantity: Followed): Sample | null => tailOf(placeId, quantity).last,
    /** How far apart the sensors are that speak there now; null when fewer than two do. */
    apart: (placeId: string, quantity: Followed): number | null =>
      apartNow(tailOf(placeId, quantity).held),
    lastHeardAt: (placeId: string, quantity: Followed) => tailOf(placeId, quantity).lastHeardAt,
    /** The nearest place whose sensors spoke last; null when none did. */
    speaker: (placeId: string): number | null => {
      const { held, last } = tailOf(placeId, 'air-temperature');
      if (!last) return null;
      return Math.min(...[...held.values()].map((reading) => reading.level));
    },
    /**
     * Carries a place’s series on; a reading that is not newer than all before is left to the
     * recomputation that its commit asked for.
     */
    feed(placeId: string, quantity: Followed, arrived: readonly HeardReading[]): Step[] {
      const tail = tails.get(tailKey(placeId, quantity));
      if (!tail) return [];
      const steps: Step[] = [];
      for (const moment of moments(arrived)) {
        const at = moment[0]?.at ?? 0;
        if (tail.lastHeardAt !== null && at <= tail.lastHeardAt) continue;
        tail.lastHeardAt = at;
        const sample = hear(tail.held, moment, holdMs, followed[quantity]);
        if (!sample) continue;
        steps.push({ placeId, quantity, from: tail.last, to: sample });
        tail.last = sample;
      }
      return steps;
    },
    rebuild: (placeId: string): void => {
      for (const quantity of Object.keys(followed) as Followed[]) {
        if (tails.has(tailKey(placeId, quantity))) rebuild(placeId, quantity);
      }
    },
    /** Called when places, stays, calibrations or faults changed. */
    forget(): void {
      tails.clear();
      heardOf.clear();
    },
  };
}
export type PlaceAirReader = ReturnType<typeof placeAir>;

function trimmed(samples: Sample[], from: number, to: number): Sample[] {
  let start = 0;
  for (let i = 0; i < samples.length && (samples[i]?.at ?? to) <= from; i++) start = i;
  const end = samples.findIndex((sample) => sample.at >= to);
  return samples.slice(start, end === -1 ? undefined : end + 1);
}
