import type { Database } from 'better-sqlite3';
import type { SensorFact, SensorStay } from '../rules/sensor-facts.ts';

interface SensorRow {
  key: number;
  id: string;
  name: string | null;
  first_seen_at: number;
  height: SensorFact['height'];
  species: SensorFact['species'];
}

export function sensorTable(db: Database) {
  const all = db.prepare<[], SensorRow>('select * from sensor order by key');
  const byId = db.prepare<[string], SensorRow>('select * from sensor where id = ?');
  const insert = db.prepare('insert into sensor (id, name, first_seen_at) values (?, null, ?)');
  const rename = db.prepare('update sensor set name = ? where key = ?');
  const describe = db.prepare(
    'update sensor set height = @height, species = @species where key = @key',
  );
  const stays = db.prepare<
    [],
    { sensor_key: number; place_id: string | null; from_at: number | null }
  >(
    'select sensor_key, place_id, from_at from sensor_stay where superseded_at is null order by rank',
  );
  const supersede = db.prepare(
    `update sensor_stay set superseded_at = @recordedAt
      where sensor_key = @sensorKey and superseded_at is null and from_at is @fromAt`,
  );
  const addStay = db.prepare(
    `insert into sensor_stay (sensor_key, place_id, from_at, recorded_at)
     values (@sensorKey, @placeId, @fromAt, @recordedAt)`,
  );
  const fact = (row: SensorRow): SensorFact => ({
    key: row.key,
    id: row.id,
    name: row.name,
    firstSeenAt: row.first_seen_at,
    height: row.height,
    species: row.species,
  });
  return {
    all: (): SensorFact[] => all.all().map(fact),
    byId: (id: string): SensorFact | null => {
      const row = byId.get(id);
      return row ? fact(row) : null;
    },
    insert: (id: string, firstSeenAt: number): number =>
      Number(insert.run(id, firstSeenAt).lastInsertRowid),
    rename: (key: number, name: string | null): void => {
      rename.run(name, key);
    },
    describe: ({ key, height, species }: Pick<SensorFact, 'key' | 'height' | 'species'>): void => {
      describe.run({ key, height, species });
    },
    stays: (): SensorStay[] =>
      stays.all().map((row) => ({
        sensorKey: row.sensor_key,
        placeId: row.place_id,
        fromAt: row.from_at,
      })),
    /** Adds a stay; one that began at the same moment is superseded, and kept. */
    stay: (stay: SensorStay, recordedAt: number): void => {
      supersede.run({ ...stay, recordedAt });
      addStay.run({ ...stay, recordedAt });
    },
  };
}
export type SensorTable = ReturnType<typeof sensorTable>;
