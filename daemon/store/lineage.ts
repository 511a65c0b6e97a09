import type { Database } from 'better-sqlite3';
import type { MergeFact, MountingTickFact, SplitFact } from '../rules/trade-facts.ts';

/** How batches came from one another, and what was ticked when boards went up. */
export function lineageTable(db: Database) {
  const splits = db.prepare<[], SplitFact>(
    `select id, batch_id as batchId, child_id as childId, boards, at
       from batch_split order by at, recorded_at`,
  );
  const insertSplit = db.prepare(
    `insert into batch_split (id, batch_id, child_id, boards, at, recorded_at)
     values (@id, @batchId, @childId, @boards, @at, @recordedAt)`,
  );
  const merges = db.prepare<[], MergeFact>(
    `select id, batch_id as batchId, merged_id as mergedId, at
       from batch_merge order by at, recorded_at`,
  );
  const insertMerge = db.prepare(
    `insert into batch_merge (id, batch_id, merged_id, at, recorded_at)
     values (@id, @batchId, @mergedId, @at, @recordedAt)`,
  );
  const ticks = db.prepare<[], MountingTickFact>(
    'select move_id as moveId, line, at from mounting_tick order by at',
  );
  const tick = db.prepare(
    'insert or ignore into mounting_tick (move_id, line, at) values (@moveId, @line, @at)',
  );
  const untick = db.prepare('delete from mounting_tick where move_id = @moveId and line = @line');
  return {
    splits: (): SplitFact[] => splits.all(),
    insertSplit: (split: SplitFact, recordedAt: number): void => {
      insertSplit.run({ ...split, recordedAt });
    },
    merges: (): MergeFact[] => merges.all(),
    insertMerge: (merge: MergeFact, recordedAt: number): void => {
      insertMerge.run({ ...merge, recordedAt });
    },
    ticks: (): MountingTickFact[] => ticks.all(),
    tick: (fact: MountingTickFact): void => {
      tick.run(fact);
    },
    untick: ({ moveId, line }: Pick<MountingTickFact, 'moveId' | 'line'>): void => {
      untick.run({ moveId, line });
    },
  };
}
export type LineageTable = ReturnType<typeof lineageTable>;
