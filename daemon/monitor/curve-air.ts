import type { Quantity } from '../contract/quantity.ts';
import { calibratedFrom } from '../rules/calibrated-from.ts';
import { hourMs } from '../rules/cure-span.ts';
import {
  type CurveGrid,
  type CurveSpread,
  emptySpread,
  type HourExtremes,
  isEmpty,
  mergeSpread,
  speakingHours,
  spreadOfHours,
  spreadOfSamples,
  takeHour,
  takeOutline,
  unknownHours,
} from '../rules/curve-grid.ts';
import type { Sample } from '../rules/place-series.ts';
import { thinOut } from '../rules/thin-out.ts';
import { type Followed, followed } from './followed.ts';
import { heardMoments } from './heard-moments.ts';
import type { PlaceAirReader } from './place-air.ts';
import type { Corrected, FlagBits, OutlineSource, ReadingSource } from './ports.ts';
import type { SiteFacts } from './site-facts.ts';
import type { WoodProbes } from './wood-probes.ts';

/** A stretch of a curve at one place. */
export interface CurveStay {
  readonly placeId: string;
  readonly fromAt: number;
  readonly toAt: number;
}

interface CurveParts {
  facts: () => SiteFacts;
  readings: ReadingSource & OutlineSource;
  corrected: Corrected;
  flags: FlagBits;
  air: PlaceAirReader;
  wood: WoodProbes;
  gapMs: number;
}

/** Moistures of resistances that one curve makes: each asks for the temperature of its time. */
const mostDerived = 400;
/** Moisture changes over days: pins that speak once a day have no gap. Assumption. */
const moistureGapMs = 25 * hourMs;

const dayMs = 24 * hourMs;
/** So many points of an outline of days for each stretch. */
const pointsAStep = 4;

/** Curves of places and sensors; long ones from the extremes of hours, without their readings. */
export function curveAir(parts: CurveParts) {
  const { facts, readings, corrected, flags, air, wood, gapMs } = parts;
  const isByHour = (grid: CurveGrid) =>
    grid.stepMs >= hourMs && readings.hourExtremes !== undefined;
  const isDated = (reading: { flags: number }) => (reading.flags & flags.timeUnknown) === 0;

  /** The lowest and highest of each hour of one sensor, corrected. */
  function hoursOf(
    sensorKey: number,
    quantity: Quantity,
    from: number,
    to: number,
    grid: CurveGrid,
  ): HourExtremes {
    const changes = calibratedFrom(facts().calibrations, sensorKey, quantity);
    const of = (at: number, raw: number) => corrected({ sensorKey, quantity, at, raw });
    const hours = unknownHours(grid);
    if (grid.stepMs > dayMs) {
      const points = pointsAStep * grid.count;
      const outline = readings.readingOutline?.(sensorKey, quantity, from, to, points, changes);
      if (outline?.stretches === 'days') {
        const known = outline.points.map(({ at, raw }) => ({ at, raw: of(at, raw) }));
        takeOutline(hours, { points: known, spans: outline.spans });
        return hours;
      }
    }
    readings.hourExtremes?.(sensorKey, quantity, from, to, changes, (hour, at, low, high) =>
      takeHour(hours, hour, of(at, low), of(at, high)),
    );
    return hours;
  }

  function sensorSpread(
    sensorKey: number,
    quantity: Quantity,
    from: number,
    to: number,
    grid: CurveGrid,
    longestGapMs: number,
  ): CurveSpread {
    if (isByHour(grid)) {
      return spreadOfHours(hoursOf(sensorKey, quantity, from, to, grid), grid, longestGapMs);
    }
    const [start, end] = [from - longestGapMs, to + longestGapMs];
    const samples = eachOf(sensorKey, quantity, start, end);
    return spreadOfSamples(samples, grid, longestGapMs, from, to);
  }

  /** All readings of one sensor that have a time, corrected, ascending. */
  function* eachOf(
    sensorKey: number,
    quantity: Quantity,
    from: number,
    to: number,
  ): Generator<Sample> {
    const alone = { sensorKey, level: 0, fromAt: null, untilAt: null };
    for (const [one] of heardMoments(parts, [alone], quantity, from, to)) if (one) yield one;
  }

  /** Moisture of a probe: as it sends it, else made of its resistance. */
  function probeSpread(sensorKey: number, from: number, to: number, grid: CurveGrid): CurveSpread {
    const sent = sensorSpread(sensorKey, 'wood-moisture', from, to, grid, moistureGapMs);
    if (!isEmpty(sent)) return sent;
    const [start, end] = [from - moistureGapMs, to + moistureGapMs];
    const outline = isByHour(grid)
      ? readings.readingOutline?.(
          sensorKey,
          'wood-resistance',
          start,
          end,
          grid.count,
          calibratedFrom(facts().calibrations, sensorKey, 'wood-resistance'),
        )
      : undefined;
    const all =
      outline?.points ??
      readings.readingsBetween(sensorKey, 'wood-resistance', start, end).filter(isDated);
    if (all.length === 0) return sent;
    const kept = thinOut(
      all.map(({ at, raw }) => ({ at, value: raw })),
      mostDerived,
    );
    const samples = kept.map(({ at, value }) => ({
      at,
      value: wood.moistureAt(sensorKey, at, value),
    }));
    return spreadOfSamples(samples, grid, moistureGapMs, from, to);
  }

  function placeSpread(quantity: Followed, stay: CurveStay, grid: CurveGrid): CurveSpread {
    const { placeId, fromAt, toAt } = stay;
    const heard = air.heard(placeId, quantity);
    if (heard.length === 0) return emptySpread(grid);
    if (!isByHour(grid)) {
      const samples = air.eachSample(placeId, quantity, fromAt, toAt);
      return spreadOfSamples(samples, grid, gapMs, fromAt, toAt);
    }
    const sensors = heard.flatMap(({ sensorKey, level, fromAt: since, untilAt }) => {
      const start = Math.max(fromAt, since ?? fromAt);
      const end = Math.min(toAt, untilAt === null ? toAt : untilAt - 1);
      return end < start ? [] : [{ level, hours: hoursOf(sensorKey, quantity, start, end, grid) }];
    });
    return spreadOfHours(speakingHours(sensors, followed[quantity], grid), grid, gapMs);
  }

  /** What the pins at a place tell: where there are several, all of them count. */
  function moistureSpread({ placeId, fromAt, toAt }: CurveStay, grid: CurveGrid): CurveSpread {
    const spread = emptySpread(grid);
    for (const [sensorKey, stays] of facts().stays) {
      for (const [i, stay] of stays.entries()) {
        if (stay.placeId !== placeId) continue;
        const start = Math.max(fromAt, stay.fromAt ?? fromAt);
        const end = Math.min(toAt, (stays[i + 1]?.fromAt ?? toAt + 1) - 1);
        if (end >= start) mergeSpread(spread, probeSpread(sensorKey, start, end, grid));
      }
    }
    return spread;
  }

  const orNull = (spread: CurveSpread) => (isEmpty(spread) ? null : spread);

  function alongStays(
    stays: readonly CurveStay[],
    grid: CurveGrid,
    of: (stay: CurveStay) => CurveSpread,
  ): CurveSpread | null {
    const spread = emptySpread(grid);
    for (const stay of stays) mergeSpread(spread, of(stay));
    return orNull(spread);
  }

  return {
    isByHour,
    /** The air along the places of a stretch. */
    ofPlaces: (stays: readonly CurveStay[], grid: CurveGrid) => ({
      tempC: alongStays(stays, grid, (stay) => placeSpread('air-temperature', stay, grid)),
      rhPercent: alongStays(stays, grid, (stay) => placeSpread('relative-humidity', stay, grid)),
      woodMoisturePercent: alongStays(stays, grid, (stay) => moistureSpread(stay, grid)),
      carbonDioxidePpm: alongStays(stays, grid, (stay) =>
        placeSpread('carbon-dioxide', stay, grid),
      ),
    }),
    /** What one sensor measured, wherever it hung. */
    ofSensor(sensorKey: number, from: number, to: number, grid: CurveGrid) {
      const of = (quantity: Quantity) =>
        orNull(sensorSpread(sensorKey, quantity, from, to, grid, gapMs));
      return {
        tempC: of('air-temperature') ?? of('surface-temperature'),
        rhPercent: of('relative-humidity'),
        woodMoisturePercent: orNull(probeSpread(sensorKey, from, to, grid)),
        carbonDioxidePpm: of('carbon-dioxide'),
      };
    },
  };
}
export type CurveAir = ReturnType<typeof curveAir>;
