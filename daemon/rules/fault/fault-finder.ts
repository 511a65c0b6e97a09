import type { PlaceKind } from '../../contract/place.ts';
import type { Quantity } from '../../contract/quantity.ts';
import type { FaultKind } from '../../contract/sensor-fault.ts';
import { binMean, middle } from './bins.ts';
import { beganWithJump, keepDistance, lookForDrift } from './drift.ts';
import { end, type NamedFinding, raise, type Standing } from './finding.ts';
import { lookAtBattery } from './low-battery.ts';
import { leastChanges, moved } from './other-sensors.ts';
import { impossible } from './out-of-physics.ts';
import { lookIfPinned } from './pinned-humidity.ts';
import { isTrusted, type SensorSeries, takeAlone } from './sensor-series.ts';
import { heardFrom, lookForSilence } from './silent.ts';
import { lookIfStuck } from './stuck.ts';
import { swapWatch } from './swap-watch.ts';
import { lookAtTime } from './time-wrong.ts';
import {
  compareAnew,
  findingOn,
  findingsOn,
  isStirred,
  newWatched,
  seriesOf,
  settle,
  type Watched,
} from './watched-sensor.ts';

/** A reading as a fault finder hears it. */
export interface WatchedReading {
  sensorKey: number;
  quantity: Quantity;
  at: number;
  raw: number;
  /** As it is reckoned with. */
  value: number;
  /** When it arrived; null where that tells nothing of its sensor’s clock. */
  heardAt: number | null;
}

/** Where a sensor hangs, and which others hang about it. */
export interface Surroundings {
  placeId: string | null;
  kind: PlaceKind | null;
  name: string;
  /** Sensors of the same place; where there are fewer than two, of the same room. */
  about: readonly number[];
}

/** A fault as it was found once. */
export interface ResumedFault extends Omit<Standing, 'told'> {
  told?: Standing['told'];
  sensorKey: number;
  quantity: Quantity | null;
  kind: FaultKind;
}

/** Closer readings of one series tell nothing more of its sensor, and a flood is to cost little. */
const leastApartMs = 5000;
/** Two quantities of one chip: when both rest, the chip does. */
const companions: Partial<Record<Quantity, Quantity>> = {
  'air-temperature': 'relative-humidity',
  'relative-humidity': 'air-temperature',
};

/**
 * Finds faults of sensors in what they send. Each reading costs the same however long the record is:
 * what is remembered of a sensor is of a fixed size.
 *
 * @param surroundings - where a sensor hangs now
 */
export function faultFinder(surroundings: (sensorKey: number) => Surroundings) {
  const watched = new Map<number, Watched>();
  const stirred = new Set<number>();
  const swaps = swapWatch();

  function watchedOf(sensorKey: number): Watched {
    const one = watched.get(sensorKey) ?? newWatched();
    watched.set(sensorKey, one);
    return one;
  }

  /** Series of the same quantity about a sensor that can be believed. */
  function othersOf(sensorKey: number, quantity: Quantity): SensorSeries[] {
    const others: SensorSeries[] = [];
    for (const key of surroundings(sensorKey).about) {
      const series = watched.get(key)?.series.get(quantity);
      if (series && isTrusted(series)) others.push(series);
    }
    return others;
  }

  function holdAgainstOthers(sensorKey: number, series: SensorSeries): void {
    const { quantity, bins, distance, drift } = series;
    const bin = bins.open - 1;
    const others = othersOf(sensorKey, quantity);
    // The others may not have closed that bin yet: the one before is known of all.
    const theirs = (b: number) =>
      others.map((other) => binMean(other.bins, b)).filter((mean) => !Number.isNaN(mean));
    for (let b = Math.max(distance.lastBin + 1, bin - 6); b < bin; b++) {
      const means = theirs(b);
      const apart = means.length >= 2 ? binMean(bins, b) - middle(means) : Number.NaN;
      keepDistance(distance, quantity, b, apart, drift.standing !== null);
      if (drift.standing === null) series.leftByJump = false;
      if (series.stuck.standing !== null) continue;
      lookForDrift(
        drift,
        distance,
        quantity,
        others.map((other) => other.distance.away),
      );
      if (drift.standing !== null && !series.leftByJump) {
        series.leftByJump = beganWithJump(drift.standing.fromAt, series.steps.jumps);
      }
    }
    const { placeId, name } = surroundings(sensorKey);
    if (placeId !== null) swaps.look(quantity, { sensorKey, name, placeId, bins }, bin);
  }

  function takeIn({ sensorKey, quantity, at, raw, value, heardAt }: WatchedReading): void {
    const one = watchedOf(sensorKey);
    const series = seriesOf(one, quantity);
    heardFrom(one.silence, at, heardAt ?? at);
    // Also where it is older than what was heard: a clock that was set back is behind all the while.
    if (heardAt !== null) lookAtTime(one.timeWrong, one.ownTime, at, heardAt);
    if (at - series.lastAt < leastApartMs) return;
    if (quantity === 'battery') {
      series.lastAt = at;
      lookAtBattery(one.lowBattery, one.battery, at, raw);
      return;
    }
    const closed = takeAlone(series, at, raw, value);
    const others = othersOf(sensorKey, quantity);
    if (quantity === 'relative-humidity') {
      const shown = others.length > 0 ? middle(others.map((other) => other.last)) : null;
      lookIfPinned(
        series.pinnedHumidity,
        series.pinned,
        at,
        raw,
        shown,
        surroundings(sensorKey).kind,
      );
    }
    // At the top of its range it repeats one figure by nature.
    if (series.pinned.sinceAt === null) {
      const companion = companions[quantity];
      lookIfStuck(series.stuck, quantity, series.run, {
        companion: (companion && one.series.get(companion)) ?? null,
        othersChanged: (sinceAt) => leastChanges(others, sinceAt),
        othersMoved: (sinceAt) => moved(others, sinceAt, at),
      });
    }
    // A sensor that repeats itself is left by the others, not the other way round.
    if (series.stuck.standing !== null) end(series.drift, series.stuck.standing.fromAt);
    if (closed) holdAgainstOthers(sensorKey, series);
  }

  function noteStirred(sensorKey: number): void {
    const one = watched.get(sensorKey);
    if (!one) return;
    if (isStirred(one)) stirred.add(sensorKey);
    for (const key of swaps.stirred()) stirred.add(key);
  }

  return {
    /** Takes in a reading; one that is older than what was heard tells nothing new. */
    take(reading: WatchedReading): void {
      takeIn(reading);
      noteStirred(reading.sensorKey);
    },

    /** Takes note of a figure that was refused at the door, because it can be no reading. */
    takeImpossible(sensorKey: number, quantity: Quantity, at: number, raw: number): void {
      const one = watchedOf(sensorKey);
      const { outOfPhysics, possible } = seriesOf(one, quantity);
      heardFrom(one.silence, at, at);
      impossible(outOfPhysics, possible, quantity, at, raw);
      noteStirred(sensorKey);
    },

    /** Looks at what shows by time going by. @param upSince - nobody listened before */
    lookAround(now: number, upSince: number): void {
      for (const [sensorKey, one] of watched) {
        lookForSilence(one.silence, now, upSince);
        if (settle(one.silence)) stirred.add(sensorKey);
      }
    },

    /** Everything that is said of a sensor now. */
    findingsOf(sensorKey: number): NamedFinding[] {
      const one = watched.get(sensorKey);
      if (!one) return [];
      return findingsOn(sensorKey, one, swaps.findingOf(sensorKey));
    },

    /** Sensors of whom something else is to be said since this was asked last. */
    stirred(): number[] {
      const keys = [...stirred];
      stirred.clear();
      return keys;
    },

    /** Takes up a fault that was found before a restart, where what was read since does not show it. */
    resume({ sensorKey, quantity, kind, fromAt, says, told }: ResumedFault): void {
      const one = watchedOf(sensorKey);
      const finding =
        kind === 'swapped-places' ? swaps.findingOf(sensorKey) : findingOn(one, kind, quantity);
      if (finding && finding.overAt === null) {
        raise(finding, fromAt, told ? { ...told, text: says } : { code: kind, text: says });
      }
    },

    /** Begins anew with the comparisons of a sensor: it was moved or calibrated. */
    begunAnew(sensorKey: number): void {
      swaps.forget(sensorKey);
      const one = watched.get(sensorKey);
      if (!one) return;
      stirred.add(sensorKey);
      compareAnew(one);
    },
  };
}
export type FaultFinder = ReturnType<typeof faultFinder>;
