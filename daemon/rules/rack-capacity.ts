import type { Reason } from '../contract/gate.ts';
import { sentence } from '../wording/english.ts';
import type { PlaceFact } from './facts.ts';

/** Boards that lie at a place. */
export interface LyingBoards {
  count: number;
  lengthMm: number;
}

/** Running metres of boards, one after the other. */
export const runningMetres = (boards: LyingBoards): number =>
  (boards.count * boards.lengthMm) / 1000;

/**
 * Whether a rack takes what is said to lie there. It is recorded all the same: facts are facts.
 *
 * @param lying - all that lies there, what has just come included
 */
export function capacityWarnings(
  place: Pick<PlaceFact, 'name' | 'capacityM' | 'capacityBoards'>,
  lying: readonly LyingBoards[],
): Reason[] {
  const warnings: Reason[] = [];
  const { name, capacityM = null, capacityBoards = null } = place;
  const metres = lying.reduce((sum, boards) => sum + runningMetres(boards), 0);
  const count = lying.reduce((sum, boards) => sum + boards.count, 0);
  if (capacityM !== null && metres > capacityM) {
    const told = { placeName: name, capacityM: round(capacityM), lyingM: round(metres) };
    warnings.push(sentence('rack-over-metres', told));
  }
  if (capacityBoards !== null && count > capacityBoards) {
    const told = { placeName: name, capacity: capacityBoards, lying: count };
    warnings.push(sentence('rack-over-boards', told));
  }
  return warnings;
}

/** What a rack holds and what is still free on it. */
export interface RackRoom {
  /** Running metres; null where nobody said, or said it in boards of no known length. */
  capacityM: number | null;
  usedM: number;
  freeM: number | null;
}

/**
 * The room on a rack in running metres. One that was told in boards has room for so many more of the
 * boards that are to come, however long those are that lie there; told both ways, the tighter rules.
 *
 * @param lying - all that lies there
 * @param lengthM - of a board that is to come; null where not known
 */
export function rackRoom(
  place: Pick<PlaceFact, 'capacityM' | 'capacityBoards'>,
  lying: readonly LyingBoards[],
  lengthM: number | null,
): RackRoom {
  const { capacityM = null, capacityBoards = null } = place;
  const usedM = lying.reduce((sum, boards) => sum + runningMetres(boards), 0);
  const count = lying.reduce((sum, boards) => sum + boards.count, 0);
  const free: number[] = [];
  if (capacityM !== null) free.push(Math.max(0, capacityM - usedM));
  if (capacityBoards !== null) {
    const boards = Math.max(0, capacityBoards - count);
    if (boards === 0 || lengthM !== null) free.push(boards * (lengthM ?? 0));
  }
  if (free.length === 0) return { capacityM: null, usedM, freeM: null };
  const freeM = Math.min(...free);
  return { capacityM: capacityBoards === null ? capacityM : usedM + freeM, usedM, freeM };
}

const round = (metres: number) => Math.round(metres * 10) / 10;
