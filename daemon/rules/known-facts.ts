import type {
  BatchFact,
  CoatFact,
  HandReadingFact,
  MoveFact,
  PlaceFact,
  PlanFact,
  RemarkFact,
  TouchTestFact,
} from './facts.ts';
import type { CalibrationFact, FaultFact, SensorFact, SensorStay } from './sensor-facts.ts';
import type { CoatingFact, MergeFact, SplitFact, TinFact } from './trade-facts.ts';

/**
 * What people recorded about a site, in memory.
 *
 * Moves, coats and remarks are those of a batch’s boards: what a split batch shares with the one it
 * came from is found under both.
 */
export interface KnownFacts {
  places: ReadonlyMap<string, PlaceFact>;
  sensors: ReadonlyMap<number, SensorFact>;
  stays: ReadonlyMap<number, readonly SensorStay[]>;
  calibrations: readonly CalibrationFact[];
  faults: readonly FaultFact[];
  plans: ReadonlyMap<string, PlanFact>;
  /** With as many boards as there are now, after what was split off and put to them. */
  batches: ReadonlyMap<string, BatchFact>;
  /** As they were begun. */
  begun: readonly BatchFact[];
  moves: ReadonlyMap<string, readonly MoveFact[]>;
  coats: ReadonlyMap<string, readonly CoatFact[]>;
  /** By history and coat. */
  tests: ReadonlyMap<string, readonly TouchTestFact[]>;
  remarks: ReadonlyMap<string, readonly RemarkFact[]>;
  handReadings: readonly HandReadingFact[];
  splits: readonly SplitFact[];
  merges: readonly MergeFact[];
  tins: ReadonlyMap<string, TinFact>;
  coatings: ReadonlyMap<string, readonly CoatingFact[]>;
}
