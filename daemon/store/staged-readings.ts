import type { Database } from 'better-sqlite3';
import { type ReadingRun, type RunBuilder, runBuilder } from '../rules/reading-run.ts';
import { hourMs, type KeptReading } from './packed-hour.ts';

/** A sensor’s quantity, as the tables know it. */
export interface SeriesKey {
  sensorKey: number;
  code: number;
}

/**
 * Readings that are not packed yet lie by slots of time, and within one by sensor: what a commit
 * brings falls into one slot or two and touches few pages, and a sensor is found by a look into each
 * slot, however many others there are. About as long as three spaced commits; hours hold whole ones.
 */
const slotMs = 15_000;
const hourSlots = hourMs / slotMs;
/** Quantities have smaller codes than this. */
const mostCodes = 256;
const slotOf = (at: number): number => Math.floor(at / slotMs);

/** The slots that have readings, from one to another. */
const slotsUp = `with recursive slots (slot) as (
  select min(slot) from reading where slot >= @fromSlot
  union all
  select (select min(slot) from reading where slot > slots.slot) from slots
   where slots.slot <= @toSlot
)`;
const slotsDown = `with recursive slots (slot) as (
  select max(slot) from reading where slot <= @toSlot
  union all
  select (select max(slot) from reading where slot < slots.slot) from slots
   where slots.slot is not null
)`;
const ofSeries = 'slot = slots.slot and sensor_key = @sensorKey and quantity = @code';
const columns = 'reading.at, reading.raw, reading.flags';

interface Neighbour extends SeriesKey {
  at: number;
  without: number;
}

/** Readings that are not packed yet. */
export function stagedReadings(db: Database) {
  const insert = db.prepare(
    `insert or ignore into reading (slot, sensor_key, quantity, at, raw, flags)
     values (?, ?, ?, ?, ?, ?)`,
  );
  type Stretch = SeriesKey & Record<'fromSlot' | 'toSlot' | 'from' | 'to' | 'limit', number>;
  const ofStretch = `${slotsUp} select ${columns} from slots cross join reading using (slot)
      where sensor_key = @sensorKey and quantity = @code and at between @from and @to
      order by at limit @limit`;
  const between = db.prepare<[Stretch], KeptReading>(ofStretch);
  const eachBetween = db
    .prepare<[Stretch], [at: number, raw: number, flags: number]>(ofStretch)
    .raw();
  const slotBefore = db
    .prepare<[Neighbour & { toSlot: number }], number>(
      `${slotsDown} select slot from slots
        where exists (select 1 from reading
                       where ${ofSeries} and at < @at and flags & @without = 0) limit 1`,
    )
    .pluck();
  const slotAfter = db
    .prepare<[Neighbour & { fromSlot: number; toSlot: number }], number>(
      `${slotsUp} select slot from slots
        where exists (select 1 from reading
                       where ${ofSeries} and at > @at and flags & @without = 0) limit 1`,
    )
    .pluck();
  const lastOfSlot = db.prepare<[Neighbour & { slot: number }], KeptReading>(
    `select ${columns} from reading
      where slot = @slot and sensor_key = @sensorKey and quantity = @code
        and at < @at and flags & @without = 0 order by at desc limit 1`,
  );
  const firstOfSlot = db.prepare<[Neighbour & { slot: number }], KeptReading>(
    `select ${columns} from reading
      where slot = @slot and sensor_key = @sensorKey and quantity = @code
        and at > @at and flags & @without = 0 order by at limit 1`,
  );
  const extents = db.prepare<[], SeriesKey & { firstAt: number; lastAt: number }>(
    `select sensor_key as sensorKey, quantity as code, min(at) as firstAt, max(at) as lastAt
       from reading group by sensor_key, quantity`,
  );
  const extent = db.prepare<[number, number], { firstAt: number | null; lastAt: number | null }>(
    `select min(at) as firstAt, max(at) as lastAt from reading
      where sensor_key = ? and quantity = ?`,
  );
  const oldestSlot = db.prepare<[], number | null>('select min(slot) from reading').pluck();
  const sensorsOf = db.prepare<[number, number], { sensorKey: number; count: number }>(
    `select sensor_key as sensorKey, count(*) as count from reading
      where slot >= ? and slot < ? group by sensor_key order by sensor_key`,
  );
  const ofSensors = db
    .prepare<
      [Record<'fromSlot' | 'toSlot' | 'fromSensor' | 'toSensor', number>],
      [sensorKey: number, code: number, at: number, raw: number, flags: number]
    >(
      `${slotsUp} select sensor_key, quantity, ${columns}
         from slots cross join reading using (slot)
        where slot <= @toSlot and sensor_key between @fromSensor and @toSensor order by at`,
    )
    .raw();
  const nthSlot = db
    .prepare<[number, number, number], number>(
      'select slot from reading where slot >= ? and slot < ? order by slot limit 1 offset ?',
    )
    .pluck();
  const remove = db.prepare('delete from reading where slot >= ? and slot < ?');
  const slotsOf = (hour: number) => [hour * hourSlots, (hour + 1) * hourSlots] as const;
  return {
    /** @returns false when this sensor already gave this quantity at this time */
    insert: (sensorKey: number, code: number, { at, raw, flags }: KeptReading): boolean =>
      insert.run(slotOf(at), sensorKey, code, at, raw, flags).changes === 1,
    /** @param limit - −1 for none */
    between: (
      sensorKey: number,
      code: number,
      from: number,
      to: number,
      limit: number,
    ): KeptReading[] => {
      const slots = { fromSlot: slotOf(from), toSlot: slotOf(to) };
      return between.all({ sensorKey, code, from, to, limit, ...slots });
    },
    /** The same as columns. */
    run: (sensorKey: number, code: number, from: number, to: number, limit: number): ReadingRun => {
      const slots = { fromSlot: slotOf(from), toSlot: slotOf(to) };
      const built = runBuilder();
      const rows = eachBetween.iterate({ sensorKey, code, from, to, limit, ...slots });
      for (const [at, raw, flags] of rows) built.add(at, raw, flags);
      return built.run();
    },
    before: (sensorKey: number, code: number, at: number, without: number): KeptReading | null => {
      const asked = { sensorKey, code, at, without };
      const slot = slotBefore.get({ ...asked, toSlot: slotOf(at) });
      return slot === undefined ? null : (lastOfSlot.get({ ...asked, slot }) ?? null);
    },
    after: (sensorKey: number, code: number, at: number, without: number): KeptReading | null => {
      const asked = { sensorKey, code, at, without };
      const slots = { fromSlot: slotOf(at), toSlot: Number.MAX_SAFE_INTEGER };
      const slot = slotAfter.get({ ...asked, ...slots });
      return slot === undefined ? null : (firstOfSlot.get({ ...asked, slot }) ?? null);
    },
    extents: () => extents.all(),
    extent: (sensorKey: number, code: number): { firstAt: number; lastAt: number } | null => {
      const row = extent.get(sensorKey, code);
      return row && row.firstAt !== null && row.lastAt !== null
        ? { firstAt: row.firstAt, lastAt: row.lastAt }
        : null;
    },
    /** The oldest hour that has readings. */
    oldestHour: (): number | null => {
      const slot = oldestSlot.get() ?? null;
      return slot === null ? null : Math.floor(slot / hourSlots);
    },
    /** Which sensors have readings in an hour, and how many, in their order. */
    sensorsOfHour: (hour: number) => sensorsOf.all(...slotsOf(hour)),
    /** The readings of an hour from one sensor to another, by series. */
    ofHour: (hour: number, fromSensor: number, toSensor: number) => {
      const [fromSlot, end] = slotsOf(hour);
      const bySeries = new Map<number, SeriesKey & { waiting: RunBuilder }>();
      const rows = ofSensors.iterate({ fromSlot, toSlot: end - 1, fromSensor, toSensor });
      for (const [sensorKey, code, at, raw, flags] of rows) {
        const series = sensorKey * mostCodes + code;
        let known = bySeries.get(series);
        if (!known) {
          known = { sensorKey, code, waiting: runBuilder() };
          bySeries.set(series, known);
        }
        known.waiting.add(at, raw, flags);
      }
      return [...bySeries.values()];
    },
    /**
     * Removes the oldest readings of an hour.
     *
     * @param count - so many, and those of the same slot as the last of them; at least 1
     * @returns true when none is left of it
     */
    removeOfHour: (hour: number, count: number): boolean => {
      const [from, to] = slotsOf(hour);
      const last = nthSlot.get(from, to, count - 1);
      remove.run(from, last === undefined ? to : last + 1);
      return nthSlot.get(from, to, 0) === undefined;
    },
  };
}
export type StagedReadings = ReturnType<typeof stagedReadings>;
