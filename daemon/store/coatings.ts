import type { Database } from 'better-sqlite3';
import type { CoatingFact, CoatingStepFact } from '../rules/trade-facts.ts';

/** Coats on their way, and their ticked steps. */
export function coatingTable(db: Database) {
  const all = db.prepare<[], CoatingFact>(
    `select id, batch_id as batchId, coat, begun_at as begunAt, tin_id as tinId,
       coat_id as coatId, given_up_at as givenUpAt
       from coating order by begun_at, recorded_at`,
  );
  const insert = db.prepare(
    `insert into coating (id, batch_id, coat, begun_at, tin_id, coat_id, given_up_at, recorded_at)
     values (@id, @batchId, @coat, @begunAt, @tinId, @coatId, @givenUpAt, @recordedAt)`,
  );
  const end = db.prepare(
    'update coating set coat_id = @coatId, given_up_at = @givenUpAt where id = @id',
  );
  const steps = db.prepare<[], CoatingStepFact>(
    'select coating_id as coatingId, step, at from coating_step order by at',
  );
  const tick = db.prepare(
    'insert or ignore into coating_step (coating_id, step, at) values (@coatingId, @step, @at)',
  );
  const untick = db.prepare(
    'delete from coating_step where coating_id = @coatingId and step = @step',
  );
  return {
    all: (): CoatingFact[] => all.all(),
    insert: (coating: CoatingFact, recordedAt: number): void => {
      insert.run({ ...coating, recordedAt });
    },
    end: ({ id, coatId, givenUpAt }: Pick<CoatingFact, 'id' | 'coatId' | 'givenUpAt'>): void => {
      end.run({ id, coatId, givenUpAt });
    },
    steps: (): CoatingStepFact[] => steps.all(),
    tick: (step: CoatingStepFact): void => {
      tick.run(step);
    },
    untick: ({ coatingId, step }: Pick<CoatingStepFact, 'coatingId' | 'step'>): void => {
      untick.run({ coatingId, step });
    },
  };
}
export type CoatingTable = ReturnType<typeof coatingTable>;
