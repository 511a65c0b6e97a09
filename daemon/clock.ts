import type { Said } from './contract/sentence.ts';

/** What a database tells a clock at the start. */
export interface KnownTime {
  /** The newest moment that is on record, UTC epoch ms; null when nothing is. */
  newestAt: number | null;
  /** The running of the computer during which the clock was last trusted; null when never. */
  trustedBoot: string | null;
}

/** Time as the daemon sees it: the wall clock by default, a fast one in the simulated shed. */
export interface Clock {
  /** UTC epoch milliseconds, integer; never goes back while the clock is trusted. */
  now(): number;
  /** Milliseconds since the computer was started, or another fixed moment; never goes back. */
  monotonic(): number;
  /** False while nothing vouches for the wall clock, as after a start without a battery clock. */
  trusted(): boolean;
  /** Names the running of the computer that monotonic time belongs to. */
  readonly boot: string;
  /** What is amiss with the time and what to do, in sentences; none when all is well. */
  doubts(): Said[];
  /** Told once, before the first reading, what is on record. */
  learn(known: KnownTime): void;
  /** Looks after the time from now on, and calls back when the clock comes to be trusted. */
  watch(trusted: () => void): { close(): void };
  /** How many seconds of its time pass in one of the wall's. */
  readonly speed: number;
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
    boot: 'fast',
    doubts: () => [],
    learn() {},
    watch: () => ({ close() {} }),
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
