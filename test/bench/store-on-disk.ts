import { existsSync, mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { databaseFile, openForReading, openForWriting } from '../../daemon/store/open.ts';
import { storeReader, storeWriter } from '../../daemon/store/store.ts';

const timeUnknown = 2;
/** Usually on a disk, where the folder for short-lived files may be memory. */
const lasting = '/var/tmp';

/** A folder on a real disk. */
export function lastingFolder() {
  const folder = mkdtempSync(join(existsSync(lasting) ? lasting : tmpdir(), 'boardcure-bench-'));
  return { folder, remove: () => rmSync(folder, { recursive: true, force: true }) };
}

/** A store on a real disk, with nothing else around it. */
export function openStoreOnDisk() {
  const { folder } = lastingFolder();
  const file = databaseFile(folder);
  const db = openForWriting(file);
  const write = storeWriter(db, timeUnknown);
  const reading = openForReading(file);
  const read = storeReader(reading);
  let open = true;
  const close = () => {
    if (!open) return;
    open = false;
    read.close();
    write.checkpoint();
    write.close();
  };
  return {
    folder,
    write,
    read,
    close,
    /** Packs all hours that end by then. */
    packBefore(at: number, limit = 2000): void {
      while (write.packClosedHours(at, limit).more);
    },
    /** Does what is not measured, without waiting for the disk at each commit. */
    hurriedly(act: () => void): void {
      db.pragma('synchronous = OFF');
      act();
      db.pragma('synchronous = FULL');
    },
    bytes: () => statSync(file).size,
    remove(): void {
      close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
export type StoreOnDisk = ReturnType<typeof openStoreOnDisk>;
