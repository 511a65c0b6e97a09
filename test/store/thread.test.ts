import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { databaseFile, openForReading } from '../../daemon/store/open.ts';
import { storeReader } from '../../daemon/store/store.ts';
import { startStoreThread } from '../../daemon/store/thread.ts';
import { day1, group, reading } from './site-of-facts.ts';
import { builtWorker, temporaryFolder, timeUnknown } from './store-sides.ts';

let folder: string;
let remove: () => void;
beforeEach(() => {
  ({ folder, remove } = temporaryFolder());
});
afterEach(() => remove());

const start = (worker: URL = builtWorker) =>
  startStoreThread({ file: databaseFile(folder), timeUnknownBit: timeUnknown }, worker);

/** A worker that starts as the real one does, and then does what a test wants to see survived. */
function dyingWorker(onMessage: string): URL {
  const file = join(folder, 'dying-worker.mjs');
  writeFileSync(
    file,
    `import { parentPort } from 'node:worker_threads';
     parentPort.on('message', (request) => { ${onMessage} });
     parentPort.postMessage({ id: 0, kind: 'done', result: null });`,
  );
  return pathToFileURL(file);
}

describe('the store’s thread', () => {
  it('answers in the order of asking', async () => {
    const store = await start();
    const done: number[] = [];
    await Promise.all(
      [0, 1, 2, 3, 4].map(async (i) => {
        await store.commitReadings(group(reading('n1', day1 + i, i)));
        done.push(i);
      }),
    );
    expect(done).toEqual([0, 1, 2, 3, 4]);
    await store.close();
    expect(await store.ended).toBeNull();
  });

  it('has on disk what it answered for, also when nobody closes it', async () => {
    const store = await start();
    await store.commitReadings(group(reading('n1', day1, 18)));
    const read = storeReader(openForReading(databaseFile(folder)));
    expect(read.sensors()).toHaveLength(1);
    read.close();
    await store.close();
    await store.ended;
  });

  it('does not start on a file it cannot use, and says which', async () => {
    writeFileSync(databaseFile(folder), 'Dear diary, '.repeat(1000));
    await expect(start()).rejects.toThrow(databaseFile(folder));
  });

  it('that dies takes nothing to its grave: what waits is rejected, and it is told', async () => {
    const store = await start(dyingWorker(`throw new Error('out of luck')`));
    const waits = [
      store.commitReadings(group(reading('n1', day1, 18))),
      store.commitReadings(group(reading('n1', day1 + 1, 18))),
    ];
    for (const outcome of await Promise.allSettled(waits)) {
      expect(outcome).toMatchObject({ status: 'rejected', reason: { message: 'out of luck' } });
    }
    expect(await store.ended).toMatchObject({ message: 'out of luck' });
  });

  it('that ends without a word is told too', async () => {
    const store = await start(dyingWorker('process.exit(3)'));
    await expect(store.checkpoint()).rejects.toThrow('ended with code 3');
    expect(await store.ended).toMatchObject({ message: expect.stringContaining('code 3') });
  });

  it('refuses what is asked of it when it is gone, instead of leaving it to wait', async () => {
    const store = await start();
    await store.close();
    await store.ended;
    await expect(store.checkpoint()).rejects.toThrow('The store was closed.');
    await store.close();
  });

  it('that cannot write for want of space says so by its code', async () => {
    const full = `parentPort.postMessage({ id: request.id, kind: 'full', message: 'database or disk is full' });`;
    const store = await start(
      dyingWorker(`${full} if (request.verb === 'close') parentPort.close();`),
    );
    await expect(store.checkpoint()).rejects.toMatchObject({ code: 'BC_STORE_FULL' });
    await store.close().catch(() => {});
    await store.ended;
  });
});
