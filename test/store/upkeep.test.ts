import { describe, expect, it } from 'vitest';
import { databaseFile, openForReading } from '../../daemon/store/open.ts';
import { storeReader } from '../../daemon/store/store.ts';
import { startStoreThread } from '../../daemon/store/thread.ts';
import { storeUpkeep } from '../../daemon/store/upkeep.ts';
import { day1, group, hourMs, reading } from './site-of-facts.ts';
import { builtWorker, temporaryFolder, timeUnknown } from './store-sides.ts';

const forEver = { readingDays: null, hourDays: null, dayDays: null };

/** A writer of which only packing is asked; each slice ends when it is told to. */
function slowPacking() {
  const slices: { beforeAt: number; end: (more: boolean) => Promise<void> }[] = [];
  return {
    slices,
    writer: {
      packClosedHours: (beforeAt: number) =>
        new Promise<{ readings: number; more: boolean }>((resolve) => {
          slices.push({
            beforeAt,
            async end(more) {
              resolve({ readings: 0, more });
              await new Promise(setImmediate);
            },
          });
        }),
      letGo: async () => ({ more: false }),
    },
  };
}

describe('the store’s upkeep', () => {
  it('goes on until all closed hours are packed, one slice after the other', async () => {
    const { slices, writer } = slowPacking();
    const upkeep = storeUpkeep(writer, forEver, () => {});
    const done = upkeep.pack(day1 + hourMs);
    expect(upkeep.pack(day1 + hourMs)).toBe(done);
    await slices[0]?.end(true);
    expect(slices).toHaveLength(2);
    await slices[1]?.end(false);
    await done;
    expect(slices).toHaveLength(2);
  });

  it('gives an hour a few minutes for what is a little late', () => {
    const { slices, writer } = slowPacking();
    void storeUpkeep(writer, forEver, () => {}).pack(day1 + hourMs);
    expect(slices[0]?.beforeAt).toBe(day1 + hourMs - 5 * 60_000);
  });

  it('does not let years of a recording pile up', async () => {
    const { slices, writer } = slowPacking();
    const upkeep = storeUpkeep(writer, forEver, () => {});
    upkeep.tookIn(19_999, day1);
    expect(slices).toHaveLength(0);
    upkeep.tookIn(1, day1);
    upkeep.tookIn(20_000, day1);
    expect(slices).toHaveLength(1);
    await slices[0]?.end(false);
    upkeep.tookIn(1, day1);
    expect(slices).toHaveLength(2);
  });

  it('begins no slice after it was closed, and tells when it cannot', async () => {
    const { slices, writer } = slowPacking();
    const failures: unknown[] = [];
    const upkeep = storeUpkeep(writer, forEver, (cause) => failures.push(cause));
    const done = upkeep.pack(day1);
    upkeep.close();
    await slices[0]?.end(true);
    await done;
    expect(slices).toHaveLength(1);
    const broken = { ...writer, packClosedHours: () => Promise.reject(new Error('no room')) };
    storeUpkeep(broken, forEver, (cause) => failures.push(cause)).tookIn(20_000, day1);
    await new Promise(setImmediate);
    expect(failures).toMatchObject([{ message: 'no room' }]);
  });

  it('lets commits in between its slices', async () => {
    const { folder, remove } = temporaryFolder();
    const file = databaseFile(folder);
    const thread = await startStoreThread({ file, timeUnknownBit: timeUnknown }, builtWorker);
    const sensors = Array.from({ length: 40 }, (_, i) => `n${i}`);
    for (let hour = 0; hour < 3; hour++) {
      const readings = Array.from({ length: 60 }, (_, m) =>
        sensors.map((id) => reading(id, day1 + hour * hourMs + m * 60_000, 18)),
      ).flat();
      await thread.commitReadings(group(...readings));
    }
    const order: string[] = [];
    const counted: typeof thread.packClosedHours = async (...args) => {
      const slice = await thread.packClosedHours(...args);
      order.push('slice');
      return slice;
    };
    const writer = { packClosedHours: counted, letGo: thread.letGo };
    const done = storeUpkeep(writer, forEver, () => {}).pack(day1 + 9 * hourMs);
    await thread.commitReadings(group(reading('n1', day1 + 8 * hourMs, 19)));
    order.push('commit');
    await done;
    expect(order.indexOf('commit')).toBeLessThanOrEqual(1);
    expect(order.filter((one) => one === 'slice').length).toBeGreaterThan(3);
    const read = storeReader(openForReading(file));
    const all = read.readingsBetween(1, 'air-temperature', 0, Number.MAX_SAFE_INTEGER);
    expect(all).toHaveLength(180);
    read.close();
    await thread.close();
    await thread.ended;
    remove();
  });
});
