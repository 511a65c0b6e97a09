import type { Database } from 'better-sqlite3';
import { databaseFile, openForReading, openForWriting } from '../../daemon/store/open.ts';
import { storeReader, storeWriter } from '../../daemon/store/store.ts';
import { temporaryFolder, timeUnknown } from './store-sides.ts';

/** A store on disk that can be ended at any moment and opened again. */
export function storeToReopen() {
  const { folder, remove } = temporaryFolder();
  const file = databaseFile(folder);
  const open = () => {
    const db = openForWriting(file);
    // What is tested is not the power cut: waiting for the disk would only make it slow.
    db.pragma('synchronous = OFF');
    return { db, write: storeWriter(db, timeUnknown), read: storeReader(openForReading(file)) };
  };
  let sides = open();
  const close = () => {
    sides.read.close();
    sides.write.close();
  };
  return {
    file,
    get db(): Database {
      return sides.db;
    },
    get write() {
      return sides.write;
    },
    get read() {
      return sides.read;
    },
    /** Ends it for good. */
    remove(): void {
      close();
      remove();
    },
    reopen(): void {
      close();
      sides = open();
    },
    packAll(beforeAt: number, limit = 1000): void {
      for (let i = 0; sides.write.packClosedHours(beforeAt, limit).more; i++) {
        if (i > 10_000) throw new Error('packing does not come to an end');
      }
    },
    count: (table: 'reading' | 'packed_hour') =>
      sides.db.prepare<[], number>(`select count(*) from ${table}`).pluck().get(),
  };
}

export type StoreToReopen = ReturnType<typeof storeToReopen>;
