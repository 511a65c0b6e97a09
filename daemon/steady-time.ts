/** The clocks of a computer, read at one moment; all in milliseconds. */
export interface ClockReadings {
  /** UTC epoch; may be set to anything at any time. */
  wallMs: number;
  /** Since the computer was started; never set, never goes back, stands still while it sleeps. */
  monotonicMs: number;
  /** Since the computer was started, sleep included; to a second or so. Read only when needed. */
  readonly bootMs: number;
}

/**
 * Between two looks the wall clock may be this far off the monotonic one without having been set:
 * a leap second, and what reading three clocks one after the other costs. Assumption.
 */
const leapMs = 2000;
/**
 * A time service may speed a clock up or slow it down by 8.3 %, one twelfth.
 *
 * **Source:** chrony.conf(5) of chrony 4.3, maxslewrate.
 */
const slewShare = 0.1;
/** How fast our time goes while it is ahead and waits for the wall clock to come up with it. */
const catchingUp = 0.5;

/**
 * Time that follows the wall clock as long as that runs, and not where it is set.
 *
 * A reading that is dated by its arrival takes its place in a sum by how long after the last one it
 * came. Setting the clock does not change that, so a step is held off until `follow` is called, and
 * even then time never goes back: it runs slowly until the wall clock has caught up.
 */
export function steadyTime(first: ClockReadings) {
  let last = first;
  let sleptMs = first.bootMs - first.monotonicMs;
  let ours = first.wallMs;
  /** How far the wall clock was set since we last took it for right; not followed. */
  let heldMs = 0;

  return {
    /** Takes in how the clocks stand. Returns by how much the wall clock was set since, or 0. */
    look(next: ClockReadings): number {
      const elapsedMs = next.monotonicMs - last.monotonicMs;
      const wallMs = next.wallMs - last.wallMs;
      let stepMs = wallMs - elapsedMs;
      if (Math.abs(stepMs) <= leapMs + slewShare * elapsedMs) stepMs = 0;
      else {
        const before = sleptMs;
        sleptMs = next.bootMs - next.monotonicMs;
        if (Math.abs(stepMs - (sleptMs - before)) <= leapMs) stepMs = 0;
      }
      heldMs += stepMs;
      // Set there and back again is as if nothing had been.
      if (Math.abs(heldMs) <= leapMs) heldMs = 0;
      const target = next.wallMs - heldMs;
      ours = target >= ours ? target : ours + elapsedMs * catchingUp;
      last = next;
      return stepMs;
    },
    /** Our time, UTC epoch ms, integer, as of the last look; never less than before. */
    at: (): number => Math.floor(ours),
    /** How far the wall clock is ahead of ours by having been set, ms; 0 when it is followed. */
    held: (): number => heldMs,
    /** From now on the wall clock as it stands is right; forward at once, backward slowly. */
    follow(): void {
      heldMs = 0;
      ours = Math.max(ours, last.wallMs);
    },
    /** Takes the wall clock as it stands, also backward: for when nothing hangs on ours yet. */
    restart(): void {
      heldMs = 0;
      ours = last.wallMs;
    },
  };
}
export type SteadyTime = ReturnType<typeof steadyTime>;
