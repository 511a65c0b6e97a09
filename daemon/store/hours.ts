import type { Database } from 'better-sqlite3';
import type { DirtySpan, HourBlock, HourRange, HourSum } from '../rules/hour-facts.ts';

export function hourTable(db: Database) {
  const between = db.prepare<[string, string, number, number], HourSum>(
    `select hour, low, high, capped, covered from hour_sum
      where place_id = ? and model = ? and hour between ? and ? order by hour`,
  );
  const save = db.prepare(
    `insert or replace into hour_sum (place_id, model, hour, low, high, capped, covered)
     values (@placeId, @model, @hour, @low, @high, @capped, @covered)`,
  );
  const drop = db.prepare(
    'delete from hour_sum where place_id = ? and model = ? and hour between ? and ?',
  );
  const range = db.prepare<[string, string], HourRange>(
    'select from_hour as fromHour, to_hour as toHour from hour_range where place_id = ? and model = ?',
  );
  const setRange = db.prepare(
    'insert or replace into hour_range (place_id, model, from_hour, to_hour) values (?, ?, ?, ?)',
  );
  const dropRange = db.prepare('delete from hour_range where place_id = ? and model = ?');
  const dropOtherSums = db.prepare(
    'delete from hour_sum where model not in (select value from json_each(?))',
  );
  const dropOtherRanges = db.prepare(
    'delete from hour_range where model not in (select value from json_each(?))',
  );
  const dirty = db.prepare<[], DirtySpan>(
    'select rank, place_id as placeId, from_at as fromAt, to_at as toAt from dirty_span order by rank',
  );
  const addDirty = db.prepare('insert into dirty_span (place_id, from_at, to_at) values (?, ?, ?)');
  const clearDirty = db.prepare('delete from dirty_span where rank = ?');
  return {
    between: (placeId: string, model: string, fromHour: number, toHour: number): HourSum[] =>
      between.all(placeId, model, fromHour, toHour),
    range: (placeId: string, model: string): HourRange | null => range.get(placeId, model) ?? null,
    /**
     * Replaces what is kept of a block’s hours. The kept range stays unbroken: a block that does not
     * touch it replaces it whole, for the hours between were never reckoned.
     */
    save: ({ placeId, model, fromHour, toHour, sums, endsHere }: HourBlock): void => {
      const known = range.get(placeId, model);
      const touches = known && fromHour <= known.toHour + 1 && toHour >= known.fromHour - 1;
      const kept = touches ? known : undefined;
      if (known && !touches) drop.run(placeId, model, known.fromHour, known.toHour);
      drop.run(placeId, model, fromHour, endsHere ? Number.MAX_SAFE_INTEGER : toHour);
      for (const sum of sums) save.run({ placeId, model, ...sum });
      const from = Math.min(fromHour, kept?.fromHour ?? fromHour);
      const to = endsHere ? toHour : Math.max(toHour, kept?.toHour ?? toHour);
      if (to < from) dropRange.run(placeId, model);
      else setRange.run(placeId, model, from, to);
    },
    /** Forgets the sums of models that are no longer in force. */
    keepOnly: (models: readonly string[]): void => {
      dropOtherSums.run(JSON.stringify(models));
      dropOtherRanges.run(JSON.stringify(models));
    },
    dirtySpans: (): DirtySpan[] => dirty.all(),
    addDirty: (placeId: string, fromAt: number, toAt: number): void => {
      addDirty.run(placeId, fromAt, toAt);
    },
    clearDirty: (rank: number): void => {
      clearDirty.run(rank);
    },
  };
}
export type HourTable = ReturnType<typeof hourTable>;
