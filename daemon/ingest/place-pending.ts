import { type Arrival, flagMask, readingTime } from '../../sensors/correct/reading-time.ts';
import type {
  IncomingReading,
  KeptPendingReading,
  PendingBoot,
  ReadingGroup,
} from '../rules/facts.ts';

/** The clock at a moment, now that it is trusted. */
export interface TrustedMoment {
  /** UTC epoch ms. */
  now: number;
  /** How long the computer has been running, ms. */
  upMs: number;
  /** Names this running of the computer. */
  boot: string;
}

/**
 * When each running of the computer began, UTC epoch ms.
 *
 * Of this one that is known. An earlier one whose clock was never set ended at the latest when the
 * next one began; it is laid there, and what it left has an unknown time.
 *
 * @param boots - in the order in which they ran
 */
export function bootTimes(
  boots: readonly PendingBoot[],
  { now, upMs, boot }: TrustedMoment,
): Map<string, number> {
  const began = new Map<string, number>();
  let nextAt = now - upMs;
  for (const one of [...boots].reverse()) {
    const at = one.boot === boot ? now - upMs : nextAt - one.lastMs - 1;
    began.set(one.boot, at);
    if (one.boot !== boot) nextAt = at + one.firstMs;
  }
  return began;
}

/**
 * Readings that waited for the clock, with the times they are given now. Its own time counts where
 * it can be believed, else the moment of its arrival.
 *
 * @param began - when each running of the computer began, UTC epoch ms
 */
export function placed(
  waiting: readonly KeptPendingReading[],
  began: ReadonlyMap<string, number>,
  boot: string,
): IncomingReading[] {
  return waiting.map(({ boot: itsBoot, monotonicMs, ownAt, sensor, quantity, raw, flags }) => {
    const arrival: Arrival = {
      at: Math.round((began.get(itsBoot) ?? 0) + monotonicMs),
      clockTrusted: true,
      retained: false,
      backlog: flags !== 0 || itsBoot !== boot,
    };
    const time = readingTime(ownAt, arrival);
    // A trusted clock lets nothing wait, and what is not retained is not dropped.
    if (time.kind !== 'use') throw new Error(`A waiting reading of ${sensor} got no time.`);
    return {
      sensor,
      quantity,
      at: time.at,
      raw,
      flags: flagMask([...time.flags, 'clock-untrusted']),
    };
  });
}

export interface PendingPlacerParts<Committed> {
  oldest: (limit: number) => KeptPendingReading[];
  boots: () => PendingBoot[];
  /** Settles once the readings have their places and wait no longer. */
  place: (group: ReadingGroup, ranks: number[]) => Promise<Committed>;
  committed: (result: Committed) => void;
  /** The clock; null while it is not trusted. */
  moment: () => TrustedMoment | null;
}

/** So many at once that the store is not kept from new readings for long. */
const atOnce = 2000;

/** Gives readings that waited for the clock their places, once it is trusted. */
export function pendingPlacer<Committed>(parts: PendingPlacerParts<Committed>) {
  const { oldest, boots, place, committed, moment } = parts;
  let running: Promise<number> | null = null;

  async function placeAll(): Promise<number> {
    let count = 0;
    for (;;) {
      const trusted = moment();
      const waiting = trusted ? oldest(atOnce) : [];
      if (!trusted || waiting.length === 0) return count;
      const readings = placed(waiting, bootTimes(boots(), trusted), trusted.boot);
      const ranks = waiting.map(({ rank }) => rank);
      committed(await place({ readings, refused: [], arrivedAt: trusted.now }, ranks));
      count += ranks.length;
    }
  }

  /** Places all that waits; returns how many. One round at a time. */
  return (): Promise<number> => {
    running ??= placeAll().finally(() => {
      running = null;
    });
    return running;
  };
}
