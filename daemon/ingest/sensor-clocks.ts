import type { Said } from '../contract/sentence.ts';
import { sentence } from '../wording/english.ts';

/** What is to be seen of a sensor’s clock. */
export interface OddClock {
  sensor: string;
  /** How far its own times lie before (−) or after (+) their arrival, ms. */
  offMs: number;
}

/** Within this a sensor’s clock is right, or its message was long on its way. Assumption. */
const allowedMs = 5 * 60_000;
/** No clock is wrong by more than this; older times are a recording or a backlog. Assumption. */
const mostMs = 26 * 3_600_000;
/** A clock that is off is off by the same amount all the time. Assumption. */
const steadyMs = 30_000;
/** How long it must have been so, ms, and over how many messages. Assumption. */
const seenForMs = 10 * 60_000;
const seenOften = 5;
/** Sensors that are watched at most; the one longest silent goes first. */
const mostWatched = 2000;

interface Watched {
  offMs: number;
  sinceAt: number;
  count: number;
  heardAt: number;
}

/**
 * Watches for sensors whose clock is off.
 *
 * A clock that runs ahead shows at once. One that runs behind looks like a backlog, since its times
 * lie in the past; but a backlog comes in faster than it was measured, so that its distance to now
 * shrinks, while a clock that is off keeps its distance. A line that delays everything by the same
 * amount cannot be told from it.
 */
export function sensorClocks() {
  const watched = new Map<string, Watched>();
  return {
    /** A message that was sent just now gave its own time; both UTC epoch ms. */
    heard(sensor: string, ownAt: number, at: number): void {
      const offMs = ownAt - at;
      const known = watched.get(sensor);
      if (known && Math.abs(offMs - known.offMs) <= steadyMs) {
        known.count++;
        known.heardAt = at;
        return;
      }
      watched.set(sensor, { offMs, sinceAt: at, count: 1, heardAt: at });
      if (watched.size > mostWatched) watched.delete(longestSilent(watched));
    },
    /** Sensors whose clock is off, with how far. */
    odd: (at: number): OddClock[] =>
      [...watched].flatMap(([sensor, { offMs, sinceAt, count }]) => {
        const isOff = Math.abs(offMs) > allowedMs && Math.abs(offMs) <= mostMs;
        const isSteady = count >= seenOften && at - sinceAt >= seenForMs;
        return isOff && isSteady ? [{ sensor, offMs }] : [];
      }),
  };
}

function longestSilent(watched: ReadonlyMap<string, Watched>): string {
  const [first] = [...watched].reduce((a, b) => (b[1].heardAt < a[1].heardAt ? b : a));
  return first;
}

/** Sentences for the operator; none when all is well. */
export function clockDoubts(odd: readonly OddClock[]): Said[] {
  return odd.map(({ sensor, offMs }) => {
    const minutes = Math.round(Math.abs(offMs) / 60_000);
    return sentence(offMs > 0 ? 'sensor-clock/ahead' : 'sensor-clock/behind', { sensor, minutes });
  });
}
