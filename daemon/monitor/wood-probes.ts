import type { Species } from '../contract/batch.ts';
import { toMoment } from '../contract/moment.ts';
import type { BoardsProbed, WoodProbe } from '../contract/wood-probe.ts';
import { placeOfBatch } from '../rules/batch.ts';
import type { ReadingFact } from '../rules/facts.ts';
import { stayAt } from '../rules/place.ts';
import {
  assumedWoodC,
  asTold,
  boardsProbed,
  probeMoisture,
  resistanceCurve,
} from '../rules/wood-probe.ts';
import type { PlaceAirReader } from './place-air.ts';
import type { Corrected, FlagBits, ReadingSource } from './ports.ts';
import type { SiteFacts } from './site-facts.ts';

interface ProbeParts {
  facts: () => SiteFacts;
  readings: ReadingSource;
  corrected: Corrected;
  flags: FlagBits;
  air: PlaceAirReader;
  staleMs: number;
}

/** Moisture changes over days: an older reading of pins than this says nothing of now, ms. Assumption. */
const probeStaleMs = 24 * 3_600_000;

type WoodTemp = { tempC: number; from: NonNullable<WoodProbe['woodTempFrom']> };

/** A moisture that was made of a resistance. */
export interface DerivedMoisture {
  at: number;
  /** As the curve says, and as its calibration corrects it, %. */
  raw: number;
  value: number;
}

/**
 * Moisture of timber from the resistance between pins. Nothing of it is kept: it is made when it is
 * asked for, from the resistance, the timber and the temperature of the time, so that a correction of
 * any of them is in it at once.
 */
export function woodProbes({ facts, readings, corrected, flags, air, staleMs }: ProbeParts) {
  const placeAt = (sensorKey: number, at: number) =>
    stayAt(facts().stays.get(sensorKey) ?? [], at)?.placeId ?? null;

  /** Timber that a probe sits in: its own, else that of the batch at its place. */
  function speciesAt(sensorKey: number, at: number): Species | null {
    const { sensors, batches, moves } = facts();
    const own = sensors.get(sensorKey)?.species ?? null;
    const placeId = placeAt(sensorKey, at);
    if (own !== null || placeId === null) return own;
    for (const batch of batches.values()) {
      if (batch.closedAt !== null && batch.closedAt <= at) continue;
      if (placeOfBatch(moves.get(batch.id) ?? [], at) === placeId) return batch.species;
    }
    return null;
  }

  function surfaceAt(sensorKey: number, at: number): number | null {
    const found = readings.readingBefore(
      sensorKey,
      'surface-temperature',
      at + 1,
      flags.timeUnknown,
    );
    return found && at - found.at <= staleMs ? corrected(found) : null;
  }

  /**
   * Temperature of the wood at a moment: of the probe’s own surface thermometer, else of another one
   * at its place, else of the air there, else the one that the curves hold for.
   */
  function woodTempAt(sensorKey: number, at: number): WoodTemp {
    const own = surfaceAt(sensorKey, at);
    if (own !== null) return { tempC: own, from: 'own-surface' };
    const placeId = placeAt(sensorKey, at);
    if (placeId !== null) {
      for (const key of facts().stays.keys()) {
        if (key === sensorKey || placeAt(key, at) !== placeId) continue;
        const other = surfaceAt(key, at);
        if (other !== null) return { tempC: other, from: 'place-surface' };
      }
      const sample = air
        .samples(placeId, 'air-temperature', at, at)
        .findLast((one) => one.at <= at && at - one.at <= staleMs);
      if (sample) return { tempC: sample.value, from: 'air' };
    }
    return { tempC: assumedWoodC, from: 'assumed' };
  }

  function derived(reading: ReadingFact): DerivedMoisture & { wood: WoodTemp } {
    const { sensorKey, at } = reading;
    const wood = woodTempAt(sensorKey, at);
    const tempC = Math.min(100, Math.max(-40, wood.tempC));
    const raw = probeMoisture(corrected(reading), speciesAt(sensorKey, at), tempC);
    const value = corrected({ sensorKey, quantity: 'wood-moisture', at, raw });
    return { at, raw, value, wood };
  }

  /** What a probe tells now; null for a sensor that is none, or has been silent for too long. */
  function probe(sensorKey: number, now: number): WoodProbe | null {
    const newest = (quantity: 'wood-resistance' | 'wood-moisture') => {
      const found = readings.readingBefore(sensorKey, quantity, now + 1, flags.timeUnknown);
      return found && now - found.at <= probeStaleMs ? found : null;
    };
    const sensor = facts().sensors.get(sensorKey)?.id ?? '';
    const resistance = newest('wood-resistance');
    if (resistance) {
      const { value, wood } = derived(resistance);
      const { curve, assumed } = resistanceCurve(speciesAt(sensorKey, resistance.at));
      return {
        ...{ sensor, at: toMoment(resistance.at), ...asTold(value), ohms: corrected(resistance) },
        ...{ curve, curveAssumed: assumed, woodTempC: wood.tempC, woodTempFrom: wood.from },
      };
    }
    const moisture = newest('wood-moisture');
    if (!moisture) return null;
    return {
      ...{ sensor, at: toMoment(moisture.at), ...asTold(corrected(moisture)), ohms: null },
      ...{ curve: null, curveAssumed: false, woodTempC: null, woodTempFrom: null },
    };
  }

  return {
    probe,
    /** The moisture that one resistance amounts to, % of oven-dry mass. */
    moistureAt: (sensorKey: number, at: number, ohms: number): number =>
      derived({ sensorKey, quantity: 'wood-resistance', at, raw: ohms, flags: 0 }).value,
    /** What the pins at a place tell together; null where there are none. */
    at(placeId: string, now: number): BoardsProbed | null {
      const probes = [...facts().stays.keys()].flatMap((key) => {
        if (placeAt(key, now) !== placeId) return [];
        const told = probe(key, now);
        return told ? [told] : [];
      });
      return boardsProbed(probes);
    },
    /** The first `limit` moistures of a probe that sends resistance, ascending. */
    moistureBetween(sensorKey: number, from: number, to: number, limit: number): DerivedMoisture[] {
      return readings
        .readingsBetween(sensorKey, 'wood-resistance', from, to, limit)
        .map((reading) => {
          const { at, raw, value } = derived(reading);
          return { at, raw, value };
        });
    },
  };
}
export type WoodProbes = ReturnType<typeof woodProbes>;
