import type { AirChanges, BatchCurves, Curves } from '../contract/curves.ts';
import { gates } from '../contract/gate.ts';
import { toMoment } from '../contract/moment.ts';
import type { CureStay } from '../rules/batch.ts';
import { hourMs } from '../rules/cure-span.ts';
import {
  type CurveGrid,
  type CurveSpread,
  curveGrid,
  middles,
  rounded,
} from '../rules/curve-grid.ts';
import type { CoatFact, NoticeFact } from '../rules/facts.ts';
import { dewPoint } from '../science/air.ts';
import { degreeHoursPerEquivalentHour } from '../science/cure-rate.ts';
import { airChangeHistory } from './air-changes.ts';
import type { AirWatch } from './air-watch.ts';
import type { BatchAssessor } from './assess-batch.ts';
import type { CoatCures } from './coat-cure.ts';
import { sumsAt } from './coat-sum-curve.ts';
import type { CureLedger } from './cure-ledger.ts';
import { type CurveAir, type CurveStay, curveAir } from './curve-air.ts';
import { curveMarks } from './curve-marks.ts';
import { handMoisture } from './hand-moisture.ts';
import type { NamedModel } from './hour-book.ts';
import type { PlaceAirReader } from './place-air.ts';
import type { Corrected, FlagBits, OutlineSource, ReadingSource } from './ports.ts';
import { type SiteFacts, staysOfCoat } from './site-facts.ts';
import { sumAhead } from './sum-ahead.ts';
import type { WoodProbes } from './wood-probes.ts';

/** What a curve is asked for; times in UTC epoch ms, null for the usual ones. */
export interface CurveSpan {
  from: number | null;
  to: number | null;
  points: number;
}

interface CurvesParts {
  facts: () => SiteFacts;
  readings: ReadingSource & OutlineSource;
  notices: () => NoticeFact[];
  corrected: Corrected;
  flags: FlagBits;
  air: PlaceAirReader;
  airing: AirWatch;
  wood: WoodProbes;
  ledger: CureLedger;
  cures: CoatCures;
  assess: BatchAssessor;
  ruling: NamedModel;
  gapMs: number;
  breathe: () => Promise<void>;
}

/** Time that is shown when nobody asks for another. */
const usualMs = 7 * 24 * hourMs;
/** Time before the coat, so that a fresh one has a curve beside it. */
const leadMs = 6 * hourMs;
/** Below this humidity no dew point is worth naming, and a sensor is broken. */
const leastRhPercent = 1;

/** Curves for whoever looks: of places, of sensors, of coats. */
export function siteCurves(parts: CurvesParts) {
  const { facts, air, ledger, cures, assess, ruling } = parts;
  const curves: CurveAir = curveAir(parts);
  const marks = curveMarks(parts);
  const byHand = handMoisture(facts);
  const changes = airChangeHistory(parts);
  const perHour = degreeHoursPerEquivalentHour(ruling.model);

  function reply(
    grid: CurveGrid,
    from: number,
    to: number,
    spreads: ReturnType<CurveAir['ofPlaces']>,
  ): Omit<Curves, 'marks'> {
    const { tempC, rhPercent } = spreads;
    return {
      from: toMoment(from),
      to: toMoment(to),
      stepS: grid.stepMs / 1000,
      byHour: curves.isByHour(grid),
      at: middles(grid).map((at) => at / 1000),
      tempC: tidy(tempC),
      rhPercent: tidy(rhPercent),
      dewPointC: tempC && rhPercent ? rounded(dewPoints(tempC, rhPercent)) : null,
      woodMoisturePercent: tidy(spreads.woodMoisturePercent),
      carbonDioxidePpm: tidy(spreads.carbonDioxidePpm),
    };
  }

  /** Sums on a grid; null before the coat, in gaps of the air, and after the last reading. */
  function sumsOn(stays: readonly CureStay[], grid: CurveGrid, tempC: CurveSpread | null) {
    const startAt = stays[0]?.fromAt ?? Number.POSITIVE_INFINITY;
    const endAt = stays.at(-1)?.toAt ?? Number.POSITIVE_INFINITY;
    const all = middles(grid);
    const asked = all.filter((at) => at >= startAt && at <= endAt);
    const first = all.findIndex((at) => at >= startAt);
    const sums = sumsAt({ ledger, air, named: ruling }, stays, asked);
    const column = (of: 'low' | 'capped') =>
      all.map((_, i) => {
        const sum = first === -1 ? undefined : sums[i - first];
        const isGap = tempC === null || tempC.mean[i] === null;
        return i < first || isGap || !sum ? null : sum[of] * perHour;
      });
    return { degreeHours: rounded(column('low')), countedDegreeHours: rounded(column('capped')) };
  }

  return {
    ofPlace(placeId: string, { from, to, points }: CurveSpan, now: number): Curves {
      const end = to ?? now;
      const start = from ?? end - usualMs;
      const grid = curveGrid(start, end, points);
      const stays: CurveStay[] = [{ placeId, fromAt: start, toAt: end }];
      return {
        ...reply(grid, start, end, curves.ofPlaces(stays, grid)),
        handMoisture: byHand.ofPlace(placeId, start, end),
        marks: marks.ofPlace(placeId, start, end),
      };
    },
    ofSensor(sensorKey: number, { from, to, points }: CurveSpan, now: number): Curves {
      const end = to ?? now;
      const start = from ?? end - usualMs;
      const grid = curveGrid(start, end, points);
      const { id } = facts().sensors.get(sensorKey) ?? { id: '' };
      return {
        ...reply(grid, start, end, curves.ofSensor(sensorKey, start, end, grid)),
        marks: marks.ofSensor(id, start, end),
      };
    },
    /** @param coat - null for a batch without any */
    ofBatch(
      batchId: string,
      coat: CoatFact | null,
      { from, to, points }: CurveSpan,
      now: number,
    ): BatchCurves {
      const stays = coat === null ? [] : staysOfCoat(facts(), coat);
      const end = to ?? Math.min(stays.at(-1)?.toAt ?? now, now);
      const start = Math.min(
        end,
        from ?? (coat === null ? end - usualMs : coat.finishedAt - leadMs),
      );
      const grid = curveGrid(start, end, points);
      const along = stays.map(({ placeId, fromAt, toAt }, i) => ({
        placeId,
        fromAt: i === 0 ? start : Math.max(start, fromAt),
        toAt: Math.min(end, toAt ?? end),
      }));
      const shown = along.filter(({ fromAt, toAt }) => toAt >= fromAt);
      const spreads = curves.ofPlaces(shown, grid);
      const placeIds = new Set(stays.map(({ placeId }) => placeId));
      return {
        ...reply(grid, start, end, spreads),
        handMoisture: byHand.ofBatch(batchId, start, end),
        marks: marks.ofBatch(batchId, placeIds, start, end),
        batchId,
        coatId: coat?.id ?? null,
        ...sumsOn(stays, grid, spreads.tempC),
        ahead: coat === null ? null : aheadOf(coat, now),
      };
    },
    airChanges: (placeId: string, span: CurveSpan, now: number): Promise<AirChanges> => {
      const end = span.to ?? now;
      return changes.between(placeId, span.from ?? end - usualMs, end, now);
    },
    forget: changes.forget,
  };

  function aheadOf(coat: CoatFact, now: number): BatchCurves['ahead'] {
    const cure = cures.cureOf(coat, now);
    if (cure.outlooks === null) return null;
    const { gates: verdicts } = assess.coat(coat, now);
    const needed = gates.map((gate) => verdicts[gate].requiredDegreeHours.late);
    return sumAhead(cure, Math.max(...needed));
  }
}
export type SiteCurves = ReturnType<typeof siteCurves>;

const tidy = (spread: CurveSpread | null) =>
  spread && {
    low: rounded(spread.low),
    mean: rounded(spread.mean),
    high: rounded(spread.high),
  };

const dewPoints = (tempC: CurveSpread, rhPercent: CurveSpread) =>
  tempC.mean.map((value, i) => {
    const damp = rhPercent.mean[i];
    return value === null || damp == null || damp < leastRhPercent
      ? null
      : dewPoint(value, Math.min(100, damp), { over: 'water' });
  });
