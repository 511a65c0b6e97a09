import type { Gate } from '../contract/gate.ts';

/**
 * What going on too early costs, in hours of waiting that one would rather have spent: a soft coat
 * stacked or painted over has to come off again. Assumption.
 */
const spoiltCostsHours = 72;
/** Waiting beyond this is not counted: something else happens before. Assumption. */
const longestWaitHours = 72;
/** Waiting when nobody knows how long. Assumption. */
const unknownWaitHours = 24;
/** An answer worth less is not worth the walk, h. Assumption. */
export const worthAskingHours = 1;

/** A job of one batch that could be felt for this morning. */
export interface RoundCandidate {
  batchId: string;
  gate: Gate;
  boards: number;
  /** Chance that the job is possible now, 0 to 1. */
  probability: number;
  /** Hours until the verdict would say ready by itself; null when nobody knows. */
  waitHours: number | null;
}

/**
 * What an answer is expected to save, h: the loss of the better of “go on” and “wait” without it; with
 * it neither is lost. Nothing at a chance of 0 and of 1, and most where the two are equally bad.
 *
 * **Source:** expected value of perfect information in a choice between two acts, decision theory
 * from memory; the costs are assumptions.
 */
export function worthOfAnswer(probability: number, waitHours: number | null): number {
  const wait = Math.min(longestWaitHours, Math.max(0, waitHours ?? unknownWaitHours));
  return Math.min((1 - probability) * spoiltCostsHours, probability * wait);
}

/**
 * The one question of the morning: where the answer saves most over all boards concerned.
 *
 * @returns null when no answer would change anything worth the walk
 */
export function questionOf<C extends RoundCandidate>(
  candidates: readonly C[],
): (C & { worthHours: number }) | null {
  let best: (C & { worthHours: number }) | null = null;
  for (const candidate of candidates) {
    const worthHours = worthOfAnswer(candidate.probability, candidate.waitHours);
    if (worthHours < worthAskingHours) continue;
    if (best === null || worthHours * candidate.boards > best.worthHours * best.boards) {
      best = { ...candidate, worthHours };
    }
  }
  return best;
}
