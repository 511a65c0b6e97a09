import type { Database } from 'better-sqlite3';
import { BoardcureError } from '../contract/problem.ts';
import type { PhotoFact } from '../rules/photo.ts';
import { sentence } from '../wording/english.ts';
import type { ChangeTable } from './changes.ts';
import type { PhotoTable } from './photos.ts';

interface PhotoTables {
  photos: PhotoTable;
  changes: ChangeTable;
}

/** Writes of pictures, each one transaction with its line in the list of changes. */
export function photoRecorder(db: Database, { photos, changes }: PhotoTables) {
  const add = db.transaction(
    (photo: Omit<PhotoFact, 'bytes'>, picture: Uint8Array, mostBytes: number, at: number) => {
      const known = photos.anyhow(photo.id);
      if (known) {
        const isSame =
          known.batchId === photo.batchId &&
          known.at === photo.at &&
          (known.picture.length === 0 || Buffer.from(picture).equals(known.picture));
        if (isSame) return;
        throw new BoardcureError(
          'BC_ID_TAKEN',
          `The id ${photo.id} already belongs to another picture.`,
          { pointer: '/id' },
        );
      }
      if (photos.totalBytes() + picture.length > mostBytes) {
        throw new BoardcureError(
          'BC_STATE_CONFLICT',
          sentence('pictures-full', { mostMiB: Math.round(mostBytes / 1_048_576) }),
        );
      }
      photos.insert(photo, picture, at);
      changes.note(at, 'photo', photo.id, 'created');
    },
  );
  const remove = db.transaction((id: string, at: number) => {
    if (photos.remove(id, at)) changes.note(at, 'photo', id, 'taken away');
  });
  return {
    addPhoto: (
      photo: Omit<PhotoFact, 'bytes'>,
      picture: Uint8Array,
      mostBytes: number,
      at: number,
    ) => add.immediate(photo, picture, mostBytes, at),
    removePhoto: (id: string, at: number) => remove.immediate(id, at),
  };
}
