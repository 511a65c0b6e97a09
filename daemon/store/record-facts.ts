import { isDeepStrictEqual } from 'node:util';
import { type Database, SqliteError } from 'better-sqlite3';
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
  SensorStay,
  TouchTestFact,
} from '../rules/facts.ts';
import type { BatchTable } from './batches.ts';
import type { ChangeTable } from './changes.ts';
import type { CoatTable } from './coats.ts';
import type { ReadingCommitter } from './commit-readings.ts';
import type { HourTable } from './hours.ts';
import type { LockUpTable } from './lock-up.ts';
import type { NoticeTable } from './notices.ts';
import type { PlaceTable } from './places.ts';
import type { PlanTable } from './plans.ts';
import type { RemarkTable } from './remarks.ts';
import type { SensorTable } from './sensors.ts';
import type { ReadingIntake } from './take-in-readings.ts';

export interface FactTables {
  places: PlaceTable;
  sensors: SensorTable;
  readings: ReadingIntake;
  hours: HourTable;
  plans: PlanTable;
  batches: BatchTable;
  coats: CoatTable;
  remarks: RemarkTable;
  notices: NoticeTable;
  lockUp: LockUpTable;
  changes: ChangeTable;
}

/**
 * The edits that people make, each one transaction with its line in the list of changes.
 * A fact that arrives a second time under its id is not written again.
 */
export function factRecorder(db: Database, tables: FactTables, committer: ReadingCommitter) {
  const edit = editIn(db, committer);

  /**
   * Writes a fact once: the same again changes nothing, another one under its id is refused.
   *
   * @returns true when it was new
   */
  function once<T extends { id: string }>(
    subject: string,
    existing: readonly T[],
    fact: T,
    recordedAt: number,
    insert: (fact: T) => void,
  ): boolean {
    const known = existing.find((other) => other.id === fact.id);
    if (known) {
      if (sameFact(known, fact)) return false;
      throw idTaken(subject, fact.id);
    }
    try {
      insert(fact);
    } catch (cause) {
      // One that was taken back keeps its id, though it is no longer listed.
      if (cause instanceof SqliteError && cause.code === 'SQLITE_CONSTRAINT_PRIMARYKEY') {
        throw idTaken(subject, fact.id);
      }
      throw cause;
    }
    tables.changes.note(recordedAt, subject, fact.id, 'created');
    return true;
  }

  return {
    createPlace: edit((place: PlaceFact) => {
      once('place', tables.places.all(), place, place.createdAt, tables.places.insert);
      committer.forget();
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
    changeBatch: edit((batch: Pick<BatchFact, 'id' | 'name' | 'closedAt'>, at: number) => {
      tables.batches.change(batch);
      tables.changes.note(at, 'batch', batch.id, 'changed');
    }),
    createMove: edit((move: MoveFact, recordedAt: number) => {
      once('move', tables.batches.moves(), move, recordedAt, (fact) =>
        tables.batches.insertMove(fact, recordedAt),
      );
    }),
    /**
     * Records a coat, and raises what everyone is to be told after one: in the same transaction, so
     * that no crash can swallow a caution, and once only.
     */
    createCoat: edit((coat: CoatFact, recordedAt: number, caution: NewNoticeFact | null = null) => {
      const existing = tables.coats.all();
      const taken = existing.find(
        (other) => other.batchId === coat.batchId && other.coat === coat.coat,
      );
      if (taken && taken.id !== coat.id) {
        throw new BoardcureError(
          'BC_STATE_CONFLICT',
          `Coat ${coat.coat} of this batch is already recorded; take it back first to change it.`,
          { pointer: '/coat' },
        );
      }
      const isNew = once('coat', existing, coat, recordedAt, (fact) =>
        tables.coats.insert(fact, recordedAt),
      );
      if (isNew && caution) tables.notices.raise(caution);
    }),
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

function idTaken(subject: string, id: string): BoardcureError {
  return new BoardcureError('BC_ID_TAKEN', `The id ${id} already belongs to another ${subject}.`, {
    pointer: '/id',
  });
}

/** The same fact, whenever it was recorded. */
function sameFact<T extends object>(a: T, b: T): boolean {
  return isDeepStrictEqual({ ...a, createdAt: null }, { ...b, createdAt: null });
}
