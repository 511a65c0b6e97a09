import type { Sign } from '../words/sign.ts';

/** What a board wants of whoever passes by; the smaller, the sooner. */
export type Urgency = 0 | 1 | 2 | 3;

/** Trouble, something to do, something that goes on, and what is finished or empty. */
export function urgencyOf(sign: Sign, isTroubled: boolean): Urgency {
  if (isTroubled || sign === 'hold' || sign === 'no-data') return 0;
  if (sign === 'test' || sign === 'ready') return 1;
  return sign === 'wait' || sign === 'bare' ? 2 : 3;
}

/**
 * The boards page by page. What fits on one page keeps its order; of several pages the first hold what wants
 * something. It does not stand on every page: with three such racks nothing else would be left.
 *
 * @param perPage - 1 or more
 */
export function pagesOf<T extends { readonly urgency: Urgency }>(
  boards: readonly T[],
  perPage: number,
): T[][] {
  if (boards.length <= perPage) return [[...boards]];
  const inOrder = [...boards].sort((a, b) => a.urgency - b.urgency);
  return Array.from({ length: Math.ceil(boards.length / perPage) }, (_, page) =>
    inOrder.slice(page * perPage, (page + 1) * perPage),
  );
}

/** What wants something and stands on a page that is not shown. */
export function elsewhere<T extends { readonly urgency: Urgency }>(
  pages: readonly (readonly T[])[],
  shown: number,
): { readonly board: T; readonly page: number }[] {
  return pages.flatMap((boards, page) =>
    page === shown ? [] : boards.filter(wantsSomething).map((board) => ({ board, page })),
  );
}

export function wantsSomething({ urgency }: { readonly urgency: Urgency }): boolean {
  return urgency < 2;
}

/** A page further or back; after the last comes the first. */
export function turned(page: number, step: number, pages: number): number {
  return (((page + step) % pages) + pages) % pages;
}

/** Someone who touched, pointed or typed is still reading, ms. */
export const STILL_AFTER_HAND_MS = 120_000;

/** What is known when it is asked whether the wall turns; times are the device’s clock, ms. */
export interface Turning {
  readonly now: number;
  /** When the page was last turned. */
  readonly turnedAt: number;
  /** When someone last touched, pointed or typed; null when nobody did. */
  readonly handAt: number | null;
  /** Whether the keyboard’s focus is on something that would be turned away. */
  readonly isFocused: boolean;
  /** Seconds for which a page stands; 0 when it is turned by hand alone. */
  readonly seconds: number;
}

/** Whether it is time to turn by itself. */
export function isTurnDue({ now, turnedAt, handAt, isFocused, seconds }: Turning): boolean {
  if (seconds === 0 || isFocused) return false;
  if (handAt !== null && now - handAt < STILL_AFTER_HAND_MS) return false;
  return now - turnedAt >= seconds * 1_000;
}
