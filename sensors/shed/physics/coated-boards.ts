import type { Gate } from '../../../daemon/contract/gate.ts';
import {
  type BoardAir,
  type CureState,
  cure,
  curePace,
  type PaintTruth,
  shareCured,
  slower,
  UNCURED,
} from './paint-truth.ts';
import type { Random } from './random.ts';

/** One board of a coat: where it lies, and how it cures. */
interface CoatedBoard {
  readonly shelf: number;
  readonly paint: PaintTruth;
  readonly state: CureState;
}

/** A coat on the boards of a batch, and on the offcut that was coated with them. */
export interface CoatedBoards {
  readonly boards: readonly CoatedBoard[];
  readonly offcut: CoatedBoard;
}

/** What is felt: the offcut, or boards of the worst shelf. */
export type Felt = 'offcut' | 'board';

/** Shelves of a rack from the top, K against its middle: the lowest is the coldest. Assumption. */
export const SHELF_K = [0.4, 0, -0.8] as const;
const LOWEST = SHELF_K.length - 1;
const BOARDS_ON_A_SHELF = 6;
/** Standard deviation of ln(slowness) between the boards of one coat. Assumption. */
const BOARD_SPREAD = 0.05;
/** The offcut is coated last, from what has thickened in the pot, so it lies at the slow end. Assumption. */
const OFFCUT = { middle: 1, spread: 0.4 } as const;
/** Standard deviation of what a hand makes of the share cured. Assumption. */
const HAND_SPREAD = 0.01;
/** Nobody feels one board alone. */
const BOARDS_FELT = 3;
/** The batch is as far as its slowest tenth. */
const ALL_BUT_THE_SLOWEST = 0.9;

/**
 * A fresh coat.
 *
 * @param paint - of this coat
 * @param random - draws how its boards differ
 */
export function freshCoat(paint: PaintTruth, random: Random): CoatedBoards {
  const board = (shelf: number, lnSlowness: number): CoatedBoard => ({
    shelf,
    paint: slower(paint, Math.exp(lnSlowness)),
    state: UNCURED,
  });
  const boards = SHELF_K.flatMap((_, shelf) =>
    Array.from({ length: BOARDS_ON_A_SHELF }, () => board(shelf, BOARD_SPREAD * random.normal())),
  );
  const slowEnd = OFFCUT.middle + OFFCUT.spread * random.normal();
  return { boards, offcut: board(LOWEST, BOARD_SPREAD * slowEnd) };
}

/**
 * Lets a coat cure for a while.
 *
 * @param coat - before
 * @param air - in the middle of the rack
 * @param hours - 0 or more
 */
export function cureBoards(coat: CoatedBoards, air: BoardAir, hours: number): CoatedBoards {
  const airs = SHELF_K.map((warmerK) => ({ ...air, tempC: air.tempC + warmerK }));
  const one = coat.boards[0];
  if (one === undefined) return coat;
  // the pace is the paint’s in the shelf’s air; slowness between boards lies in lag and rates
  const paces = airs.map((shelfAir) => curePace(one.paint, shelfAir));
  const advance = (board: CoatedBoard): CoatedBoard => {
    const pace = paces[board.shelf];
    return pace === undefined
      ? board
      : { ...board, state: cure(board.state, board.paint, pace, hours) };
  };
  return { boards: coat.boards.map(advance), offcut: advance(coat.offcut) };
}

const passes = ({ state, paint }: CoatedBoard, gate: Gate) =>
  shareCured(state, paint) >= paint.passesAt[gate];

/** Share of the boards on which the hand test of a job would pass. */
export function sharePassing(coat: CoatedBoards, gate: Gate): number {
  return coat.boards.filter((board) => passes(board, gate)).length / coat.boards.length;
}

/** The truth about a batch: whether all but the slowest tenth of its boards are there. */
export function isTrulyReady(coat: CoatedBoards, gate: Gate): boolean {
  return sharePassing(coat, gate) >= ALL_BUT_THE_SLOWEST;
}

/**
 * What a hand finds: on the offcut, or on three boards of the lowest shelf, of which the worst counts.
 *
 * @param random - draws which boards, and what the hand makes of it
 */
export function feel(coat: CoatedBoards, gate: Gate, on: Felt, random: Random): boolean {
  const lowest = coat.boards.filter(({ shelf }) => shelf === LOWEST);
  const felt =
    on === 'offcut'
      ? [coat.offcut]
      : Array.from(
          { length: BOARDS_FELT },
          () => lowest[Math.floor(random.uniform() * lowest.length)] ?? coat.offcut,
        );
  return felt.every(
    ({ state, paint }) =>
      shareCured(state, paint) + HAND_SPREAD * random.normal() >= paint.passesAt[gate],
  );
}
