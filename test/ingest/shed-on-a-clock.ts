import { groupCommit } from '../../daemon/ingest/group-commit.ts';
import { createIntake } from '../../daemon/ingest/intake.ts';
import { pendingPlacer } from '../../daemon/ingest/place-pending.ts';
import { sensorClocks } from '../../daemon/ingest/sensor-clocks.ts';
import { teachClock } from '../../daemon/site-time.ts';
import type { FakeComputer } from '../clock/fake-computer.ts';
import { openSite } from '../monitor/site.ts';

export const minute = 60_000;
export const hour = 60 * minute;

/**
 * Intake, store and ledger as the daemon has them, on a computer whose clocks the test turns: a room
 * with one sensor, and a batch in it whose coat was finished at a moment.
 */
export function shedOnAClock(computer: FakeComputer, finishedAt: number) {
  const site = openSite();
  const placeId = site.place('Loft', 'room');
  site.send([{ sensor: 'node', at: finishedAt - 10 * minute, value: 20 }]);
  site.put('node', placeId);
  const batchId = site.batch(placeId);
  site.coat(batchId, 0, finishedAt);
  let parts = start();

  function start() {
    const clock = computer.clock();
    teachClock(clock, site.reader);
    const sensors = sensorClocks();
    const queue = groupCommit({
      commit: async (group) => site.writer.commitReadings(group),
      committed: (result) => {
        site.monitor.committed(result);
        intake.count(result.fresh.length, result.duplicates);
      },
      failed: (cause) => {
        throw cause;
      },
      now: clock.now,
      spacingMs: 0,
      groupSize: 1,
    });
    const intake = createIntake({
      site: 'shed',
      maxPayloadBytes: 65_536,
      now: clock.now,
      clockTrusted: clock.trusted,
      boot: { name: clock.boot, upMs: clock.monotonic },
      heardTime: sensors.heard,
      queue,
    });
    const place = pendingPlacer({
      oldest: site.reader.pendingReadings,
      boots: site.reader.pendingBoots,
      place: async (group, ranks) => site.writer.placePending(group, ranks),
      committed: (result) => site.monitor.committed(result),
      moment: () =>
        clock.trusted() ? { now: clock.now(), upMs: clock.monotonic(), boot: clock.boot } : null,
    });
    return { clock, sensors, queue, intake, place };
  }

  return {
    site,
    /** As after a restart of the daemon, or of the whole computer. */
    restart(): void {
      site.restart();
      parts = start();
    },
    clock: () => parts.clock,
    counts: () => parts.intake.counts,
    oddClocks: () => parts.sensors.odd(parts.clock.now()),
    place: () => parts.place(),
    /** One message; settles once it is acknowledged. */
    send: (value: number, time: number | string | null = null): Promise<void> =>
      new Promise((resolve, reject) => {
        parts.intake.take(
          {
            topic: 'boardcure/shed/sensor/node/air-temperature',
            payload: Buffer.from(time === null ? String(value) : JSON.stringify({ value, time })),
            retained: false,
            backlog: false,
          },
          (failure) => (failure ? reject(failure) : resolve()),
        );
      }),
    /** Times of all readings, in order. */
    times: (): number[] =>
      site.reader
        .readingsBetween(1, 'air-temperature', 0, Number.MAX_SAFE_INTEGER)
        .map(({ at }) => at),
    flags: (): number[] =>
      site.reader
        .readingsBetween(1, 'air-temperature', 0, Number.MAX_SAFE_INTEGER)
        .map(({ flags }) => flags),
    waiting: (): number => site.reader.pendingBoots().reduce((sum, { count }) => sum + count, 0),
    degreeHours: (): number => {
      const [coat] = site.coatsAt(batchId, parts.clock.now());
      if (!coat) throw new Error('no coat');
      return coat.degreeHours;
    },
    close: (): void => site.close(),
  };
}
export type ShedOnAClock = ReturnType<typeof shedOnAClock>;
