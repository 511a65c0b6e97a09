import type { Database } from 'better-sqlite3';
import type { Quantity } from '../contract/quantity.ts';
import { hourMs } from './packed-hour.ts';
import { codeOf } from './quantity-code.ts';

/** What is left of the readings of one UTC hour or day that are no longer kept. */
export interface LapsedOutline {
  span: 'day' | 'hour';
  /** Its start, UTC epoch ms; so are all other times. */
  from: number;
  /** How many readings there were. */
  count: number;
  firstAt: number;
  lastAt: number;
  low: number;
  lowAt: number;
  high: number;
  highAt: number;
  /** Of all values as they were sent. */
  sum: number;
}

const outlineColumns = (unitMs: number, start: string) =>
  `${start} * ${unitMs} as "from", count, ${start} * ${unitMs} + first_ms as firstAt,
   ${start} * ${unitMs} + last_ms as lastAt, low, ${start} * ${unitMs} + low_ms as lowAt,
   high, ${start} * ${unitMs} + high_ms as highAt, sum`;

/** Looks up what is left of readings that were let go: days first, which are older, then hours. */
export function lapsedOutlines(db: Database) {
  const all = db.prepare<[{ sensorKey: number; code: number }], LapsedOutline>(
    `select 'day' as span, ${outlineColumns(24 * hourMs, 'day')} from packed_day
      where sensor_key = @sensorKey and quantity = @code
        and day * 24 < (select hour from kept_from where level = 'hours')
     union all
     select 'hour' as span, ${outlineColumns(hourMs, 'hour')} from packed_hour
      where sensor_key = @sensorKey and quantity = @code and packed is null
     order by "from"`,
  );
  return (sensorKey: number, quantity: Quantity): IterableIterator<LapsedOutline> =>
    all.iterate({ sensorKey, code: codeOf(quantity) });
}
