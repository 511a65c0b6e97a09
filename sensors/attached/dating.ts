/** When a sample was taken, as far as that is known. */
export interface Taken {
  /** names this running of the computer */
  readonly boot: string;
  /** since the computer was started, ms; never set, never goes back */
  readonly monotonicMs: number;
  /** UTC epoch ms; null when the clock was not believed then */
  readonly at: number | null;
}

/** The clocks now. */
export interface Now {
  readonly boot: string;
  readonly monotonicMs: number;
  /** UTC epoch ms; null while the clock is not believed */
  readonly wallMs: number | null;
}

export type Dated =
  | { readonly kind: 'at'; readonly at: number }
  /** the clock may yet be set in this running of the computer */
  | { readonly kind: 'not-yet' }
  /** taken in an earlier running whose clock was never set: nothing tells when that was */
  | { readonly kind: 'never' };

/**
 * The moment of a sample.
 *
 * A sample taken before the clock was set is dated afterwards, by how long ago it was; that works
 * only within one running of the computer.
 */
export function dated(taken: Taken, now: Now): Dated {
  if (taken.at !== null) return { kind: 'at', at: taken.at };
  if (taken.boot !== now.boot) return { kind: 'never' };
  if (now.wallMs === null) return { kind: 'not-yet' };
  return { kind: 'at', at: Math.round(now.wallMs - (now.monotonicMs - taken.monotonicMs)) };
}

/** What is to be seen of the computer's clock. */
export interface ClockSigns {
  /** UTC epoch ms */
  readonly wallMs: number;
  /** since the computer was started, ms */
  readonly upMs: number;
  /** a time service says that it has set the clock */
  readonly synchronised: boolean;
  readonly hasBatteryClock: boolean;
  /** somebody set the clock forward while we looked on */
  readonly setForward: boolean;
  /** the newest moment in the queue, UTC epoch ms */
  readonly newestAt: number | null;
}

/** A computer without a battery clock starts in 1970 or where it was switched off. */
const EARLIEST_SET_CLOCK = Date.UTC(2026, 0, 1);
/** So long such a computer is given to find a time service. Assumption. */
const PATIENCE_MS = 30 * 60_000;

/** Whether the wall clock can be believed. The signs are those the daemon goes by. */
export function clockIsBelieved(signs: ClockSigns): boolean {
  if (signs.wallMs < EARLIEST_SET_CLOCK) return false;
  if (signs.synchronised) return true;
  if (signs.newestAt !== null && signs.wallMs < signs.newestAt) return false;
  return signs.hasBatteryClock || signs.setForward || signs.upMs >= PATIENCE_MS;
}
