import { readFileSync } from 'node:fs';
import { flowOf, flowStartAt, hourMs } from './store-flow.ts';
import { openStoreOnDisk } from './store-on-disk.ts';

/** What this process has made the kernel write to disks so far, bytes; Linux only. */
export function writtenBytes(): number {
  const counters = readFileSync('/proc/self/io', 'utf8');
  return Number(/^write_bytes: (\d+)$/m.exec(counters)?.[1] ?? Number.NaN);
}

export interface Written {
  readings: number;
  commits: number;
  /** Bytes of a day at this pace: commits, log, packing, and the log’s way into the file. */
  bytesADay: number;
  bytesAReading: number;
}

/**
 * Commits a steady flow as if in real time, packs each hour after its end, and counts what the kernel
 * wrote. The first hour is not counted: a file that grows for the first time is not the rule.
 *
 * @param perSecond - readings a second, evenly spaced; a multiple of 1/20
 * @param spacingSeconds - time between two commits; 0 for one a reading
 */
export function steadyFlow(perSecond: number, spacingSeconds: number, hours: number): Written {
  const store = openStoreOnDisk();
  const flow = flowOf(perSecond * 20);
  let [readings, commits, before] = [0, 0, 0];
  for (let hour = 0; hour <= hours; hour++) {
    if (hour === 1) [readings, commits, before] = [0, 0, writtenBytes()];
    const startAt = flowStartAt + hour * hourMs;
    const all = flow.hour(hour).map((reading, i) => ({
      ...reading,
      at: startAt + Math.floor((i * 1000) / perSecond),
    }));
    const size = Math.max(1, Math.round(perSecond * spacingSeconds));
    for (let i = 0; i < all.length; i += size) {
      const group = all.slice(i, i + size);
      store.write.commitReadings({ readings: group, refused: [], arrivedAt: startAt });
      readings += group.length;
      commits++;
    }
    store.packBefore(startAt + hourMs);
  }
  store.write.checkpoint();
  const bytes = writtenBytes() - before;
  store.remove();
  return {
    readings,
    commits,
    bytesADay: (bytes / hours) * 24,
    bytesAReading: bytes / readings,
  };
}
