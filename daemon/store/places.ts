import type { Database } from 'better-sqlite3';
import type { PlaceFact } from '../rules/facts.ts';

interface PlaceRow {
  id: string;
  name: string;
  kind: PlaceFact['kind'];
  within: string | null;
  volume_m3: number | null;
  facing: PlaceFact['facing'];
  exposure: PlaceFact['exposure'];
  capacity_m: number | null;
  capacity_boards: number | null;
  created_at: number;
}

export function placeTable(db: Database) {
  const all = db.prepare<[], PlaceRow>('select * from place order by created_at, rowid');
  const insert = db.prepare(
    `insert into place (id, name, kind, within, volume_m3, facing, exposure, capacity_m,
       capacity_boards, created_at)
     values (@id, @name, @kind, @within, @volumeM3, @facing, @exposure, @capacityM,
       @capacityBoards, @createdAt)`,
  );
  const change = db.prepare(
    `update place set name = @name, volume_m3 = @volumeM3, facing = @facing, exposure = @exposure,
       capacity_m = @capacityM, capacity_boards = @capacityBoards where id = @id`,
  );
  return {
    all: (): PlaceFact[] =>
      all.all().map((row) => ({
        id: row.id,
        name: row.name,
        kind: row.kind,
        within: row.within,
        volumeM3: row.volume_m3,
        facing: row.facing,
        exposure: row.exposure,
        capacityM: row.capacity_m,
        capacityBoards: row.capacity_boards,
        createdAt: row.created_at,
      })),
    insert: (place: PlaceFact): void => {
      insert.run({ capacityM: null, capacityBoards: null, ...place });
    },
    /** What kind it is and what encloses it stays. */
    change: (place: PlaceFact): void => {
      change.run({ capacityM: null, capacityBoards: null, ...place });
    },
  };
}
export type PlaceTable = ReturnType<typeof placeTable>;
