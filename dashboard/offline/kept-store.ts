import { clear, createStore, del, get, set, values } from 'idb-keyval';
import type { LastHeard } from '../api.ts';
import type { Entry, EntryStore } from './entry.ts';

/** Entries in this browser’s own database, a record each. */
export function keptEntries(): EntryStore {
  const store = lazily('boardcure-entries');
  return {
    all: () => values<Entry>(store()),
    put: (entry) => set(entry.id, entry, store()),
    remove: (id) => del(id, store()),
  };
}

/** What the daemon last said, to be shown while it is away. */
export function keptReplies(): LastHeard {
  const store = lazily('boardcure-replies');
  return {
    get: (address) => get<{ reply: unknown; heardAt: number }>(address, store()),
    put: (address, kept) => set(address, kept, store()),
    clear: () => clear(store()),
  };
}

/** Opened when it is first needed: where the browser has none, that is when it is told. */
function lazily(name: string): () => ReturnType<typeof createStore> {
  let store: ReturnType<typeof createStore> | null = null;
  return () => {
    store ??= createStore(name, 'kept');
    return store;
  };
}
