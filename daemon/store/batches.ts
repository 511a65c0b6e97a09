import type { Database } from 'better-sqlite3';
import type { BatchFact, MoveFact } from '../rules/facts.ts';

interface BatchRow {
  id: string;
  name: string;
  species: BatchFact['species'];
  surface: BatchFact['surface'];
  boards: string;
  plan_id: string;
  created_at: number;
  closed_at: number | null;
  timber: string | null;
}

/** What may be changed of a batch. */
export type BatchEdit = Pick<BatchFact, 'id' | 'name' | 'closedAt'> &
  Partial<Pick<BatchFact, 'planId' | 'timber'>>;

const timberText = (timber: BatchFact['timber']) => (timber ? JSON.stringify(timber) : null);

export function batchTable(db: Database) {
  const all = db.prepare<[], BatchRow>('select * from batch order by created_at, rowid');
  const insert = db.prepare(
    `insert into batch (id, name, species, surface, boards, plan_id, created_at, closed_at, timber)
     values (@id, @name, @species, @surface, @boards, @planId, @createdAt, @closedAt, @timber)`,
  );
  const change = db.prepare(
    `update batch set name = @name, closed_at = @closedAt, plan_id = coalesce(@planId, plan_id),
       timber = coalesce(@timber, timber)
      where id = @id`,
  );
  const moves = db.prepare<[], MoveFact>(
    'select id, batch_id as batchId, place_id as placeId, at from move order by at, recorded_at, rowid',
  );
  const insertMove = db.prepare(
    `insert into move (id, batch_id, place_id, at, recorded_at)
     values (@id, @batchId, @placeId, @at, @recordedAt)`,
  );
  return {
    all: (): BatchFact[] =>
      all.all().map((row) => ({
        id: row.id,
        name: row.name,
        species: row.species,
        surface: row.surface,
        boards: JSON.parse(row.boards),
        planId: row.plan_id,
        createdAt: row.created_at,
        closedAt: row.closed_at,
        timber: row.timber === null ? null : JSON.parse(row.timber),
      })),
    insert: (batch: BatchFact): void => {
      insert.run({
        ...batch,
        boards: JSON.stringify(batch.boards),
        timber: timberText(batch.timber),
      });
    },
    /** What is left out stays as it was. */
    change: (batch: BatchEdit): void => {
      const { id, name, closedAt, planId = null, timber } = batch;
      change.run({ id, name, closedAt, planId, timber: timberText(timber) });
    },
    moves: (): MoveFact[] => moves.all(),
    insertMove: (move: MoveFact, recordedAt: number): void => {
      insertMove.run({ ...move, recordedAt });
    },
  };
}
export type BatchTable = ReturnType<typeof batchTable>;
