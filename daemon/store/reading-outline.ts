import type { Database } from 'better-sqlite3';
import type { Quantity } from '../contract/quantity.ts';
import type { ReadingOutline } from '../rules/reading-outline.ts';
import { dayOutline } from './day-outline.ts';
import { addPoints, hourPieces, type OutlineQuestion, pieceOf } from './outline-pieces.ts';
import { dayHours, dayMs, outlineOfRow, packedDays, spansOfDay } from './packed-days.ts';
import type { Outline } from './packed-hour.ts';
import { codeOf } from './quantity-code.ts';
import { type ReadingTable, readingTable } from './readings.ts';
import { wholeDaysIn } from './whole-days.ts';

/** So many hours for each point that is drawn are kept apart: thinning chooses among them. */
const hoursAPoint = 4;

/**
 * Looks up the lowest and the highest reading of each packed hour without unpacking it, and all
 * readings of the hours at both edges and of those not packed yet; of a time so long that a day is less
 * than two points, those of its days. Of days whose hours are no longer kept it is always these.
 */
export function readingOutlines(db: Database, readings: ReadingTable = readingTable(db)) {
  const { staged, packed } = readings;
  const days = packedDays(db);
  const hours = hourPieces(db, packed);
  const lapsed = db.prepare<[], number>("select hour from kept_from where level = 'hours'").pluck();

  const wholeDays = wholeDaysIn(db);

  function byHours(
    question: OutlineQuestion,
    waiting: readonly Outline[],
    lapsedUntil: number,
  ): ReadingOutline {
    const { sensorKey, code, from, to, points, changes } = question;
    const outline: ReadingOutline = { points: [], spans: [], byDay: false };
    const firstDay = Math.ceil(from / dayMs);
    const lastDay = Math.min(Math.floor((to + 1) / dayMs), lapsedUntil) - 1;
    for (const row of days.between(sensorKey, code, firstDay, lastDay)) {
      addPoints(outline.points, outlineOfRow(row, dayMs));
      outline.spans.push(...spansOfDay(row));
    }
    const pieces = hours(question, from, to);
    addTogether(outline, pieces, Math.floor(pieces.length / (hoursAPoint * points)), changes);
    const lastPacked = outline.spans.at(-1)?.lastAt ?? Number.NEGATIVE_INFINITY;
    addTogether(outline, waiting, 1, changes);
    if ((waiting[0]?.firstAt ?? Number.POSITIVE_INFINITY) <= lastPacked) {
      outline.points.sort((a, b) => a.at - b.at);
      outline.points = outline.points.filter(({ at }, i, all) => at !== all[i - 1]?.at);
      outline.spans.sort((a, b) => a.firstAt - b.firstAt);
    }
    return outline;
  }

  const asked = db.transaction((question: OutlineQuestion): ReadingOutline => {
    const { sensorKey, code, from, to } = question;
    const waiting = staged.between(sensorKey, code, from, to, -1).map(pieceOf);
    const lapsedUntil = (lapsed.get() ?? Number.MIN_SAFE_INTEGER) / dayHours;
    const whole = wholeDays(question, waiting);
    const long = whole && dayOutline(days, hours, question, whole, waiting, lapsedUntil);
    return long ?? byHours(question, waiting, lapsedUntil);
  });

  /**
   * @param from - epoch ms, included
   * @param to - epoch ms, included
   * @param points - how many are to be drawn: where hours are many more, several are taken together
   * @param changes - when another calibration begins, epoch ms
   */
  return (
    sensorKey: number,
    quantity: Quantity,
    from: number,
    to: number,
    points = Number.POSITIVE_INFINITY,
    changes: readonly number[] = [],
  ): ReadingOutline => {
    const ascending = [...changes].sort((a, b) => a - b);
    // One look at one moment of the file: an hour that is let go meanwhile is not missed.
    return asked({ sensorKey, code: codeOf(quantity), from, to, points, changes: ascending });
  };
}

/** Adds the lowest and the highest reading of every so many pieces, of none on both sides of a change. */
function addTogether(
  outline: ReadingOutline,
  pieces: readonly Outline[],
  together: number,
  changes: readonly number[],
): void {
  let nextChange = 0;
  let group: Outline | null = null;
  let size = 0;
  const flush = () => {
    if (group) addPoints(outline.points, group);
    group = null;
    size = 0;
  };
  for (const piece of pieces) {
    while ((changes[nextChange] ?? Number.POSITIVE_INFINITY) <= piece.firstAt) {
      nextChange++;
      flush();
    }
    outline.spans.push({ firstAt: piece.firstAt, lastAt: piece.lastAt });
    if (!group) group = together > 1 ? { ...piece } : piece;
    else {
      if (piece.low < group.low) [group.low, group.lowAt] = [piece.low, piece.lowAt];
      if (piece.high > group.high) [group.high, group.highAt] = [piece.high, piece.highAt];
    }
    if (++size >= together) flush();
  }
  flush();
}
