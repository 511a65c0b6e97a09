import type { Database } from 'better-sqlite3';
import type { Quantity } from '../contract/quantity.ts';
import type { ReadingOutline } from '../rules/reading-outline.ts';
import { dayOutline } from './day-outline.ts';
import { hourOutlines } from './hour-outline.ts';
import { addPoints, hourPieces, type OutlineQuestion, pieceOf } from './outline-pieces.ts';
import { dayHours, dayMs, outlineOfRow, packedDays, spansOfDay } from './packed-days.ts';
import type { Outline } from './packed-hour.ts';
import { codeOf } from './quantity-code.ts';
import { type ReadingTable, readingTable } from './readings.ts';
import { wholeDaysIn } from './whole-days.ts';

/**
 * Looks up the lowest and the highest reading of each packed hour without unpacking it, and all
 * readings of the hours at both edges and of those not packed yet; of a time with many more hours than
 * points, or so long that a day is less than two points, those of stretches of hours or days. Of days
 * whose hours are no longer kept it is always these.
 */
export function readingOutlines(db: Database, readings: ReadingTable = readingTable(db)) {
  const { staged, packed } = readings;
  const days = packedDays(db);
  const hours = hourPieces(db, packed);
  const stretchesOfHours = hourOutlines(db, hours);
  const hoursFrom = db
    .prepare<[], number>("select hour from kept_from where level = 'hours'")
    .pluck();

  const wholeDays = wholeDaysIn(db);

  function byHours(
    question: OutlineQuestion,
    waiting: readonly Outline[],
    lapsedUntil: number,
  ): ReadingOutline {
    const { sensorKey, code, from, to } = question;
    const firstDay = Math.ceil(from / dayMs);
    const lastDay = Math.min(Math.floor((to + 1) / dayMs), lapsedUntil) - 1;
    const lapsed = days.between(sensorKey, code, firstDay, lastDay);
    const outline = stretchesOfHours(question, waiting) ?? eachHour(question, waiting);
    if (lapsed.length === 0) return outline;
    const points: ReadingOutline['points'] = [];
    for (const row of lapsed) addPoints(points, outlineOfRow(row, dayMs));
    points.push(...outline.points);
    const spans = [...lapsed.flatMap(spansOfDay), ...outline.spans];
    return { ...outline, ...inOrder({ points, spans }) };
  }

  function eachHour(question: OutlineQuestion, waiting: readonly Outline[]): ReadingOutline {
    const points: ReadingOutline['points'] = [];
    const spans: ReadingOutline['spans'] = [];
    for (const piece of [...hours(question, question.from, question.to), ...waiting]) {
      addPoints(points, piece);
      spans.push({ firstAt: piece.firstAt, lastAt: piece.lastAt });
    }
    return { ...inOrder({ points, spans }), stretches: null };
  }

  const asked = db.transaction((question: OutlineQuestion): ReadingOutline => {
    const { sensorKey, code, from, to } = question;
    const waiting = staged.between(sensorKey, code, from, to, -1).map(pieceOf);
    const lapsedUntil = (hoursFrom.get() ?? Number.MIN_SAFE_INTEGER) / dayHours;
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

/** What came late lies among what is packed already. */
function inOrder({ points, spans }: Pick<ReadingOutline, 'points' | 'spans'>) {
  const ascend = spans.every(
    ({ firstAt }, i) => firstAt > (spans[i - 1]?.lastAt ?? Number.NEGATIVE_INFINITY),
  );
  if (ascend) return { points, spans };
  points.sort((a, b) => a.at - b.at);
  spans.sort((a, b) => a.firstAt - b.firstAt);
  return { points: points.filter(({ at }, i) => at !== points[i - 1]?.at), spans };
}
