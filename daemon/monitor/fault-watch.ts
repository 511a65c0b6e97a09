import type { Quantity } from '../contract/quantity.ts';
import { quantities } from '../contract/quantity.ts';
import type { ReadingFact } from '../rules/facts.ts';
import { faultFinder, type Surroundings } from '../rules/fault/fault-finder.ts';
import { airSources, stayAt } from '../rules/place.ts';
import type { FaultFact } from '../rules/sensor-facts.ts';
import type { Corrected, FlagBits, ReadingSource } from './ports.ts';
import { readingPages } from './reading-pages.ts';
import type { SiteFacts } from './site-facts.ts';

export interface FaultKeeper {
  /** Settles when all of it is kept, and the hours it changes are marked. */
  changeFaults(
    begun: FaultFact[],
    ended: { id: string; untilAt: number }[],
    at: number,
  ): Promise<void>;
}

interface FaultParts {
  facts: () => SiteFacts;
  readings: ReadingSource;
  corrected: Corrected;
  flags: FlagBits;
  keeper: FaultKeeper;
  newId: () => string;
  /** Told when faults were recorded. */
  changed: () => void;
  failed: (cause: unknown) => void;
  /** Lets others have their turn while much is read; left out, nobody waits. */
  breathe?: () => Promise<void>;
}

const hourMs = 3_600_000;
/** What a sensor did over so long is looked at again after a start, h. */
const lookBackHours = 36;
/** Faults that began further back than this are taken up as they were, h. */
const mostBackHours = 240;
/** Fewer sensors at the place itself than this, and those of the room are asked as well. */
const fewAbout = 2;

/** Finds faults in what sensors send, and keeps them as facts. */
export function faultWatch(parts: FaultParts) {
  const { facts, readings, corrected, flags, keeper, newId } = parts;
  const known = new Map<number, Surroundings>();
  let finder = faultFinder(surroundings);
  let upSince: number | null = null;
  let keeping = false;

  function placeOf(sensorKey: number): string | null {
    return stayAt(facts().stays.get(sensorKey) ?? [], Number.MAX_SAFE_INTEGER)?.placeId ?? null;
  }

  function surroundings(sensorKey: number): Surroundings {
    let around = known.get(sensorKey);
    if (!around) {
      around = lookAround(sensorKey);
      known.set(sensorKey, around);
    }
    return around;
  }

  function lookAround(sensorKey: number): Surroundings {
    const { places, sensors, stays } = facts();
    const placeId = placeOf(sensorKey);
    const sensor = sensors.get(sensorKey);
    const name = sensor?.name ?? sensor?.id ?? '';
    if (placeId === null) return { placeId, kind: null, name, about: [] };
    const others = [...stays.keys()].filter((key) => key !== sensorKey);
    const here = others.filter((key) => placeOf(key) === placeId);
    const roomOf = (id: string | null) =>
      id === null
        ? undefined
        : airSources(places, id).find((source) => places.get(source)?.kind === 'room');
    const room = roomOf(placeId);
    const about =
      here.length >= fewAbout || room === undefined
        ? here
        : others.filter((key) => roomOf(placeOf(key)) === room);
    return { placeId, kind: places.get(placeId)?.kind ?? null, name, about };
  }

  function take(reading: ReadingFact, heardAt: number | null): void {
    if ((reading.flags & flags.timeUnknown) !== 0) return;
    const { sensorKey, quantity, at, raw } = reading;
    const told = reading.flags === 0 ? heardAt : null;
    finder.take({ sensorKey, quantity, at, raw, value: corrected(reading), heardAt: told });
  }

  /** Reads again what sensors sent of late, as if it came in now. */
  async function warmUp(now: number): Promise<void> {
    const open = facts().faults.filter(({ untilAt }) => untilAt === null);
    const oldest = Math.min(now, ...open.map(({ fromAt }) => fromAt));
    const from = Math.max(oldest - lookBackHours * hourMs, now - mostBackHours * hourMs);
    const series = [...facts().sensors.keys()].flatMap((key) =>
      quantities
        .filter((quantity) => readings.readingBefore(key, quantity, now + hourMs, 0) !== null)
        .map((quantity): [number, Quantity] => [key, quantity]),
    );
    for (const page of readingPages(readings, series, from, now + hourMs)) {
      for (const reading of page) take(reading, null);
      await parts.breathe?.();
    }
    for (const fault of open) finder.resume(fault);
  }

  /** Writes down what changed. */
  async function keep(keys: readonly number[], at: number): Promise<boolean> {
    const begun: FaultFact[] = [];
    const ended: { id: string; untilAt: number }[] = [];
    for (const sensorKey of keys) {
      const open = facts().faults.filter(
        (fault) => fault.sensorKey === sensorKey && fault.untilAt === null,
      );
      for (const { kind, quantity, standing, overAt } of finder.findingsOf(sensorKey)) {
        const fault = open.find((one) => one.kind === kind && one.quantity === quantity);
        if (standing && !fault) {
          begun.push({ id: newId(), sensorKey, quantity, kind, ...standing, untilAt: null });
        } else if (!standing && fault && overAt !== null) {
          ended.push({ id: fault.id, untilAt: Math.max(overAt, fault.fromAt) });
        }
      }
    }
    if (begun.length + ended.length === 0) return false;
    await keeper.changeFaults(begun, ended, at);
    parts.changed();
    return true;
  }

  /** Keeps what changed, and what changes meanwhile; one at a time, so that nothing is kept twice. */
  async function settle(at: number): Promise<boolean> {
    if (keeping) return false;
    keeping = true;
    try {
      let isChanged = false;
      for (let keys = finder.stirred(); keys.length > 0; keys = finder.stirred()) {
        isChanged = (await keep(keys, at)) || isChanged;
      }
      return isChanged;
    } finally {
      keeping = false;
    }
  }

  return {
    /** Takes in what a commit brought. @param heardAt - when; null where that tells nothing */
    committed(fresh: readonly ReadingFact[], heardAt: number | null): void {
      // Before the first look all of it is read from the store.
      if (upSince === null) return;
      for (const reading of fresh) take(reading, heardAt);
      const at = heardAt ?? fresh.at(-1)?.at ?? 0;
      settle(at).catch(parts.failed);
    },

    /** Looks at what shows by time going by; true when something was found or is over. */
    async look(now: number): Promise<boolean> {
      if (upSince === null) {
        await warmUp(now);
        upSince = now;
      }
      finder.lookAround(now, upSince);
      return settle(now);
    },

    /** Takes note of a figure that was refused, because it can be no reading. */
    impossible(sensorId: string, quantity: Quantity, raw: number, at: number): void {
      if (upSince === null) return;
      const sensor = [...facts().sensors.values()].find(({ id }) => id === sensorId);
      // What never sent a reading is no sensor yet.
      if (!sensor) return;
      finder.takeImpossible(sensor.key, quantity, at, raw);
      settle(at).catch(parts.failed);
    },

    /** Called when places, stays or calibrations changed. */
    factsChanged(before: SiteFacts): void {
      known.clear();
      const { stays, calibrations, sensors } = facts();
      const of = (all: SiteFacts['calibrations'], key: number) =>
        JSON.stringify(all.filter((one) => one.sensorKey === key));
      for (const key of sensors.keys()) {
        const isSame =
          JSON.stringify(before.stays.get(key)) === JSON.stringify(stays.get(key)) &&
          of(before.calibrations, key) === of(calibrations, key);
        if (!isSame) finder.begunAnew(key);
      }
    },

    /** Forgets all that was made of readings. */
    startOver(): void {
      known.clear();
      finder = faultFinder(surroundings);
      upSince = null;
    },
  };
}
