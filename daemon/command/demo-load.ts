import { setTimeout as pause } from 'node:timers/promises';
import { connectPublisher } from '../../sensors/publish/publisher.ts';
import { crowd } from '../../sensors/shed/crowd.ts';
import type { CommandIo } from './command-io.ts';

export interface LoadOptions {
  /** the broker that takes it */
  readonly to: string;
  readonly sensors: number;
  /** readings a second in all */
  readonly rate: number;
  readonly seed: number;
}

const TICK_MS = 100;
const TELL_EVERY_MS = 5000;
/** At most this many wait for their acknowledgement. */
const WINDOW = 1000;

/**
 * Sends the readings of many sensors at a steady rate until it is asked to stop: what a daemon, or a
 * broker before it, can take.
 *
 * @param options - how many and where to
 * @param io - where lines go, and when to stop
 * @returns exit code: 0 when stopped, 1 when the broker could not be reached
 */
export async function demoLoad(options: LoadOptions, io: CommandIo): Promise<number> {
  const { to, sensors, rate, seed } = options;
  let publisher: Awaited<ReturnType<typeof connectPublisher>>;
  try {
    publisher = await connectPublisher({
      ...{ url: to, site: 'shed', name: 'boardcure-load', window: WINDOW },
      stop: io.stop,
      onLink: (state) =>
        io.stderr(state === 'lost' ? 'The broker is away …' : 'The broker is back.'),
    });
  } catch (error) {
    io.stderr(`${to} could not be reached: ${(error as Error).message}. Is a broker there?`);
    return 1;
  }
  const many = crowd(sensors, seed);
  io.stderr(`Sending ${rate} readings a second of ${sensors} sensors to ${to}; stop with Ctrl+C.`);
  const startedAt = performance.now();
  let due = 0;
  let toldAt = startedAt;
  try {
    while (!io.stop.aborted) {
      const now = performance.now();
      // what a slow broker held up is not sent after it: the rate is a rate
      due = Math.min(due + (rate * TICK_MS) / 1000, rate);
      for (; due >= 1; due--) await publisher.publish(many.next(Date.now()));
      if (now - toldAt >= TELL_EVERY_MS) {
        toldAt = now;
        const { published, acknowledged } = publisher.counts();
        const perSecond = (acknowledged / (now - startedAt)) * 1000;
        io.stderr(
          `${published} sent, ${acknowledged} acknowledged, ${perSecond.toFixed(0)} a second on average`,
        );
      }
      await pause(TICK_MS, undefined, { signal: io.stop });
    }
  } catch (error) {
    if (!io.stop.aborted) throw error;
  } finally {
    await publisher.close();
  }
  io.stdout(JSON.stringify({ event: 'load', ...publisher.counts() }));
  return 0;
}
