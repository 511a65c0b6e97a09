import type { CoatFact, MoveFact } from './facts.ts';

/** A stretch in which a coat cured at one place; `toAt` null while it still does. */
export interface CureStay {
  placeId: string;
  fromAt: number;
  toAt: number | null;
}

/** Where a batch lay at a moment. */
export function placeOfBatch(moves: readonly MoveFact[], at: number): string | null {
  let placeId: string | null = null;
  for (const move of inOrder(moves)) {
    if (move.at === null || move.at <= at) placeId = move.placeId;
  }
  return placeId ?? inOrder(moves)[0]?.placeId ?? null;
}

/** The stay of a batch at a moment: where, and since when (null: from ever). */
export function believedPlace(
  moves: readonly MoveFact[],
  at: number,
): { placeId: string; since: number | null } | null {
  const placeId = placeOfBatch(moves, at);
  if (placeId === null) return null;
  let since: number | null = null;
  let there: string | null = null;
  for (const move of inOrder(moves)) {
    if (move.at !== null && move.at > at) break;
    if (move.placeId !== there) since = move.at;
    there = move.placeId;
  }
  return { placeId, since };
}

/**
 * When a coat’s own cure stops being of interest: when the next coat went on.
 *
 * @param coats - all coats of the batch
 * @returns UTC epoch ms; null for the last coat
 */
export function curedUntil(coat: CoatFact, coats: readonly CoatFact[]): number | null {
  const later = coats
    .filter((other) => other.coat > coat.coat && other.finishedAt >= coat.finishedAt)
    .map((other) => Math.max(other.begunAt ?? other.finishedAt, coat.finishedAt));
  return later.length === 0 ? null : Math.min(...later);
}

/** Where a coat has cured, from when its last board was done, following the batch’s moves. */
export function cureStays(
  coat: CoatFact,
  coats: readonly CoatFact[],
  moves: readonly MoveFact[],
  closedAt: number | null,
): CureStay[] {
  const next = curedUntil(coat, coats);
  const end =
    closedAt === null || closedAt <= coat.finishedAt
      ? next
      : Math.min(next ?? Number.POSITIVE_INFINITY, closedAt);
  const start = placeOfBatch(moves, coat.finishedAt);
  if (start === null) return [];
  const stays: CureStay[] = [{ placeId: start, fromAt: coat.finishedAt, toAt: end }];
  for (const move of inOrder(moves)) {
    if (move.at === null || move.at <= coat.finishedAt) continue;
    if (end !== null && move.at >= end) break;
    const last = stays.at(-1);
    if (!last || last.placeId === move.placeId) continue;
    last.toAt = move.at;
    stays.push({ placeId: move.placeId, fromAt: move.at, toAt: end });
  }
  return stays;
}

function inOrder(moves: readonly MoveFact[]): MoveFact[] {
  return [...moves].sort(
    (a, b) => (a.at ?? Number.NEGATIVE_INFINITY) - (b.at ?? Number.NEGATIVE_INFINITY),
  );
}
