import type { KnownTime } from './clock.ts';

/** What speaks for the wall clock. */
export type Vouch =
  /** A time service has set it. */
  | 'time-service'
  /** Somebody set it while we looked on. */
  | 'set'
  /** The computer has a battery clock. */
  | 'battery'
  /** It was trusted before, in this same running of the computer. */
  | 'same-boot'
  /** Nothing is on record that it could be behind of. */
  | 'nothing-known'
  /** Nobody set it for a long while, and it is not behind what is on record. */
  | 'waited';

/** What is to be seen of a wall clock at a moment. */
export interface ClockEvidence {
  /** UTC epoch ms. */
  wallMs: number;
  /** How long the computer has been running, ms. */
  upMs: number;
  /** A time service says that it has set the clock. */
  synchronised: boolean;
  /** The clock was set while we looked on, and not to an earlier time. */
  setForward: boolean;
  hasBatteryClock: boolean;
  boot: string;
}

/** A computer without a battery clock starts in 1970; nothing dated before this is a set clock. */
export const earliestSetClock = Date.UTC(2026, 0, 1);
/** How far a sensor’s own time may have been ahead when it was recorded. */
const recordAheadMs = 5 * 60_000;
/**
 * How long after its start a computer without a battery clock is given to find a time service:
 * after a power cut the network may come back later than it does. Assumption.
 */
export const patienceMs = 30 * 60_000;

/**
 * Whether a wall clock can be believed, and why.
 *
 * Without a battery clock a computer goes on where it was switched off: not behind anything on
 * record, and yet hours behind. So that alone is not enough soon after a start.
 *
 * @returns null while nothing speaks for it
 */
export function vouchFor(evidence: ClockEvidence, known: KnownTime): Vouch | null {
  const { wallMs, upMs, synchronised, setForward, hasBatteryClock, boot } = evidence;
  if (synchronised) return 'time-service';
  if (wallMs < earliestSetClock) return null;
  if (known.newestAt !== null && wallMs < known.newestAt - recordAheadMs) return null;
  if (setForward) return 'set';
  if (hasBatteryClock) return 'battery';
  if (known.trustedBoot === boot) return 'same-boot';
  if (known.newestAt === null) return 'nothing-known';
  return upMs >= patienceMs ? 'waited' : null;
}

/**
 * Whether a step of a clock that was trusted is followed at once.
 *
 * A clock that nobody vouched for is taken to be set right. Only a step longer than the gap that
 * still counts cannot bend a sum, though; a shorter one waits for a time service.
 *
 * @param longestGapMs - longest time between readings that counts
 */
export function followsStep(vouch: Vouch, stepMs: number, longestGapMs: number): boolean {
  const isWeak = vouch === 'nothing-known' || vouch === 'waited';
  return isWeak && stepMs > longestGapMs;
}
