import type { Database } from 'better-sqlite3';
import type { KeptPendingReading, PendingBoot, PendingReading } from '../rules/facts.ts';
import { codeOf, quantityOf } from './quantity-code.ts';

type PendingRow = Omit<KeptPendingReading, 'quantity'> & { quantity: number };

const trustedBootKey = 'trusted-boot';

/** Readings that wait for the clock, and during which running of the computer it was last trusted. */
export function pendingTable(db: Database) {
  const insert = db.prepare(
    `insert into pending_reading (boot, monotonic_ms, own_at, sensor, quantity, raw, flags)
     values (@boot, cast(@monotonicMs as integer), @ownAt, @sensor, @quantity, @raw, @flags)`,
  );
  const oldest = db.prepare<[number], PendingRow>(
    `select rank, boot, monotonic_ms as monotonicMs, own_at as ownAt, sensor, quantity, raw, flags
       from pending_reading order by rank limit ?`,
  );
  const boots = db.prepare<[], PendingBoot>(
    `select boot, min(monotonic_ms) as firstMs, max(monotonic_ms) as lastMs, count(*) as count
       from pending_reading group by boot order by min(rank)`,
  );
  const drop = db.prepare(
    'delete from pending_reading where rank in (select value from json_each(?))',
  );
  const setMeta = db.prepare('insert or replace into meta (key, value) values (?, ?)');
  const meta = db.prepare<[string], { value: string }>('select value from meta where key = ?');
  const reading = (row: PendingRow): KeptPendingReading => ({
    ...row,
    quantity: quantityOf(row.quantity),
  });
  return {
    insert: (readings: readonly PendingReading[]): void => {
      for (const one of readings) insert.run({ ...one, quantity: codeOf(one.quantity) });
    },
    /** The first that came, in the order of arrival. */
    oldest: (limit: number): KeptPendingReading[] => oldest.all(limit).map(reading),
    /** Each running of the computer that left readings waiting, in order. */
    boots: (): PendingBoot[] => boots.all(),
    drop: (ranks: readonly number[]): void => {
      drop.run(JSON.stringify(ranks));
    },
    noteTrustedBoot: (boot: string): void => {
      if (meta.get(trustedBootKey)?.value !== boot) setMeta.run(trustedBootKey, boot);
    },
    trustedBoot: (): string | null => meta.get(trustedBootKey)?.value ?? null,
  };
}
export type PendingTable = ReturnType<typeof pendingTable>;
