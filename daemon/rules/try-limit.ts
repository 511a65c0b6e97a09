/* How often a PIN or code may be tried. Times are milliseconds of a clock that only runs forward. */

/** Wrong tries of one source. */
export interface Tries {
  readonly wrong: number;
  readonly lastAt: number;
}

/** Wrong tries before the first wait. `assumption`: a cold thumb mistypes twice, not five times. */
const freeTries = 5;
/** `assumption`: the first wait is shorter than a walk to the computer. */
const firstWaitMs = 30_000;
/** `assumption`: with it, a million PINs take one device over a century. */
const longestWaitMs = 3_600_000;
/** After a quiet day a source begins anew. */
export const forgottenAfterMs = 86_400_000;

/** Wrong tries of strangers all together that cost nobody time. */
const freeOfAll = 20;
/** How many more of them double the delay. */
const doublingOfAll = 10;
const firstDelayMs = 250;
/** Nobody is kept out by it: an owner on a new device waits so long and is then heard. */
const longestDelayMs = 8000;
/** One wrong try of all is forgotten in this time. */
const forgetOneMs = 60_000;

export const noTries: Tries = { wrong: 0, lastAt: Number.NEGATIVE_INFINITY };

/**
 * When a source may try next.
 *
 * @returns ms from now; 0 when it may try at once
 */
export function waitMs({ wrong, lastAt }: Tries, now: number): number {
  if (wrong < freeTries || now - lastAt > forgottenAfterMs) return 0;
  const wait = Math.min(longestWaitMs, firstWaitMs * 2 ** (wrong - freeTries));
  return Math.max(0, lastAt + wait - now);
}

/** One more wrong try of a source. */
export function wrongAgain(tries: Tries, now: number): Tries {
  const before = now - tries.lastAt > forgottenAfterMs ? 0 : tries.wrong;
  return { wrong: before + 1, lastAt: now };
}

/** Wrong tries of all strangers, each forgotten after a while. */
export function leaked({ wrong, lastAt }: Tries, now: number): number {
  return Math.max(0, wrong - (now - lastAt) / forgetOneMs);
}

/** One more wrong try of any stranger. */
export function wrongOfAll(tries: Tries, now: number): Tries {
  const before = tries.wrong === 0 ? 0 : leaked(tries, now);
  return { wrong: before + 1, lastAt: now };
}

/**
 * How long the try of a stranger is held back, right or wrong: it slows down someone who has many
 * addresses, and shuts nobody out.
 *
 * @returns ms, 0 to 8000
 */
export function delayOfStrangersMs(all: Tries, now: number): number {
  const wrong = all.wrong === 0 ? 0 : leaked(all, now);
  if (wrong <= freeOfAll) return 0;
  return Math.min(longestDelayMs, firstDelayMs * 2 ** ((wrong - freeOfAll) / doublingOfAll));
}
