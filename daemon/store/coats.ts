import type { Database } from 'better-sqlite3';
import type { CoatFact, TouchTestFact } from '../rules/facts.ts';

interface CoatRow {
  id: string;
  batch_id: string;
  coat: number;
  begun_at: number | null;
  finished_at: number;
  mixture: string;
  faces: string;
  used_l: number | null;
  colour: string | null;
  tin: string | null;
  tin_id: string | null;
  plan_id: string | null;
}

interface TestRow {
  id: string;
  batch_id: string;
  coat_id: string;
  at: number;
  gate: TouchTestFact['gate'];
  passed: number;
  felt_on: TouchTestFact['on'];
  learned_by: TouchTestFact['learnedBy'];
  recorded_at: number;
}

export function coatTable(db: Database) {
  const all = db.prepare<[], CoatRow>(
    'select * from coat where removed_at is null order by batch_id, coat',
  );
  const insert = db.prepare(
    `insert into coat (id, batch_id, coat, begun_at, finished_at, mixture, faces, used_l, colour,
       tin, tin_id, plan_id, recorded_at)
     values (@id, @batchId, @coat, @begunAt, @finishedAt, @mixture, @faces, @usedL, @colour,
       @tin, @tinId, coalesce(@planId, (select plan_id from batch where id = @batchId)), @recordedAt)`,
  );
  const remove = db.prepare('update coat set removed_at = ? where id = ? and removed_at is null');
  const tests = db.prepare<[], TestRow>(
    `select touch_test.* from touch_test join coat on coat.id = touch_test.coat_id
      where coat.removed_at is null order by touch_test.at, touch_test.recorded_at`,
  );
  const insertTest = db.prepare(
    `insert into touch_test (id, batch_id, coat_id, at, gate, passed, felt_on, learned_by,
       recorded_at)
     values (@id, @batchId, @coatId, @at, @gate, @passed, @on, @learnedBy, @recordedAt)`,
  );
  return {
    all: (): CoatFact[] =>
      all.all().map((row) => ({
        id: row.id,
        batchId: row.batch_id,
        coat: row.coat,
        begunAt: row.begun_at,
        finishedAt: row.finished_at,
        mixture: JSON.parse(row.mixture),
        faces: JSON.parse(row.faces),
        usedL: row.used_l,
        colour: row.colour,
        tin: row.tin,
        tinId: row.tin_id,
        planId: row.plan_id,
      })),
    insert: (coat: CoatFact, recordedAt: number): void => {
      insert.run({
        tinId: null,
        planId: null,
        ...coat,
        mixture: JSON.stringify(coat.mixture),
        faces: JSON.stringify(coat.faces),
        recordedAt,
      });
    },
    /** @returns false when there is no such coat, or it was taken back before */
    remove: (id: string, removedAt: number): boolean => remove.run(removedAt, id).changes === 1,
    tests: (): TouchTestFact[] =>
      tests.all().map((row) => ({
        id: row.id,
        batchId: row.batch_id,
        coatId: row.coat_id,
        at: row.at,
        gate: row.gate,
        passed: row.passed === 1,
        on: row.felt_on,
        learnedBy: row.learned_by ?? null,
        recordedAt: row.recorded_at,
      })),
    insertTest: (test: TouchTestFact, recordedAt: number): void => {
      insertTest.run({ learnedBy: null, ...test, passed: test.passed ? 1 : 0, recordedAt });
    },
  };
}
export type CoatTable = ReturnType<typeof coatTable>;
