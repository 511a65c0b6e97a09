import type { HeardSensor } from '../rules/place.ts';
import {
  type HeardReading,
  type Held,
  nothingHeard,
  placeSeries,
  type Sample,
} from '../rules/place-series.ts';
import { type Followed, followed } from './followed.ts';
import { heardMoments } from './heard-moments.ts';
import type { Corrected, FlagBits, ReadingSource } from './ports.ts';

interface SamplesParts {
  readings: ReadingSource;
  corrected: Corrected;
  flags: FlagBits;
  /** Every stretch in which a sensor speaks for a place, the earliest beginning first. */
  heard: (placeId: string, quantity: Followed) => readonly HeardSensor[];
  holdMs: number;
}

/** The samples of places, made from readings whenever they are asked for, one by one. */
export function placeSamples({ readings, corrected, flags, heard, holdMs }: SamplesParts) {
  const hearing = { readings, corrected, flags };

  /** The samples of all that was heard from one time to another, both included. */
  function* series(
    placeId: string,
    quantity: Followed,
    from: number,
    to: number,
    held: Held = nothingHeard(),
  ): Generator<Sample> {
    const said = heardMoments(hearing, heard(placeId, quantity), quantity, from, to);
    yield* placeSeries(said, holdMs, followed[quantity], held);
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

  /** The samples of a series from a time on, made of what is heard from an earlier time on. */
  function* samplesFrom(
    placeId: string,
    quantity: Followed,
    earlier: number,
    to: number,
  ): Generator<Sample> {
    const held = nothingHeard();
    let start = earlier;
    for (let end = to; ; ) {
      yield* series(placeId, quantity, start, end, held);
      const next = oldestAfter(placeId, quantity, end);
      if (next === null) return;
      start = end + 1;
      // A reading that a nearer sensor silences is no sample: look past the time it is silenced for.
      end = end === to ? next : next + holdMs;
    }
  }

  /**
   * The samples of a stretch one by one, with the last one at or before its start and the first at or
   * after its end where there are such.
   */
  function* eachSample(
    placeId: string,
    quantity: Followed,
    from: number,
    to: number,
  ): Generator<Sample> {
    const start = (newestUpTo(placeId, quantity, from) ?? from) - 2 * holdMs;
    let before: Sample | null = null;
    for (const sample of samplesFrom(placeId, quantity, start, to)) {
      if (sample.at > from) {
        if (before) yield before;
        before = null;
        yield sample;
      } else before = sample;
      if (sample.at >= to) break;
    }
    if (before) yield before;
  }

  /** The first sample at a moment or later; null without one. */
  function sampleFrom(placeId: string, quantity: Followed, at: number): Sample | null {
    for (const sample of samplesFrom(placeId, quantity, at - holdMs, at)) {
      if (sample.at >= at) return sample;
    }
    return null;
  }

  /** The last sample at a moment or before; null without one. */
  function sampleUpTo(placeId: string, quantity: Followed, at: number): Sample | null {
    const newest = newestUpTo(placeId, quantity, at);
    if (newest === null) return null;
    let last: Sample | null = null;
    for (const sample of series(placeId, quantity, newest - 2 * holdMs, newest)) last = sample;
    return last;
  }

  /** What every sensor of a place said last, where that stands at a moment. */
  function standing(placeId: string, quantity: Followed, at: number): HeardReading[] {
    return heard(placeId, quantity).flatMap((sensor): HeardReading[] => {
      if (sensor.untilAt !== null && sensor.untilAt <= at) return [];
      if (sensor.fromAt !== null && sensor.fromAt > at) return [];
      const found = readings.readingBefore(sensor.sensorKey, quantity, at + 1, flags.timeUnknown);
      if (!found || at - found.at > holdMs) return [];
      if (sensor.fromAt !== null && found.at < sensor.fromAt) return [];
      const { sensorKey, level, untilAt } = sensor;
      return [{ sensorKey, level, untilAt, at: found.at, value: corrected(found) }];
    });
  }

  return { eachSample, sampleFrom, sampleUpTo, newestUpTo, standing };
}
