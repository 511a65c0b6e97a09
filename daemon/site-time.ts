import type { Clock } from './clock.ts';
import type { Said } from './contract/sentence.ts';
import { pendingPlacer } from './ingest/place-pending.ts';
import { clockDoubts, sensorClocks } from './ingest/sensor-clocks.ts';
import type { Committed } from './store/commit-readings.ts';
import type { StoreReader } from './store/store.ts';
import type { StoreThread } from './store/thread.ts';

interface SiteTimeParts {
  clock: Clock;
  reader: StoreReader;
  writer: StoreThread;
  /** Told of readings that were given their places. */
  committed: (result: Committed) => void;
  log: { info(facts: object, text: string): void; error(facts: object, text: string): void };
}

/** Tells a clock what the database knows of the time; to be done before anything is dated. */
export function teachClock(clock: Clock, reader: StoreReader): void {
  let newestAt: number | null = null;
  for (const { key } of reader.sensors()) {
    const lastAt = reader.readingExtent(key, 'air-temperature')?.lastAt ?? null;
    if (lastAt !== null && lastAt > (newestAt ?? lastAt - 1)) newestAt = lastAt;
  }
  clock.learn({ newestAt, trustedBoot: reader.trustedBoot() });
}

/** Looks after the site’s time: the clock, readings that wait for it, and sensors’ own clocks. */
export function siteTime({ clock, reader, writer, committed, log }: SiteTimeParts) {
  const sensors = sensorClocks();
  const placeAll = pendingPlacer({
    oldest: reader.pendingReadings,
    boots: reader.pendingBoots,
    place: (group, ranks) => writer.placePending(group, ranks),
    committed,
    moment: () =>
      clock.trusted() ? { now: clock.now(), upMs: clock.monotonic(), boot: clock.boot } : null,
  });

  async function settle(): Promise<void> {
    if (!clock.trusted()) return;
    try {
      await writer.noteTrustedBoot(clock.boot);
      const count = await placeAll();
      if (count > 0) log.info({ count }, 'readings that waited for the clock have their times');
    } catch (cause) {
      // They wait on; it is tried again every minute.
      log.error({ cause: String(cause) }, 'readings that waited for the clock could not be placed');
    }
  }
  const watch = clock.watch(() => void settle());

  return {
    heardTime: sensors.heard,
    /** Gives what waits its place, where the clock is trusted. */
    settle,
    /** What is amiss with the time, for the operator. */
    doubts: (): Said[] => [...clock.doubts(), ...clockDoubts(sensors.odd(clock.now()))],
    close: watch.close,
  };
}
