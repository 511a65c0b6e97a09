import type { Database } from 'better-sqlite3';
import { BoardcureError } from '../contract/problem.ts';
import type {
  BatchFact,
  CoatFact,
  HandReadingFact,
  LockUpTickFact,
  MoveFact,
  NewNoticeFact,
  PlaceFact,
  PlanFact,
  RemarkFact,
  TouchTestFact,
} from '../rules/facts.ts';
import type { SensorStay } from '../rules/sensor-facts.ts';
import { sentence } from '../wording/english.ts';
import type { BatchEdit } from './batches.ts';
import type { ReadingCommitter } from './commit-readings.ts';
import type { FactTables } from './fact-tables.ts';
import { idTaken, recordOnce } from './record-once.ts';
import { tradeRecorder } from './record-trade.ts';

/**
 * The edits that people make, each one transaction with its line in the list of changes.
 * A fact that arrives a second time under its id is not written again.
 */
export function factRecorder(db: Database, tables: FactTables, committer: ReadingCommitter) {
  const edit = editIn(db, committer);

  const once = recordOnce(tables.changes);

  /**
   * Records a coat, and raises what everyone is to be told after one: in the same transaction, so
   * that no crash can swallow a caution, and once only.
   */
  function createCoat(
    coat: CoatFact,
    recordedAt: number,
    caution: NewNoticeFact | null = null,
  ): void {
    const existing = tables.coats.all();
    const taken = existing.find(
      (other) => other.batchId === coat.batchId && other.coat === coat.coat,
    );
    if (taken && taken.id !== coat.id) {
      throw new BoardcureError(
        'BC_STATE_CONFLICT',
        sentence('coat-recorded', { coat: coat.coat }),
        { pointer: '/coat' },
      );
    }
    const isNew = once('coat', existing, coat, recordedAt, (fact) =>
      tables.coats.insert(fact, recordedAt),
    );
    if (isNew && caution) tables.notices.raise(caution);
  }

  return {
    createPlace: edit((place: PlaceFact) => {
      once('place', tables.places.all(), place, place.createdAt, tables.places.insert);
      committer.forget();
    }),
    /** Says better what a place is like; the list of changes keeps when. */
    changePlace: edit((place: PlaceFact, at: number) => {
      tables.places.change(place);
      tables.changes.note(at, 'place', place.id, 'changed');
    }),
    createPlan: edit((plan: PlanFact) => {
      once('coating plan', tables.plans.all(), plan, plan.createdAt, tables.plans.insert);
    }),
    createBatch: edit((batch: BatchFact, firstMove: MoveFact) => {
      const existing = tables.batches.all().map((other) => ({ ...other, closedAt: null }));
      const isNew = once('batch', existing, batch, batch.createdAt, (fact) => {
        tables.batches.insert(fact);
        tables.batches.insertMove(firstMove, fact.createdAt);
      });
      if (isNew) return;
      const begun = tables.batches
        .moves()
        .find((move) => move.batchId === batch.id && move.at === null);
      if (begun?.placeId !== firstMove.placeId) throw idTaken('batch', batch.id);
    }),
    changeBatch: edit((batch: BatchEdit, at: number) => {
      tables.batches.change(batch);
      tables.changes.note(at, 'batch', batch.id, 'changed');
    }),
    createMove: edit((move: MoveFact, recordedAt: number) => {
      once('move', tables.batches.moves(), move, recordedAt, (fact) =>
        tables.batches.insertMove(fact, recordedAt),
      );
    }),
    createCoat: edit(createCoat),
    ...tradeRecorder(tables, edit, once, createCoat),
    removeCoat: edit((id: string, at: number) => {
      if (tables.coats.remove(id, at)) tables.changes.note(at, 'coat', id, 'taken back');
    }),
    createTest: edit((test: TouchTestFact, recordedAt: number) => {
      once('touch test', tables.coats.tests(), test, recordedAt, (fact) =>
        tables.coats.insertTest(fact, recordedAt),
      );
    }),
    createRemark: edit((remark: RemarkFact, recordedAt: number) => {
      once('remark', tables.remarks.all(), remark, recordedAt, (fact) =>
        tables.remarks.insert(fact, recordedAt),
      );
    }),
    createHandReading: edit((reading: HandReadingFact, recordedAt: number) => {
      once('hand reading', tables.remarks.handReadings(), reading, recordedAt, (fact) =>
        tables.remarks.insertHandReading(fact, recordedAt),
      );
    }),
    renameSensor: edit((key: number, id: string, name: string | null, at: number) => {
      tables.sensors.rename(key, name);
      tables.changes.note(at, 'sensor', id, 'renamed');
    }),
    /** Places or moves a sensor; the hours it changes are marked in the same transaction. */
    placeSensor: edit((stay: SensorStay, id: string, at: number) => {
      const extent = tables.readings.extent(stay.sensorKey, 'air-temperature');
      const before = tables.sensors.stays().filter((other) => other.sensorKey === stay.sensorKey);
      tables.sensors.stay(stay, at);
      tables.changes.note(at, 'sensor', id, 'placed');
      committer.forget();
      if (!extent) return;
      const fromAt = Math.max(stay.fromAt ?? extent.firstAt, extent.firstAt);
      const touched = new Set(
        [...before, stay]
          .map((other) => other.placeId)
          .filter((placeId) => placeId !== null)
          .flatMap((placeId) => committer.fedPlaces(placeId)),
      );
      // Also a stay that begins after the last reading: it ends how long that reading stands.
      for (const placeId of touched) {
        tables.hours.addDirty(placeId, fromAt, Math.max(fromAt, extent.lastAt));
      }
    }),
    /** Raises and clears together, so that many changes at once cost one commit. */
    changeNotices: edit(
      (raised: NewNoticeFact[], clearedIds: string[], at: number, repeatedIds: string[] = []) => {
        for (const notice of raised) tables.notices.raise(notice);
        for (const id of clearedIds) tables.notices.clear(id, at);
        for (const id of repeatedIds) tables.notices.repeat(id, at);
      },
    ),
    /** Ticks a line of the lock-up list; a tick of the rags settles every notice about them. */
    tickLockUp: edit((tick: LockUpTickFact, recordedAt: number) => {
      const isNew = once('lock-up tick', tables.lockUp.all(), tick, recordedAt, (fact) =>
        tables.lockUp.insert(fact, recordedAt),
      );
      if (isNew && tick.line === 'rags' && tick.done) tables.notices.clearKind('rags', recordedAt);
    }),
    nameSite: edit((name: string | null, at: number) => {
      tables.siteName.insert(name, at);
      tables.changes.note(at, 'site', 'site', 'named');
    }),
    seeNotice: edit((id: string, at: number) => tables.notices.see(id, at)),
  };
}

/** Makes an act one transaction of its own. */
export function editIn(db: Database, committer: ReadingCommitter) {
  return <A extends unknown[], R>(act: (...args: A) => R): ((...args: A) => R) => {
    const transaction = db.transaction(act);
    return (...args: A) => {
      try {
        return transaction.immediate(...args);
      } catch (cause) {
        committer.forget();
        throw cause;
      }
    };
  };
}
