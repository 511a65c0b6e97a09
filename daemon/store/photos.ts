import type { Database } from 'better-sqlite3';
import type { PhotoFact } from '../rules/photo.ts';

/** Pictures of batches; the list is read without their bytes. */
export function photoTable(db: Database) {
  const columns = 'id, batch_id as batchId, at, text, type, length(picture) as bytes';
  const ofBatch = db.prepare<[string], PhotoFact>(
    `select ${columns} from photo where batch_id = ? and removed_at is null order by at, recorded_at`,
  );
  const one = db.prepare<[string], PhotoFact & { picture: Uint8Array }>(
    `select ${columns}, picture from photo where id = ? and removed_at is null`,
  );
  const anyhow = db.prepare<[string], { batchId: string; at: number; picture: Uint8Array }>(
    'select batch_id as batchId, at, picture from photo where id = ?',
  );
  const total = db.prepare<[], { bytes: number }>(
    'select coalesce(sum(length(picture)), 0) as bytes from photo',
  );
  const insert = db.prepare(
    `insert into photo (id, batch_id, at, text, type, picture, recorded_at)
     values (@id, @batchId, @at, @text, @type, @picture, @recordedAt)`,
  );
  const remove = db.prepare(
    `update photo set removed_at = ?, picture = x'' where id = ? and removed_at is null`,
  );
  return {
    ofBatch: (batchId: string): PhotoFact[] => ofBatch.all(batchId),
    one: (id: string) => one.get(id) ?? null,
    /** Also one that was taken away. */
    anyhow: (id: string) => anyhow.get(id) ?? null,
    totalBytes: (): number => total.get()?.bytes ?? 0,
    insert: (photo: Omit<PhotoFact, 'bytes'>, picture: Uint8Array, recordedAt: number): void => {
      insert.run({ ...photo, picture, recordedAt });
    },
    /** Takes a picture away; its bytes go, that it was there stays. */
    remove: (id: string, at: number): boolean => remove.run(at, id).changes > 0,
  };
}
export type PhotoTable = ReturnType<typeof photoTable>;
