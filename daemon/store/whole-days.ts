import type { Database } from 'better-sqlite3';
import type { OutlineQuestion } from './outline-pieces.ts';
import { dayMs } from './packed-days.ts';
import { hourMs, hourOf, type Outline } from './packed-hour.ts';

/** The days that lie whole within a time, numbered from 1970 on, both included. */
export interface WholeDays {
  first: number;
  last: number;
}

interface Edge {
  hour: number;
  ms: number;
}

/** Finds the days that a question asks for whole, from the first to the last with readings. */
export function wholeDaysIn(db: Database) {
  // Of two hours the first may have readings outside of the asked time alone.
  const firstHours = db.prepare<[number, number, number], Edge>(
    `select hour, last_ms as ms from packed_hour
      where sensor_key = ? and quantity = ? and hour >= ? order by hour limit 2`,
  );
  const lastHours = db.prepare<[number, number, number], Edge>(
    `select hour, first_ms as ms from packed_hour
      where sensor_key = ? and quantity = ? and hour <= ? order by hour desc limit 2`,
  );
  const firstDay = db
    .prepare<[number, number, number], number>(
      `select day from packed_day where sensor_key = ? and quantity = ? and day >= ?
        order by day limit 1`,
    )
    .pluck();
  const lastDay = db
    .prepare<[number, number, number], number>(
      `select day from packed_day where sensor_key = ? and quantity = ? and day <= ?
        order by day desc limit 1`,
    )
    .pluck();
  const dayOf = (at: number | undefined) => (at === undefined ? [] : [Math.floor(at / dayMs)]);
  const known = (day: number | undefined) => (day === undefined ? [] : [day]);
  const timeOf = ({ hour, ms }: Edge) => hour * hourMs + ms;

  /** @param waiting - what is not packed yet, of the asked time; @returns null for none */
  return (question: OutlineQuestion, waiting: readonly Outline[]): WholeDays | null => {
    const { sensorKey, code, from, to } = question;
    const [wholeFrom, wholeTo] = [Math.ceil(from / dayMs), Math.floor((to + 1) / dayMs) - 1];
    const firsts = firstHours.all(sensorKey, code, hourOf(from)).map(timeOf);
    const lasts = lastHours.all(sensorKey, code, hourOf(to)).map(timeOf);
    const first = Math.min(
      ...known(firstDay.get(sensorKey, code, wholeFrom)),
      ...dayOf(firsts.find((at) => at >= from)),
      ...dayOf(waiting[0]?.firstAt),
    );
    const last = Math.max(
      ...known(lastDay.get(sensorKey, code, wholeTo)),
      ...dayOf(lasts.find((at) => at <= to)),
      ...dayOf(waiting.at(-1)?.lastAt),
    );
    const whole = { first: Math.max(first, wholeFrom), last: Math.min(last, wholeTo) };
    return Number.isFinite(first) && whole.first <= whole.last ? whole : null;
  };
}
