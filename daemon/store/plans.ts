import type { Database } from 'better-sqlite3';
import type { PlanFact } from '../rules/facts.ts';

interface PlanRow {
  id: string;
  name: string;
  surface: PlanFact['surface'];
  coats: string;
  is_default: number;
  created_at: number;
  family_id: string | null;
  version: number;
  use: PlanFact['use'];
}

export function planTable(db: Database) {
  const all = db.prepare<[], PlanRow>('select * from coating_plan order by created_at, rowid');
  const insert = db.prepare(
    `insert into coating_plan (id, name, surface, coats, is_default, created_at, family_id, version,
       use)
     values (@id, @name, @surface, @coats, @isDefault, @createdAt, @familyId, @version, @use)`,
  );
  const noLongerDefault = db.prepare(
    'update coating_plan set is_default = 0 where family_id = ? and version < ?',
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
        familyId: row.family_id ?? row.id,
        version: row.version,
        use: row.use ?? null,
      })),
    insert: (plan: PlanFact): void => {
      const { familyId, version = 1, use = null } = plan;
      insert.run({
        ...plan,
        coats: JSON.stringify(plan.coats),
        isDefault: plan.isDefault ? 1 : 0,
        familyId: familyId ?? plan.id,
        version,
        use,
      });
      if (version > 1) noLongerDefault.run(familyId ?? plan.id, version);
    },
  };
}
export type PlanTable = ReturnType<typeof planTable>;
