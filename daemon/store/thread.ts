import { Worker } from 'node:worker_threads';
import { BoardcureError } from '../contract/problem.ts';
import type { StoreWriter } from './store.ts';
import { resultOf, type ThreadReply, type ThreadStart, threadRequest } from './thread-message.ts';

type Verbs = {
  [K in keyof StoreWriter]: (
    ...args: Parameters<StoreWriter[K]>
  ) => Promise<ReturnType<StoreWriter[K]>>;
};

/** The store’s writer, behind its thread: the same verbs, each a promise, answered in order. */
export interface StoreThread extends Verbs {
  /** Settles when the thread is gone; with an error if nobody closed it. */
  readonly ended: Promise<Error | null>;
}

/**
 * Starts the thread that owns the write connection and waits until the database is ready.
 *
 * @param workerUrl - the compiled worker; only tests give another one
 * @throws Error when the database cannot be opened or brought to the newest version
 */
export async function startStoreThread(
  start: ThreadStart,
  workerUrl: URL = new URL('./worker.js', import.meta.url),
): Promise<StoreThread> {
  const worker = new Worker(workerUrl, { workerData: start });
  const waiting = new Map<
    number,
    { resolve: (result: unknown) => void; reject: (cause: Error) => void }
  >();
  let lastId = 0;
  let closing = false;
  let gone: Error | null = null;

  const opened = new Promise<unknown>((resolve, reject) => waiting.set(0, { resolve, reject }));
  const ended = new Promise<Error | null>((resolve) => {
    let death: Error | null = null;
    worker.on('error', (cause: Error) => {
      death = cause;
    });
    worker.on('exit', (code) => {
      const why =
        death ?? (closing ? null : new Error(`The store’s thread ended with code ${code}.`));
      gone = why ?? new Error('The store was closed.');
      for (const { reject } of waiting.values()) reject(gone);
      waiting.clear();
      resolve(why);
    });
  });
  worker.on('message', (reply: ThreadReply) => {
    const asked = waiting.get(reply.id);
    waiting.delete(reply.id);
    if (!asked) return;
    if (reply.kind === 'done' || reply.kind === 'committed') asked.resolve(resultOf(reply));
    else asked.reject(failure(reply));
  });

  function ask(verb: keyof StoreWriter, args: unknown[]): Promise<unknown> {
    // A thread that is gone answers nothing.
    if (gone) return verb === 'close' ? Promise.resolve() : Promise.reject(gone);
    if (verb === 'close') closing = true;
    const id = ++lastId;
    worker.postMessage(threadRequest(id, verb, args));
    return new Promise((resolve, reject) => waiting.set(id, { resolve, reject }));
  }

  await opened;
  return new Proxy({ ended } as StoreThread, {
    get(target, name) {
      if (name in target) return target[name as keyof StoreThread];
      if (typeof name !== 'string' || name === 'then') return undefined;
      return (...args: unknown[]) => ask(name as keyof StoreWriter, args);
    },
  });
}

function failure(reply: Exclude<ThreadReply, { result: unknown }>): Error {
  switch (reply.kind) {
    case 'refused':
      return new BoardcureError(
        reply.code,
        reply.detail,
        reply.pointer === null ? {} : { pointer: reply.pointer },
      );
    case 'full':
      return new BoardcureError('BC_STORE_FULL', `Nothing could be written: ${reply.message}.`);
    case 'failed':
      return new Error(`The store failed: ${reply.message}`, { cause: reply.stack });
  }
}
