import type { Quantity } from '../contract/quantity.ts';
import { type CureStay, cureStays } from '../rules/batch.ts';
import {
  batchOfHistory,
  boardsAt,
  historyOf,
  lineageOf,
  type RecordedFacts,
} from '../rules/batch-lineage.ts';
import { countedStays } from '../rules/counted-stays.ts';
import type { BatchFact, CoatFact, MoveFact, RemarkFact, TouchTestFact } from '../rules/facts.ts';
import type { KnownFacts } from '../rules/known-facts.ts';
import type { SensorStay } from '../rules/sensor-facts.ts';
import type { CoatingStepFact, MountingTickFact } from '../rules/trade-facts.ts';
import type { FactSource } from './ports.ts';

/**
 * All that people recorded about the site, in memory: small, and read anew after each edit. Boards
 * that were put to another batch keep a history of their own there (see `companions`), found under
 * its name like a batch’s. For `tests` see {@link testsOfCoat}.
 */
export interface SiteFacts extends KnownFacts {
  /** The stays without the stretches in which a fault keeps the quantity from counting. */
  counted: (quantity: Quantity) => ReadonlyMap<number, readonly SensorStay[]>;
  /** Histories of the boards that were put to a batch, by the batch. */
  companions: ReadonlyMap<string, readonly string[]>;
  coatingSteps: ReadonlyMap<string, readonly CoatingStepFact[]>;
  /** Lines ticked, by move. */
  mountingTicks: ReadonlyMap<string, readonly MountingTickFact[]>;
}

export function readSiteFacts(source: FactSource): SiteFacts {
  const batches = source.batches();
  const recorded = {
    batches,
    moves: grouped(source.moves(), (move) => move.batchId),
    coats: grouped(source.coats(), (coat) => coat.batchId),
    tests: grouped(source.tests(), (test) => test.batchId),
    remarks: grouped(source.remarks(), (remark) => remark.batchId),
    splits: source.splits(),
    merges: source.merges(),
  };
  const lineage = lineageOf(recorded);
  const moves = new Map<string, MoveFact[]>();
  const coats = new Map<string, CoatFact[]>();
  const tests = new Map<string, TouchTestFact[]>();
  const remarks = new Map<string, RemarkFact[]>();
  for (const id of lineage.segments.keys()) {
    const history = historyOf(id, lineage, recorded);
    if (history.moves.length > 0) moves.set(id, history.moves);
    if (history.coats.length > 0) coats.set(id, history.coats);
    if (history.remarks.length > 0) remarks.set(id, history.remarks);
    for (const [coatId, felt] of grouped(history.tests, (test) => test.coatId)) {
      tests.set(testKey(id, coatId), felt);
    }
  }
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
    batches: new Map(batches.map((batch) => [batch.id, withBoardsNow(batch, recorded)])),
    begun: batches,
    moves,
    coats,
    tests,
    remarks,
    handReadings: source.handReadings(),
    companions: lineage.companions,
    splits: recorded.splits,
    merges: recorded.merges,
    tins: new Map(source.tins().map((tin) => [tin.id, tin])),
    coatings: grouped(source.coatings(), (coating) => coating.batchId),
    coatingSteps: grouped(source.coatingSteps(), (step) => step.coatingId),
    mountingTicks: grouped(source.mountingTicks(), (tick) => tick.moveId),
  };
}

function withBoardsNow(batch: BatchFact, recorded: RecordedFacts): BatchFact {
  const count = boardsAt(batch, Number.POSITIVE_INFINITY, recorded);
  return count === batch.boards.count ? batch : { ...batch, boards: { ...batch.boards, count } };
}

const testKey = (historyId: string, coatId: string) => `${historyId} ${coatId}`;

/** The touch tests that speak of a coat on the boards of its history. */
export const testsOfCoat = (
  facts: Pick<SiteFacts, 'tests'>,
  coat: CoatFact,
): readonly TouchTestFact[] => facts.tests.get(testKey(coat.batchId, coat.id)) ?? [];

/** The batch that the boards of a coat lie in. */
export const batchOfCoat = (
  facts: Pick<SiteFacts, 'batches'>,
  coat: Pick<CoatFact, 'batchId'>,
): BatchFact | undefined => facts.batches.get(batchOfHistory(coat.batchId));

/** Where a coat lay while it cured, following its batch. */
export const staysOfCoat = (
  facts: Pick<SiteFacts, 'batches' | 'coats' | 'moves'>,
  coat: CoatFact,
): CureStay[] =>
  cureStays(
    coat,
    facts.coats.get(coat.batchId) ?? [],
    facts.moves.get(coat.batchId) ?? [],
    batchOfCoat(facts, coat)?.closedAt ?? null,
  );

/** What the plan said of a coat when it was put on. */
export function plannedCoatOf(facts: Pick<SiteFacts, 'batches' | 'plans'>, coat: CoatFact) {
  const planId = coat.planId ?? batchOfCoat(facts, coat)?.planId;
  return planId === undefined ? undefined : facts.plans.get(planId)?.coats[coat.coat];
}

/** The boards that a coat was put on: all that its batch had then. */
export function boardsCoated(
  { begun, splits, merges }: Pick<SiteFacts, 'begun' | 'splits' | 'merges'>,
  coat: CoatFact,
): BatchFact['boards'] | null {
  const id = coat.originId ?? batchOfHistory(coat.batchId);
  const batch = begun.find((one) => one.id === id);
  if (!batch) return null;
  const count = boardsAt(batch, coat.finishedAt, { batches: begun, splits, merges });
  return { ...batch.boards, count };
}

/** Every coat once, at the batch where it was recorded. */
export const recordedCoats = ({ batches, coats }: SiteFacts): CoatFact[] =>
  [...batches.keys()].flatMap((id) =>
    (coats.get(id) ?? []).filter((coat) => coat.originId === undefined),
  );

/**
 * Whether every sensor hangs where it hung, in places that lie within each other as they did, and is
 * believed as it was.
 */
export function hangsTheSame(a: SiteFacts, b: SiteFacts): boolean {
  const hung = ({ places, stays, calibrations, faults }: SiteFacts) =>
    JSON.stringify([[...places], [...stays], calibrations, faults]);
  return hung(a) === hung(b);
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
