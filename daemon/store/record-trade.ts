import { BoardcureError } from '../contract/problem.ts';
import type { BatchFact, CoatFact, MoveFact, NewNoticeFact } from '../rules/facts.ts';
import type {
  CoatingFact,
  CoatingStepFact,
  MergeFact,
  MountingTickFact,
  SplitFact,
  TinFact,
} from '../rules/trade-facts.ts';
import type { FactTables } from './fact-tables.ts';
import type { RecordOnce } from './record-once.ts';

type Edit = <A extends unknown[], R>(act: (...args: A) => R) => (...args: A) => R;
type CreateCoat = (coat: CoatFact, recordedAt: number, caution: NewNoticeFact | null) => void;

/** Edits of what the trade adds: splits and merges, tins, coats on their way, ticked lines. */
export function tradeRecorder(
  tables: FactTables,
  edit: Edit,
  once: RecordOnce,
  createCoat: CreateCoat,
) {
  const { lineage, tins, coatings, batches, changes } = tables;
  return {
    /**
     * Splits boards off: the new batch, where they went (null: they stay), and the split itself,
     * all or nothing.
     */
    createSplit: edit(
      (split: SplitFact, child: BatchFact, move: MoveFact | null, recordedAt: number) => {
        once('split', lineage.splits(), split, recordedAt, (fact) => {
          once('batch', batches.all(), child, recordedAt, batches.insert);
          if (move) batches.insertMove(move, recordedAt);
          lineage.insertSplit(fact, recordedAt);
        });
      },
    ),
    /** Puts one batch to another; it is closed by it. */
    createMerge: edit((merge: MergeFact, recordedAt: number) => {
      once('merge', lineage.merges(), merge, recordedAt, (fact) => {
        const merged = batches.all().find((batch) => batch.id === fact.mergedId);
        if (!merged || lineage.merges().some((other) => other.mergedId === fact.mergedId)) {
          throw new BoardcureError(
            'BC_STATE_CONFLICT',
            'These boards were put to another batch before.',
            { pointer: '/batchId' },
          );
        }
        lineage.insertMerge(fact, recordedAt);
        batches.change({ ...merged, closedAt: fact.at });
      });
    }),
    tickMounting: edit((tick: MountingTickFact, done: boolean, recordedAt: number) => {
      if (done) lineage.tick(tick);
      else lineage.untick(tick);
      changes.note(recordedAt, 'move', tick.moveId, `${tick.line} ${done ? 'ticked' : 'unticked'}`);
    }),
    createTin: edit((tin: TinFact) => {
      once('tin', tins.all(), tin, tin.createdAt, tins.insert);
    }),
    changeTin: edit((tin: TinFact, at: number) => {
      tins.change(tin);
      changes.note(at, 'tin', tin.id, 'changed');
    }),
    beginCoating: edit((coating: CoatingFact, recordedAt: number) => {
      const existing = coatings.all().map((one) => ({ ...one, coatId: null, givenUpAt: null }));
      once('coat on its way', existing, coating, recordedAt, (fact) =>
        coatings.insert(fact, recordedAt),
      );
    }),
    tickCoating: edit((step: CoatingStepFact, done: boolean, recordedAt: number) => {
      if (done) coatings.tick(step);
      else coatings.untick(step);
      const what = `${step.step} ${done ? 'ticked' : 'unticked'}`;
      changes.note(recordedAt, 'coat on its way', step.coatingId, what);
    }),
    /** Ends a coat on its way: with the coat it became, or given up. */
    endCoating: edit(
      (
        coating: CoatingFact,
        coat: CoatFact | null,
        recordedAt: number,
        caution: NewNoticeFact | null,
      ) => {
        if (coat) createCoat(coat, recordedAt, caution);
        coatings.end(coating);
        const what = coat ? 'finished' : 'given up';
        changes.note(recordedAt, 'coat on its way', coating.id, what);
      },
    ),
  };
}
