import { type HeardSensor, sensorsHeard } from '../rules/place.ts';
import {
  apartNow,
  type HeardReading,
  type Held,
  hear,
  moments,
  nothingHeard,
  type Sample,
} from '../rules/place-series.ts';
import { type Followed, followed } from './followed.ts';
import { placeSamples } from './place-samples.ts';
import type { Corrected, FlagBits, ReadingSource } from './ports.ts';
import type { SiteFacts } from './site-facts.ts';

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

  const look = placeSamples({ readings, corrected, flags, heard, holdMs });
  const { eachSample, sampleUpTo, newestUpTo, standing } = look;

  function rebuild(placeId: string, quantity: Followed): Tail {
    const newest = newestUpTo(placeId, quantity, Number.MAX_SAFE_INTEGER - 1);
    const tail: Tail = { held: nothingHeard(), lastHeardAt: newest, last: null };
    if (newest !== null) {
      for (const moment of moments(standing(placeId, quantity, newest))) {
        const sample = hear(tail.held, moment, holdMs, followed[quantity]);
        if (sample?.at === newest) tail.last = sample;
      }
      // Where nearer sensors silence the newest reading, the last sample lies further back.
      tail.last ??= sampleUpTo(placeId, quantity, newest);
    }
    tails.set(tailKey(placeId, quantity), tail);
    return tail;
  }

  const tailOf = (placeId: string, quantity: Followed) =>
    tails.get(tailKey(placeId, quantity)) ?? rebuild(placeId, quantity);

  /** What a place’s value was at one moment; null where every reading was too old by then. */
  function valueAt(placeId: string, quantity: Followed, at: number): Sample | null {
    const now = standing(placeId, quantity, at).map((reading) => ({ ...reading, at }));
    return hear(nothingHeard(), now, holdMs, followed[quantity]);
  }

  return {
    eachSample,
    /** The samples of a stretch as `eachSample` gives them; not for one in which a flood may lie. */
    samples: (placeId: string, quantity: Followed, from: number, to: number): Sample[] => [
      ...eachSample(placeId, quantity, from, to),
    ],
    sampleFrom: look.sampleFrom,
    sampleUpTo,
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
      return held.level;
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
