import type { Database } from 'better-sqlite3';
import type { ReadingOutline } from '../rules/reading-outline.ts';
import { gatherStretches, stretchStarts } from '../rules/stretches.ts';
import {
  type HourPieces,
  mostParted,
  type OutlineQuestion,
  stretchEdges,
} from './outline-pieces.ts';
import type { HeardSpan } from './packed-days.ts';
import { hourMs, hourOf, type Outline } from './packed-hour.ts';

interface HourRange {
  sensorKey: number;
  code: number;
  /** Hours since the epoch, both included. */
  fromHour: number;
  toHour: number;
}

/** So many parts, as even as whole hours allow, of the time from one hour on. */
interface Parted extends HourRange {
  first: number;
  hours: number;
  parts: number;
}

type Extreme = [raw: number, at: number];
type HeardPart = [HeardSpan['firstAt'], HeardSpan['lastAt'], unbroken: number];

const ofRange = `from packed_hour
  where sensor_key = @sensorKey and quantity = @code and hour between @fromHour and @toHour`;
/** The number of the part that an hour is in, as `stretchStarts` parts them. */
const byPart = 'group by cast(((hour - @first + 1) * @parts - 1) / @hours as integer)';
const firstAt = `hour * ${hourMs} + first_ms`;
const lastAt = `hour * ${hourMs} + last_ms`;

/**
 * Outlines of times with many more hours than points. The rows of the hours stay within SQLite, which gives two
 * extremes and one span for each stretch: as thousands of arrays, hours cost more in garbage than in looking up.
 */
export function hourOutlines(db: Database, hourPieces: HourPieces) {
  const extent = db.prepare<
    [HourRange],
    { rows: number; readings: number | null; first: number; last: number }
  >(
    `select count(*) as rows, sum(count) as readings, min(hour) as first, max(hour) as last ${ofRange}`,
  );
  // Beside a lone min() or max() SQLite takes other columns from the row that it found.
  const lows = db
    .prepare<[Parted], Extreme>(`select min(low), hour * ${hourMs} + low_ms ${ofRange} ${byPart}`)
    .raw();
  const highs = db
    .prepare<[Parted], Extreme>(`select max(high), hour * ${hourMs} + high_ms ${ofRange} ${byPart}`)
    .raw();
  // Where every hour is there and none begins later than another ends, two readings that follow
  // each other are never more than an hour apart.
  const heard = db
    .prepare<[Parted], HeardPart>(
      `select min(${firstAt}), max(${lastAt}),
              count(*) = max(hour) - min(hour) + 1 and max(first_ms) <= min(last_ms)
         ${ofRange} ${byPart}`,
    )
    .raw();
  const heardHours = db
    .prepare<[HourRange], [number, number]>(`select ${firstAt}, ${lastAt} ${ofRange} order by hour`)
    .raw();

  /** Adds from when to when there were readings, parted where they are more than an hour apart. */
  function addSpans(spans: HeardSpan[], part: Parted): void {
    for (const [first, last, unbroken] of heard.all(part)) {
      const found: [number, number][] = unbroken
        ? [[first, last]]
        : heardHours.all({ ...part, fromHour: hourOf(first), toHour: hourOf(last) });
      let span: HeardSpan | null = null;
      for (const [from, to] of found) {
        if (span && from - span.lastAt <= hourMs) span.lastAt = to;
        else {
          span = { firstAt: from, lastAt: to };
          spans.push(span);
        }
      }
    }
  }

  /**
   * @param waiting - what is not packed yet
   * @returns null where hours or readings are too few for the points, or calibrations too many
   */
  return (question: OutlineQuestion, waiting: readonly Outline[]): ReadingOutline | null => {
    const { sensorKey, code, from, to, points } = question;
    const [wholeFrom, wholeTo] = [Math.ceil(from / hourMs), Math.floor((to + 1) / hourMs) - 1];
    const series = { sensorKey, code };
    const packed = extent.get({ ...series, fromHour: wholeFrom, toHour: wholeTo });
    const changes = question.changes.filter((at) => at > from && at <= to);
    if (!packed?.readings || packed.rows * 2 < points) return null;
    if (packed.readings <= points || changes.length > points * mostParted) return null;

    const waitingHours = new Set(waiting.map((one) => hourOf(one.firstAt)));
    const first = Math.max(wholeFrom, Math.min(packed.first, ...waitingHours));
    const last = Math.min(wholeTo, Math.max(packed.last, ...waitingHours));
    const hours = last - first + 1;
    const stretches = Math.max(1, Math.floor(points / 2) - stretchEdges - changes.length);
    // A silence needs no points: they are for the hours that were heard.
    const silence = Math.max(1, hours / (packed.rows + waitingHours.size));
    const parts = Math.min(hours, Math.floor(stretches * silence));
    const gathered = gatherStretches(stretchStarts(first, last, parts, hourMs, changes));
    const spans: HeardSpan[] = [];
    const add = (piece: Outline) => {
      gathered.add(piece);
      spans.push({ firstAt: piece.firstAt, lastAt: piece.lastAt });
    };
    const addPieces = (fromAt: number, toAt: number) => {
      if (fromAt <= toAt) for (const piece of hourPieces(question, fromAt, toAt)) add(piece);
    };
    const addHours = (fromHour: number, toHour: number) => {
      if (fromHour > toHour) return;
      const part = { ...series, first, hours, parts, fromHour, toHour };
      for (const [raw, at] of lows.iterate(part)) gathered.addLow(at, raw);
      for (const [raw, at] of highs.iterate(part)) gathered.addHigh(at, raw);
      addSpans(spans, part);
    };

    addPieces(from, wholeFrom * hourMs - 1);
    // Hours up to a change are looked up apart from those after it, and the hour it falls into by itself.
    let next = first;
    for (const at of changes) {
      const hour = hourOf(at);
      if (hour < next || hour > last) continue;
      addHours(next, hour - 1);
      next = hour;
      if (at % hourMs === 0) continue;
      addPieces(hour * hourMs, (hour + 1) * hourMs - 1);
      next = hour + 1;
    }
    addHours(next, last);
    addPieces((wholeTo + 1) * hourMs, to);
    for (const piece of waiting) add(piece);
    spans.sort((a, b) => a.firstAt - b.firstAt);
    return { points: gathered.points(), spans, stretches: 'hours' };
  };
}
export type HourOutlines = ReturnType<typeof hourOutlines>;
