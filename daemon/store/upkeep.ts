import type { KeptLevel } from './let-go.ts';
import type { StoreThread } from './thread.ts';

/** An hour is packed this long after its end: what is a little late is then in it already. */
const closedAfterMs = 5 * 60_000;
/** Readings that are packed in one transaction; a commit waits no longer than that takes. */
const sliceReadings = 2000;
/** So many new readings are not left to wait for the next time that packing is due. */
const manyReadings = 20_000;
const dayMs = 24 * 3_600_000;

/** How long each level is kept, days; null for ever. */
export interface Retention {
  readingDays: number | null;
  hourDays: number | null;
  dayDays: number | null;
}

/**
 * What the store does to itself while readings come in, a slice at a time; what is asked of it
 * meanwhile goes between.
 *
 * @param failed - told when what was begun by many readings could not be done
 */
export function storeUpkeep(
  writer: Pick<StoreThread, 'packClosedHours' | 'letGo'>,
  retention: Retention,
  failed: (cause: unknown) => void,
) {
  let closed = false;
  let packing: Promise<void> | null = null;
  let takenIn = 0;
  const levels = (): readonly (readonly [KeptLevel, number | null])[] => [
    ['readings', retention.readingDays],
    ['hours', retention.hourDays],
    ['days', retention.dayDays],
  ];

  async function packAll(beforeAt: number): Promise<void> {
    takenIn = 0;
    try {
      while (!closed && (await writer.packClosedHours(beforeAt, sliceReadings)).more);
    } finally {
      packing = null;
    }
  }

  /** Packs all hours that are closed by now. */
  function pack(now: number): Promise<void> {
    packing ??= packAll(now - closedAfterMs);
    return packing;
  }

  return {
    pack,
    /** To be told of each commit: what years of a recording bring at once is packed as it comes. */
    tookIn(readings: number, now: number): void {
      takenIn += readings;
      if (takenIn >= manyReadings && !packing) pack(now).catch(failed);
    },
    /** Lets go of what is older than it is to be kept. */
    async letGo(now: number): Promise<void> {
      for (const [level, days] of levels()) {
        if (days === null) continue;
        while (!closed && (await writer.letGo(level, now - days * dayMs)).more);
      }
    },
    /** Begins no further slice. */
    close(): void {
      closed = true;
    },
  };
}
