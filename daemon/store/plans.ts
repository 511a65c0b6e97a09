import type { Database } from 'better-sqlite3';
import type { PlanFact } from '../rules/facts.ts';

interface PlanRow {
  id: string;
  name: string;
  surface: PlanFact['surface'];
  coats: string;
  is_default: number;
  created_at: number;
}

export function planTable(db: Database) {
  const all = db.prepare<[], PlanRow>('select * from coating_plan order by created_at, rowid');
  const insert = db.prepare(
    `insert into coating_plan (id, name, surface, coats, is_default, created_at)
     values (@id, @name, @surface, @coats, @isDefault, @createdAt)`,
  );
  return {
    all: (): PlanFact[] =>
      all.all().map((row) => ({
        id: row.id,
        name: row.name,
        surface: row.surface,
        coats: JSON.parse(row.coats),
        isDefault: row.is_default === 1,
        createdAt: row.created_at,
      })),
    insert: (plan: PlanFact): void => {
      insert.run({ ...plan, coats: JSON.stringify(plan.coats), isDefault: plan.isDefault ? 1 : 0 });
    },
  };
}
export type PlanTable = ReturnType<typeof planTable>;
