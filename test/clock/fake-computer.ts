import { wallClock } from '../../daemon/wall-clock.ts';

/** Clocks of a computer that a test turns. */
export interface FakeComputer {
  wallMs: number;
  monotonicMs: number;
  bootMs: number;
  boot: string;
  synchronised: boolean;
  /** The time service’s mark; null where it has none. */
  mark: number | null;
  hasBatteryClock: boolean;
  /** Lets time go by, all clocks alike. */
  pass(ms: number): void;
  /** Sets the wall clock. */
  set(byMs: number): void;
  clock(): ReturnType<typeof wallClock>;
  /** Switched off for so long, and on again: monotonic time starts anew. */
  restart(boot: string, wallMs: number): void;
}

export function fakeComputer(wallMs: number): FakeComputer {
  return {
    wallMs,
    monotonicMs: 20_000,
    bootMs: 20_000,
    boot: 'boot-1',
    synchronised: false,
    mark: null,
    hasBatteryClock: false,
    pass(ms) {
      this.wallMs += ms;
      this.monotonicMs += ms;
      this.bootMs += ms;
    },
    set(byMs) {
      this.wallMs += byMs;
    },
    restart(boot, wall) {
      this.boot = boot;
      this.wallMs = wall;
      this.monotonicMs = 20_000;
      this.bootMs = 20_000;
    },
    clock() {
      const state = () => ({ synchronised: this.synchronised, mark: this.mark });
      return wallClock({
        read: () => ({
          wallMs: this.wallMs,
          monotonicMs: this.monotonicMs,
          bootMs: this.bootMs,
        }),
        service: { glance: state, ask: async () => state() },
        boot: this.boot,
        hasBatteryClock: this.hasBatteryClock,
      });
    },
  };
}
