import type { Database } from 'better-sqlite3';
import type { Quantity } from '../contract/quantity.ts';
import type { OutlinePoint, ReadingOutline } from '../rules/reading-outline.ts';
import { hourMs, hourOf } from './packed-hour.ts';
import { codeOf } from './quantity-code.ts';
import { type ReadingTable, readingTable } from './readings.ts';

const dayMs = 24 * hourMs;

/** So many hours for each point that is drawn are kept apart: thinning chooses among them. */
const hoursAPoint = 4;

/** Start of the hour or day, then as the columns say. */
type Row = [
  start: number,
  firstMs: number,
  lastMs: number,
  lowMs: number,
  low: number,
  highMs: number,
  high: number,
];

const columns = 'first_ms, last_ms, low_ms, low, high_ms, high';

/**
 * Looks up the lowest and the highest reading of each packed hour without unpacking it, and all
 * readings of the hours at both edges and of those not packed yet. Of days whose hours are no longer
 * kept it is the lowest and the highest of the day.
 */
export function readingOutlines(db: Database, readings: ReadingTable = readingTable(db)) {
  const hours = db
    .prepare<[number, number, number, number], Row>(
      `select hour, ${columns} from packed_hour
        where sensor_key = ? and quantity = ? and hour between ? and ? order by hour`,
    )
    .raw();
  const days = db
    .prepare<[number, number, number, number], Row>(
      `select day, ${columns} from packed_day
        where sensor_key = ? and quantity = ? and day between ? and ? order by day`,
    )
    .raw();
  const { staged, packed } = readings;

  /**
   * @param from - epoch ms, included
   * @param to - epoch ms, included
   * @param points - how many are to be drawn: where hours are many more, several are taken together
   */
  return (
    sensorKey: number,
    quantity: Quantity,
    from: number,
    to: number,
    points = Number.POSITIVE_INFINITY,
  ): ReadingOutline => {
    const code = codeOf(quantity);
    const outline: ReadingOutline = { points: [], spans: [] };
    const add = ([start, firstMs, lastMs, lowMs, low, highMs, high]: Row, unitMs: number) => {
      const at = start * unitMs;
      const [lowAt, highAt] = [at + lowMs, at + highMs];
      if (lowAt < highAt) outline.points.push({ at: lowAt, raw: low });
      outline.points.push({ at: highAt, raw: high });
      if (lowAt > highAt) outline.points.push({ at: lowAt, raw: low });
      outline.spans.push({ firstAt: at + firstMs, lastAt: at + lastMs });
    };
    const addEach = (found: readonly OutlinePoint[]) => {
      for (const { at, raw } of found) {
        outline.points.push({ at, raw });
        outline.spans.push({ firstAt: at, lastAt: at });
      }
    };
    // Before the packed ones: what is packed in between is then seen twice, and not missed.
    const waiting = staged.between(sensorKey, code, from, to, -1);
    const [firstHour, lastHour] = [hourOf(from), hourOf(to)];
    const firstDay = Math.ceil(from / dayMs);
    const lastDay = Math.floor((to + 1) / dayMs) - 1;
    for (const row of days.all(sensorKey, code, firstDay, lastDay)) add(row, dayMs);
    const endOfFirst = Math.min(to, (firstHour + 1) * hourMs - 1);
    addEach(packed.between(sensorKey, code, from, endOfFirst, Number.POSITIVE_INFINITY));
    const between = hours.all(sensorKey, code, firstHour + 1, lastHour - 1);
    const together = Math.floor(between.length / (hoursAPoint * points));
    if (together <= 1) for (const row of between) add(row, hourMs);
    else addTogether(outline, between, together);
    if (lastHour > firstHour) {
      addEach(packed.between(sensorKey, code, lastHour * hourMs, to, Number.POSITIVE_INFINITY));
    }
    const lastPacked = outline.spans.at(-1)?.lastAt ?? Number.NEGATIVE_INFINITY;
    addEach(waiting);
    if ((waiting[0]?.at ?? Number.POSITIVE_INFINITY) <= lastPacked) {
      outline.points.sort((a, b) => a.at - b.at);
      outline.points = outline.points.filter(({ at }, i, all) => at !== all[i - 1]?.at);
      outline.spans.sort((a, b) => a.firstAt - b.firstAt);
    }
    return outline;
  };
}

/**
 * Adds the lowest and the highest reading of every so many hours. Stretches are joined where less
 * than an hour lies between them: no such time is a gap where an outline is drawn.
 */
function addTogether(outline: ReadingOutline, hours: readonly Row[], together: number): void {
  for (let next = 0; next < hours.length; next += together) {
    let [lowAt, low, highAt, high] = [0, Number.POSITIVE_INFINITY, 0, Number.NEGATIVE_INFINITY];
    for (let i = next; i < Math.min(hours.length, next + together); i++) {
      const [hour, firstMs, lastMs, lowMs, lowest, highMs, highest] = hours[i] as Row;
      const at = hour * hourMs;
      if (lowest < low) [low, lowAt] = [lowest, at + lowMs];
      if (highest > high) [high, highAt] = [highest, at + highMs];
      const before = outline.spans.at(-1);
      if (before && at + firstMs - before.lastAt <= hourMs) before.lastAt = at + lastMs;
      else outline.spans.push({ firstAt: at + firstMs, lastAt: at + lastMs });
    }
    if (lowAt < highAt) outline.points.push({ at: lowAt, raw: low });
    outline.points.push({ at: highAt, raw: high });
    if (lowAt > highAt) outline.points.push({ at: lowAt, raw: low });
  }
}
