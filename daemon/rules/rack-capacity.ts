import type { Reason } from '../contract/gate.ts';
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
    warnings.push({
      code: 'rack-over-metres',
      text: `${name} takes ${round(capacityM)} m of boards; by what is recorded ${round(metres)} m lie there now. Was something moved away that nobody recorded?`,
    });
  }
  if (capacityBoards !== null && count > capacityBoards) {
    warnings.push({
      code: 'rack-over-boards',
      text: `${name} takes ${capacityBoards} boards; by what is recorded ${count} lie there now. Was something moved away that nobody recorded?`,
    });
  }
  return warnings;
}

const round = (metres: number) => Math.round(metres * 10) / 10;
