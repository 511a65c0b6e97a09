import type { Gate } from '../../daemon/contract/gate.ts';

/** °C·h that a job needs, with 10, 50 and 90 % probability. */
export interface Need {
  readonly early: number;
  readonly likely: number;
  readonly late: number;
}

export interface Kerf {
  readonly gate: Gate;
  /** 0 at the left end of the board, 1 at its right end. */
  readonly position: number;
}

export interface BoardScale {
  /** How far the paint front has come, 0 to 1. */
  readonly front: number;
  readonly kerfs: readonly Kerf[];
  /** The soft band around the job that is waited for; null without one. */
  readonly band: { readonly from: number; readonly to: number } | null;
}

/** A little timber stays bare beyond the last mark, so that the board visibly goes on. */
const BEYOND_LAST = 1.08;

/**
 * Where the front, the kerfs and the band stand on a board.
 *
 * @param degreeHours - sum gathered so far, °C·h, 0 or more
 * @param needs - what each job needs; may be empty
 * @param waitedFor - the job whose band is drawn
 * @returns positions from 0 to 1; the front stops short of the board’s end
 */
export function boardScale(
  degreeHours: number,
  needs: readonly { readonly gate: Gate; readonly need: Need }[],
  waitedFor: Gate | null,
): BoardScale {
  const end = Math.max(0, ...needs.map(({ need }) => need.late)) * BEYOND_LAST;
  if (!(end > 0)) return { front: 0, kerfs: [], band: null };
  const at = (sum: number) => Math.min(1, Math.max(0, sum / end));
  const band = needs.find(({ gate }) => gate === waitedFor)?.need;
  return {
    front: Math.min(0.985, at(degreeHours)),
    kerfs: needs.map(({ gate, need }) => ({ gate, position: at(need.likely) })),
    band: band === undefined ? null : { from: at(band.early), to: at(band.late) },
  };
}

/** A name under a kerf, or under several that stand together. */
export interface KerfName {
  readonly gates: readonly Gate[];
  readonly position: number;
  /** 0 stands right under the board; lower where a neighbour’s name is in the way. */
  readonly line: number;
  /** Which part of the name is at the kerf: its middle, or an end where the board ends. */
  readonly anchor: 'start' | 'middle' | 'end';
}

/** Nearer than this, two jobs share a name. */
const SAME = 0.025;

/**
 * The names under the kerfs, so that none covers another.
 *
 * @param kerfs - in any order
 * @param roomOf - how much of the board’s length a name takes, 0 to 1
 */
export function kerfNames(
  kerfs: readonly Kerf[],
  roomOf: (gates: readonly Gate[]) => number,
): KerfName[] {
  const groups: { gates: Gate[]; position: number }[] = [];
  for (const { gate, position } of [...kerfs].sort((a, b) => a.position - b.position)) {
    const before = groups.at(-1);
    if (before !== undefined && position - before.position < SAME) before.gates.push(gate);
    else groups.push({ gates: [gate], position });
  }
  /** Where the last name of each line ends. */
  const ends: number[] = [];
  return groups.map(({ gates, position }) => {
    const room = roomOf(gates);
    const anchor = position + room / 2 > 1 ? 'end' : position - room / 2 < 0 ? 'start' : 'middle';
    const begin = position - { start: 0, middle: room / 2, end: room }[anchor];
    const free = ends.findIndex((end) => end <= begin);
    const line = free === -1 ? ends.length : free;
    ends[line] = begin + room;
    return { gates, position, line, anchor };
  });
}
