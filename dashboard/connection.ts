/** How the page stands to the daemon; times are this device’s clock, ms. */
export type Connection =
  | { readonly kind: 'waiting' }
  | { readonly kind: 'live' }
  | { readonly kind: 'lost'; readonly since: number };

/** What was noticed of the daemon. */
export interface Heard {
  /** When it last said anything; null before its first word. */
  readonly lastHeardAt: number | null;
  /** When it was first missed after that; null while nothing is wrong. */
  readonly missedAt: number | null;
  /** When the page was opened. */
  readonly openedAt: number;
}

/** A shorter hiccup than this is not worth frightening anyone. */
export const LOUD_AFTER_MS = 10_000;
/** After so long a silence the daemon is asked whether it is still there. */
export const ASK_AFTER_MS = 20_000;
/** Asked or not, after such a silence nothing on the page is believed: the device may have slept. */
export const SILENT_MS = 90_000;

/**
 * Whether the daemon is there, still awaited, or lost.
 *
 * @param now - this device’s clock, ms
 */
export function connectionAt(heard: Heard, now: number): Connection {
  if (heard.lastHeardAt === null) {
    return now - heard.openedAt < LOUD_AFTER_MS
      ? { kind: 'waiting' }
      : { kind: 'lost', since: heard.openedAt };
  }
  const isMissed = heard.missedAt !== null && now - heard.missedAt >= LOUD_AFTER_MS;
  if (isMissed || now - heard.lastHeardAt >= SILENT_MS) {
    return { kind: 'lost', since: heard.lastHeardAt };
  }
  return { kind: 'live' };
}
