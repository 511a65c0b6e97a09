import type { Database } from 'better-sqlite3';
import type { Quantity } from '../contract/quantity.ts';
import { hourPieces, type OutlineQuestion, pieceOf } from './outline-pieces.ts';
import { dayHours, dayMs, outlineOfRow, packedDays, spansOfDay } from './packed-days.ts';
import { hourMs, hourOf, type Outline } from './packed-hour.ts';
import { codeOf } from './quantity-code.ts';
import { type ReadingTable, readingTable } from './readings.ts';

/** Hours since the epoch; a moment whose calibration is that of both extremes, epoch ms; lowest and highest. */
type TakeHour = (hour: number, at: number, low: number, high: number) => void;

/** Hours that are held at once, so that the garbage of a year dies young. */
const pageHours = 1000;

/**
 * Looks up the lowest and the highest reading of every hour, one by one: a year has thousands of
 * them. Readings of hours that the time reaches only into, in which a calibration begins, or that are
 * not packed yet come one by one; of days whose hours are no longer kept the extremes stand for each hour.
 */
export function hourExtremes(db: Database, readings: ReadingTable = readingTable(db)) {
  const { staged, packed } = readings;
  const days = packedDays(db);
  const pieces = hourPieces(db, packed);
  const hoursFrom = db
    .prepare<[], number>("select hour from kept_from where level = 'hours'")
    .pluck();
  // A column by itself: as a row each, hours cost twice the time and the garbage.
  const column = (name: 'hour' | 'low' | 'high') =>
    db
      .prepare<[number, number, number, number, number], number>(
        `select ${name} from packed_hour
          where sensor_key = ? and quantity = ? and hour between ? and ? order by hour limit ?`,
      )
      .pluck();
  const columns = { hours: column('hour'), lows: column('low'), highs: column('high') };

  const asked = db.transaction((question: OutlineQuestion, add: TakeHour): void => {
    const { sensorKey, code, from, to, changes } = question;
    const addPiece = ({ lowAt, low, highAt, high }: Outline) => {
      add(hourOf(lowAt), lowAt, low, low);
      if (highAt !== lowAt) add(hourOf(highAt), highAt, high, high);
    };
    const addPieces = (fromAt: number, toAt: number) => {
      if (fromAt <= toAt) for (const piece of pieces(question, fromAt, toAt)) addPiece(piece);
    };

    const lapsedUntil = (hoursFrom.get() ?? Number.MIN_SAFE_INTEGER) / dayHours;
    const lastDay = Math.min(Math.floor((to + 1) / dayMs), lapsedUntil) - 1;
    for (const row of days.between(sensorKey, code, Math.ceil(from / dayMs), lastDay)) {
      const { lowAt, low, highAt, high } = outlineOfRow(row, dayMs);
      for (const { firstAt, lastAt } of spansOfDay(row)) {
        for (let hour = hourOf(firstAt); hour <= hourOf(lastAt); hour++) {
          if (lowAt >= firstAt && lowAt <= lastAt) add(hour, lowAt, low, low);
          if (highAt >= firstAt && highAt <= lastAt) add(hour, highAt, high, high);
        }
      }
    }
    const [wholeFrom, wholeTo] = [Math.ceil(from / hourMs), Math.floor((to + 1) / hourMs) - 1];
    const parted = new Set(changes.filter((at) => at % hourMs !== 0).map(hourOf));
    addPieces(from, Math.min(to, wholeFrom * hourMs - 1));
    let page: number[];
    let next = wholeFrom;
    do {
      const asked = [sensorKey, code, next, wholeTo, pageHours] as const;
      page = columns.hours.all(...asked);
      const [lows, highs] = [columns.lows.all(...asked), columns.highs.all(...asked)];
      for (const [i, hour] of page.entries()) {
        if (parted.has(hour)) addPieces(hour * hourMs, (hour + 1) * hourMs - 1);
        else add(hour, hour * hourMs, lows[i] as number, highs[i] as number);
        next = hour + 1;
      }
    } while (page.length === pageHours);
    addPieces(Math.max(wholeFrom, wholeTo + 1) * hourMs, to);
    for (const one of staged.between(sensorKey, code, from, to, -1)) addPiece(pieceOf(one));
  });

  /**
   * @param from - epoch ms, included
   * @param to - epoch ms, included
   * @param changes - when another calibration begins, epoch ms
   */
  return (
    sensorKey: number,
    quantity: Quantity,
    from: number,
    to: number,
    changes: readonly number[],
    take: TakeHour,
  ): void => {
    const code = codeOf(quantity);
    asked({ sensorKey, code, from, to, changes, points: Number.POSITIVE_INFINITY }, take);
  };
}
