import type { ReadingOutline } from '../rules/reading-outline.ts';
import { gatherStretches, stretchStarts } from '../rules/stretches.ts';
import {
  type HourPieces,
  mostParted,
  type OutlineQuestion,
  stretchEdges,
} from './outline-pieces.ts';
import { dayMs, outlineOfRow, type PackedDays, spansOfDay } from './packed-days.ts';
import type { Outline } from './packed-hour.ts';
import type { WholeDays } from './whole-days.ts';

const dayOf = (at: number): number => Math.floor(at / dayMs);

/**
 * The outline of a time so long that two points speak for a day or more, from the rows of its days.
 * Hours are looked at for the days at both edges, those in which a calibration begins, and those that
 * are not made yet.
 *
 * @param waiting - what is not packed yet
 * @param lapsedUntil - hours of days before this one are no longer kept
 * @returns null where days are too few for the points
 */
export function dayOutline(
  days: PackedDays,
  hours: HourPieces,
  question: OutlineQuestion,
  whole: WholeDays,
  waiting: readonly Outline[],
  lapsedUntil: number,
): ReadingOutline | null {
  const { sensorKey, code, from, to, points } = question;
  const { first, last } = whole;
  const changes = question.changes.filter((at) => at > from && at <= to);
  if ((last - first + 1) * 2 < points || changes.length > points * mostParted) return null;
  const stretches = Math.max(1, Math.floor(points / 2) - stretchEdges - changes.length);
  const gathered = gatherStretches(stretchStarts(first, last, stretches, dayMs, changes));
  const spans: ReadingOutline['spans'] = [];
  const add = (piece: Outline) => {
    gathered.add(piece);
    spans.push({ firstAt: piece.firstAt, lastAt: piece.lastAt });
  };
  const addHours = (fromAt: number, toAt: number) => {
    if (fromAt <= toAt) for (const piece of hours(question, fromAt, toAt)) add(piece);
  };

  const made = Math.min(Math.max(days.madeUntil(), first), last + 1);
  const parted = new Set(changes.filter((at) => at % dayMs !== 0).map(dayOf));
  const isParted = (day: number) => parted.has(day) && day >= lapsedUntil;
  addHours(from, first * dayMs - 1);
  for (const row of days.between(sensorKey, code, first, last)) {
    const [day] = row;
    if (isParted(day)) {
      // Those that are not made yet are all looked at below.
      if (day < made) addHours(day * dayMs, (day + 1) * dayMs - 1);
      continue;
    }
    gathered.add(outlineOfRow(row, dayMs));
    spans.push(...spansOfDay(row));
  }
  addHours(made * dayMs, (last + 1) * dayMs - 1);
  addHours((last + 1) * dayMs, to);
  for (const piece of waiting) add(piece);
  spans.sort((a, b) => a.firstAt - b.firstAt);
  return { points: gathered.points(), spans, stretches: 'days' };
}
