/** What is to be known about the time a reading was given. */
export type ReadingFlag = 'time-replaced' | 'time-unknown' | 'clock-untrusted';

/** The bit of each flag where they are kept as one number; a bit keeps its meaning for good. */
export const readingFlagBits: Readonly<Record<ReadingFlag, number>> = {
  /** The message gave a time that cannot be right; the arrival stands in for it. */
  'time-replaced': 1,
  /** When it was measured is not known, only that it was before it arrived; left out of cure. */
  'time-unknown': 2,
  /** The reading came while the clock was not trusted, and was given its time afterwards. */
  'clock-untrusted': 4,
};

/** How a message came in. */
export type Arrival = {
  /** Epoch ms, integer, by this computer's clock. */
  readonly at: number;
  /** Whether that clock can be trusted. */
  readonly clockTrusted: boolean;
  /** The broker kept it from an unknown time ago. */
  readonly retained: boolean;
  /** It waited in a queue while the daemon was away. */
  readonly backlog: boolean;
  /** The message's own time was counted back from its arrival (SenML). */
  readonly ownAtIsRelative?: boolean;
};

export type ReadingTime =
  /** Hangs on a clock that is not trusted: to be judged again once it is. */
  | { readonly kind: 'wait' }
  | { readonly kind: 'use'; readonly at: number; readonly flags: readonly ReadingFlag[] }
  | { readonly kind: 'drop'; readonly because: 'retained-without-time' };

/** 2000-01-01T00:00Z: a node that never had the time counts from 1970. Common practice, no source. */
export const earliestOwnAt = 946_684_800_000;
/** How far a sensor's clock may run ahead of a trusted one. Assumption. */
export const aheadAllowedMs = 5 * 60_000;

/**
 * Decides which time a reading gets: its own where that can be believed, else its arrival.
 * @param ownAt epoch ms, integer, null when the message gives none
 * @param arrival how and when it came in
 * @returns `at` epoch ms, with what is to be known about it; or that the reading is to be dropped,
 * because a retained message without a credible time of its own is not "now"; or that it has to
 * wait until the clock is trusted
 */
export function readingTime(ownAt: number | null, arrival: Arrival): ReadingTime {
  const ahead = ownAt !== null && ownAt > arrival.at + aheadAllowedMs;
  const believed = ownAt !== null && ownAt >= earliestOwnAt && !ahead;

  // A time that even an untrusted clock has passed needs no doubt: mostly it runs behind.
  if (believed && !arrival.ownAtIsRelative) return { kind: 'use', at: ownAt, flags: [] };
  const mayBeTrue = ahead && !arrival.clockTrusted && !arrival.ownAtIsRelative;
  if (arrival.retained && !mayBeTrue) return { kind: 'drop', because: 'retained-without-time' };
  if (!arrival.clockTrusted) return { kind: 'wait' };
  const flags: ReadingFlag[] = [];
  if (ownAt !== null && !believed) flags.push('time-replaced');
  if (arrival.backlog) flags.push('time-unknown');
  return { kind: 'use', at: believed ? ownAt : arrival.at, flags };
}

/**
 * Flags as one number.
 * @returns 0 for none
 */
export function flagMask(flags: readonly ReadingFlag[]): number {
  if (flags.length === 0) return 0;
  return flags.reduce((mask, flag) => mask | readingFlagBits[flag], 0);
}

/**
 * The flags that a number stands for, in the order of their bits; unknown bits are left alone.
 * @param mask integer ≥ 0
 */
export function flagsOf(mask: number): ReadingFlag[] {
  const all = Object.entries(readingFlagBits) as [ReadingFlag, number][];
  return all.filter(([, bit]) => (mask & bit) !== 0).map(([flag]) => flag);
}
