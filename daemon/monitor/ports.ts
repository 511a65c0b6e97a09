import type { Quantity } from '../contract/quantity.ts';
import type {
  BatchFact,
  CoatFact,
  HandReadingFact,
  LockUpTickFact,
  MoveFact,
  NoticeFact,
  OutdoorForecastPoint,
  PlaceFact,
  PlanFact,
  ReadingFact,
  RemarkFact,
  TouchTestFact,
} from '../rules/facts.ts';
import type { DirtySpan, HourBlock, HourRange, HourSum } from '../rules/hour-facts.ts';
import type { ReadingOutline } from '../rules/reading-outline.ts';
import type { ReadingRun } from '../rules/reading-run.ts';
import type { CalibrationFact, FaultFact, SensorFact, SensorStay } from '../rules/sensor-facts.ts';
import type {
  CoatingFact,
  CoatingStepFact,
  MergeFact,
  MountingTickFact,
  SplitFact,
  TinFact,
} from '../rules/trade-facts.ts';

/* What the monitor needs of the outside; handed over by main. */

export interface ReadingSource {
  /** @param limit - the first so many; all when left out */
  readingsBetween(
    sensorKey: number,
    quantity: Quantity,
    from: number,
    to: number,
    limit?: number,
  ): ReadingFact[];
  /** The same as columns. */
  readingRun(
    sensorKey: number,
    quantity: Quantity,
    from: number,
    to: number,
    limit: number,
  ): ReadingRun;
  readingBefore(
    sensorKey: number,
    quantity: Quantity,
    at: number,
    without: number,
  ): ReadingFact | null;
  readingAfter(
    sensorKey: number,
    quantity: Quantity,
    at: number,
    without: number,
  ): ReadingFact | null;
}

/**
 * The extremes of each hour, or of days where the time is long, where they are kept: a long curve needs
 * no more. None speaks for both sides of a change of calibration.
 */
export interface OutlineSource {
  readingOutline?(
    sensorKey: number,
    quantity: Quantity,
    from: number,
    to: number,
    points: number,
    changes: readonly number[],
  ): ReadingOutline;
  /**
   * The extremes of every hour, in any order; those of one hour may be told in parts.
   *
   * @param take - called with hours since the epoch, a moment whose calibration is that of both extremes
   *   (epoch ms), the lowest and the highest
   */
  hourExtremes?(
    sensorKey: number,
    quantity: Quantity,
    from: number,
    to: number,
    changes: readonly number[],
    take: (hour: number, at: number, low: number, high: number) => void,
  ): void;
}

export interface FactSource {
  places(): PlaceFact[];
  sensors(): SensorFact[];
  sensorStays(): SensorStay[];
  /** Those that stand, in the order they were recorded. */
  calibrations(): CalibrationFact[];
  /** All that were ever found. */
  faults(): FaultFact[];
  plans(): PlanFact[];
  batches(): BatchFact[];
  moves(): MoveFact[];
  coats(): CoatFact[];
  tests(): TouchTestFact[];
  remarks(): RemarkFact[];
  handReadings(): HandReadingFact[];
  notices(): NoticeFact[];
  lockUpTicks(): LockUpTickFact[];
  splits(): SplitFact[];
  merges(): MergeFact[];
  mountingTicks(): MountingTickFact[];
  tins(): TinFact[];
  coatings(): CoatingFact[];
  coatingSteps(): CoatingStepFact[];
  /** The newest weather forecast for outdoors; empty without one. */
  outdoorForecast(): OutdoorForecastPoint[];
}

export interface HourSource {
  hourRange(placeId: string, model: string): HourRange | null;
  hoursBetween(placeId: string, model: string, fromHour: number, toHour: number): HourSum[];
  dirtySpans(): DirtySpan[];
}

export interface HourKeeper {
  saveHours(blocks: HourBlock[], settledRanks: number[]): Promise<void>;
}

/** Bits of the flags on readings that the monitor heeds. */
export interface FlagBits {
  timeUnknown: number;
}

/** The value of a reading to reckon with, from the raw one and the calibration in force then. */
export type Corrected = (
  reading: Pick<ReadingFact, 'sensorKey' | 'quantity' | 'at' | 'raw'>,
) => number;

/** Makes the correction that calibrations amount to. */
export type Correction = (calibrations: readonly CalibrationFact[]) => Corrected;
