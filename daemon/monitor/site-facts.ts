import type { Quantity } from '../contract/quantity.ts';
import { countedStays } from '../rules/counted-stays.ts';
import type {
  BatchFact,
  CalibrationFact,
  CoatFact,
  FaultFact,
  HandReadingFact,
  MoveFact,
  PlaceFact,
  PlanFact,
  RemarkFact,
  SensorFact,
  SensorStay,
  TouchTestFact,
} from '../rules/facts.ts';
import type { FactSource } from './ports.ts';

/** All that people recorded about the site, in memory: small, and read anew after each edit. */
export interface SiteFacts {
  places: Map<string, PlaceFact>;
  sensors: Map<number, SensorFact>;
  stays: Map<number, SensorStay[]>;
  /** The same without the stretches in which a fault keeps the quantity from counting. */
  counted: (quantity: Quantity) => ReadonlyMap<number, readonly SensorStay[]>;
  calibrations: CalibrationFact[];
  faults: FaultFact[];
  plans: Map<string, PlanFact>;
  batches: Map<string, BatchFact>;
  moves: Map<string, MoveFact[]>;
  coats: Map<string, CoatFact[]>;
  /** Tests by coat. */
  tests: Map<string, TouchTestFact[]>;
  remarks: Map<string, RemarkFact[]>;
  handReadings: HandReadingFact[];
}

export function readSiteFacts(source: FactSource): SiteFacts {
  const stays = grouped(source.sensorStays(), (stay) => stay.sensorKey);
  const faults = source.faults();
  const counted = new Map<Quantity, ReadonlyMap<number, readonly SensorStay[]>>();
  return {
    counted(quantity) {
      const known = counted.get(quantity) ?? countedStays(stays, faults, quantity);
      counted.set(quantity, known);
      return known;
    },
    calibrations: source.calibrations(),
    faults,
    places: new Map(source.places().map((place) => [place.id, place])),
    sensors: new Map(source.sensors().map((sensor) => [sensor.key, sensor])),
    stays,
    plans: new Map(source.plans().map((plan) => [plan.id, plan])),
    batches: new Map(source.batches().map((batch) => [batch.id, batch])),
    moves: grouped(source.moves(), (move) => move.batchId),
    coats: grouped(source.coats(), (coat) => coat.batchId),
    tests: grouped(source.tests(), (test) => test.coatId),
    remarks: grouped(source.remarks(), (remark) => remark.batchId),
    handReadings: source.handReadings(),
  };
}

function grouped<T, K>(items: readonly T[], key: (item: T) => K): Map<K, T[]> {
  const groups = new Map<K, T[]>();
  for (const item of items) {
    const group = groups.get(key(item));
    if (group) group.push(item);
    else groups.set(key(item), [item]);
  }
  return groups;
}
