/** What the daemon’s clock showed when its last word came in. */
export interface ClockMark {
  /** The daemon’s `now`, UTC epoch ms. */
  readonly shedNow: number;
  /** How fast its time runs: 1 in real time, more in the simulated shed. */
  readonly speed: number;
  /** This device’s own clock at that moment, ms of any origin. */
  readonly receivedAt: number;
}

/**
 * What the daemon’s clock shows now, so that a wall with a wrong clock still tells the right time.
 *
 * @param mark - the last word from the daemon
 * @param deviceNow - this device’s clock, of the same origin as `mark.receivedAt`
 * @returns UTC epoch ms; never before `mark.shedNow`
 */
export function shedTime(mark: ClockMark, deviceNow: number): number {
  return mark.shedNow + mark.speed * Math.max(0, deviceNow - mark.receivedAt);
}
