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

interface Heard extends HeardSpan {
  hours: number;
  readings: number;
  /** 1 where two readings that follow each other are surely no more than an hour apart. */
  unbroken: 0 | 1;
}

/** The last reading before a silence of more than an hour, and the first after it, epoch ms. */
type Gap = [lastAt: number, firstAt: number];

const ofRange = `from packed_hour
  where sensor_key = @sensorKey and quantity = @code and hour between @fromHour and @toHour`;
/** The number of the part that an hour is in, as `stretchStarts` parts them. */
const byPart = 'group by cast(((hour - @first + 1) * @parts - 1) / @hours as integer)';
const firstAt = `hour * ${hourMs} + first_ms`;
const lastAt = `hour * ${hourMs} + last_ms`;

/**
 * Outlines of times with many more hours than points. The rows of the hours stay within SQLite, which gives two
 * extremes for each stretch: as thousands of arrays, hours cost more in garbage than in looking up.
 */
export function hourOutlines(db: Database, hourPieces: HourPieces) {
  // Where every hour is there and none begins later than another ends, no hour is too far from the next.
  const heardIn = db.prepare<[HourRange], Heard>(
    `select count(*) as hours, sum(count) as readings, min(${firstAt}) as firstAt, max(${lastAt}) as lastAt,
            count(*) = max(hour) - min(hour) + 1 and max(first_ms) <= min(last_ms) as unbroken
       ${ofRange} having count(*) > 0`,
  );
  const gapsIn = db
    .prepare<[HourRange], Gap>(
      `select * from (select lag(${lastAt}) over (order by hour) as before, ${firstAt} as after ${ofRange})
        where after - before > ${hourMs} order by after`,
    )
    .raw();
  // Beside a lone min() or max() SQLite takes other columns from the row that it found.
  const lows = db
    .prepare<[Parted], Extreme>(`select min(low), hour * ${hourMs} + low_ms ${ofRange} ${byPart}`)
    .raw();
  const highs = db
    .prepare<[Parted], Extreme>(`select max(high), hour * ${hourMs} + high_ms ${ofRange} ${byPart}`)
    .raw();

  /** From when to when there were readings, parted wherever they are more than an hour apart. */
  function spansIn(range: HourRange, { firstAt, lastAt, unbroken }: Heard): HeardSpan[] {
    const spans = [{ firstAt, lastAt }];
    for (const [before, after] of unbroken ? [] : gapsIn.all(range)) {
      (spans.at(-1) as HeardSpan).lastAt = before;
      spans.push({ firstAt: after, lastAt });
    }
    return spans;
  }

  /**
   * @param waiting - what is not packed yet
   * @returns null where hours or readings are too few for the points, or calibrations too many
   */
  return (question: OutlineQuestion, waiting: readonly Outline[]): ReadingOutline | null => {
    const { sensorKey, code, from, to, points } = question;
    const [wholeFrom, wholeTo] = [Math.ceil(from / hourMs), Math.floor((to + 1) / hourMs) - 1];
    const series = { sensorKey, code };
    const packed = heardIn.get({ ...series, fromHour: wholeFrom, toHour: wholeTo });
    const changes = question.changes.filter((at) => at > from && at <= to);
    if (!packed || packed.hours * 2 < points || packed.readings <= points) return null;
    if (changes.length > points * mostParted) return null;

    const waitingHours = new Set(waiting.map((one) => hourOf(one.firstAt)));
    const first = Math.max(wholeFrom, Math.min(hourOf(packed.firstAt), ...waitingHours));
    const last = Math.min(wholeTo, Math.max(hourOf(packed.lastAt), ...waitingHours));
    const hours = last - first + 1;
    const stretches = Math.max(1, Math.floor(points / 2) - stretchEdges - changes.length);
    // A silence needs no points: they are for the hours that were heard.
    const silence = Math.max(1, hours / (packed.hours + waitingHours.size));
    const parts = Math.min(hours, Math.floor(stretches * silence));
    const whole = { ...series, first, hours, parts, fromHour: first, toHour: last };
    const gathered = gatherStretches(stretchStarts(first, last, parts, hourMs, changes));
    const spans = spansIn(whole, packed);
    const add = (piece: Outline) => {
      gathered.add(piece);
      spans.push({ firstAt: piece.firstAt, lastAt: piece.lastAt });
    };
    const addPieces = (fromAt: number, toAt: number) => {
      if (fromAt <= toAt) for (const piece of hourPieces(question, fromAt, toAt)) add(piece);
    };
    const addHours = (fromHour: number, toHour: number) => {
      if (fromHour > toHour) return;
      const part = { ...whole, fromHour, toHour };
      for (const [raw, at] of lows.all(part)) gathered.addLow(at, raw);
      for (const [raw, at] of highs.all(part)) gathered.addHigh(at, raw);
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
