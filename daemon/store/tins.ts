import type { Database } from 'better-sqlite3';
import type { TinFact } from '../rules/trade-facts.ts';

export function tinTable(db: Database) {
  const all = db.prepare<[], TinFact>(
    `select id, name, kind, colour, volume_l as volumeL, driers, opened_at as openedAt,
       emptied_at as emptiedAt, created_at as createdAt
       from tin order by created_at, rowid`,
  );
  const insert = db.prepare(
    `insert into tin (id, name, kind, colour, volume_l, driers, opened_at, emptied_at, created_at)
     values (@id, @name, @kind, @colour, @volumeL, @driers, @openedAt, @emptiedAt, @createdAt)`,
  );
  const change = db.prepare(
    `update tin set name = @name, colour = @colour, volume_l = @volumeL, driers = @driers,
       opened_at = @openedAt, emptied_at = @emptiedAt
      where id = @id`,
  );
  return {
    all: (): TinFact[] => all.all(),
    insert: (tin: TinFact): void => {
      insert.run(tin);
    },
    change: ({ kind: _, createdAt: __, ...tin }: TinFact): void => {
      change.run(tin);
    },
  };
}
export type TinTable = ReturnType<typeof tinTable>;
