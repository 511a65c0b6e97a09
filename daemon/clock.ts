/** Time as the daemon sees it: the wall clock by default, a fast one in the simulated shed. */
export interface Clock {
  /** UTC epoch milliseconds, integer. */
  now(): number;
  /** Milliseconds since an arbitrary start; never goes back. */
  monotonic(): number;
  /** False while the wall clock has evidently never been set. */
  trusted(): boolean;
  /** How many seconds of its time pass in one of the wall's. */
  readonly speed: number;
}

/** A computer without a battery clock starts in 1970; nothing dated before this is a set clock. */
const EARLIEST_SET_CLOCK = Date.UTC(2026, 0, 1);

export function wallClock(): Clock {
  return {
    now: () => Date.now(),
    monotonic: () => performance.now(),
    trusted: () => Date.now() >= EARLIEST_SET_CLOCK,
    speed: 1,
  };
}

export interface FastClock extends Clock {
  /** From now on time runs this many times faster than the wall. */
  setSpeed(speed: number): void;
  /** Sets the time; it goes on from there. */
  jumpTo(at: number): void;
}

/**
 * A clock that runs `speed` times faster than the wall.
 *
 * @param startAt - UTC epoch ms at which it starts
 * @param speed - factor, > 0
 */
export function fastClock(startAt: number, speed: number): FastClock {
  let base = startAt;
  let since = performance.now();
  let factor = speed;
  const now = () => Math.round(base + (performance.now() - since) * factor);
  const rebase = (at: number) => {
    base = at;
    since = performance.now();
  };
  return {
    now,
    monotonic: () => performance.now(),
    trusted: () => true,
    get speed() {
      return factor;
    },
    setSpeed(next) {
      rebase(now());
      factor = next;
    },
    jumpTo: rebase,
  };
}
