import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { databaseFile, openForReading, openForWriting } from '../../daemon/store/open.ts';
import {
  type StoreReader,
  type StoreWriter,
  storeReader,
  storeWriter,
} from '../../daemon/store/store.ts';
import { type StoreThread, startStoreThread } from '../../daemon/store/thread.ts';

/** The flag that says the time of a reading is not known, as these tests choose it. */
export const timeUnknown = 2;

/** Worker code as the daemon runs it: the build leaves it here. */
export const builtWorker = new URL('../../.build/daemon/store/worker.js', import.meta.url);

export type Verbs = Omit<StoreThread, 'ended'>;

/** A store that can be asked, whichever side of the thread its writer lives on. */
export interface OpenStore {
  write: Verbs;
  read: StoreReader;
  close(): Promise<void>;
}

export interface StoreSide {
  name: string;
  open(): Promise<OpenStore>;
}

export function temporaryFolder(): { folder: string; remove(): void } {
  const folder = mkdtempSync(join(tmpdir(), 'boardcure-store-'));
  return { folder, remove: () => rmSync(folder, { recursive: true, force: true }) };
}

/** The writer’s verbs as promises, without a thread. */
export function inThisThread(writer: StoreWriter): Verbs {
  return new Proxy({} as Verbs, {
    get: (_, name) => {
      if (name === 'then') return undefined;
      const act = writer[name as keyof StoreWriter] as (...args: unknown[]) => unknown;
      return async (...args: unknown[]) => act(...args);
    },
  });
}

export const storeSides: readonly StoreSide[] = [
  {
    name: 'in memory, in this thread',
    async open() {
      const db = openForWriting(':memory:');
      return {
        write: inThisThread(storeWriter(db, timeUnknown)),
        read: storeReader(db),
        close: async () => {
          db.close();
        },
      };
    },
  },
  {
    name: 'on disk, behind its thread',
    async open() {
      const { folder, remove } = temporaryFolder();
      const file = databaseFile(folder);
      const thread = await startStoreThread({ file, timeUnknownBit: timeUnknown }, builtWorker);
      const read = storeReader(openForReading(file));
      return {
        write: thread,
        read,
        async close() {
          read.close();
          await thread.close();
          await thread.ended;
          remove();
        },
      };
    },
  },
];
