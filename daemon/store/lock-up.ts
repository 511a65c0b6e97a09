import type { Database } from 'better-sqlite3';
import type { LockUpTickFact } from '../rules/facts.ts';

interface TickRow extends Omit<LockUpTickFact, 'done'> {
  done: number;
}

/** Ticks of the lock-up list. Nothing is overwritten: the newest of a day and line stands. */
export function lockUpTable(db: Database) {
  const all = db.prepare<[], TickRow>(
    'select id, day, line, done, at, by_whom as by from lock_up_tick order by at, recorded_at',
  );
  const insert = db.prepare(
    `insert into lock_up_tick (id, day, line, done, at, by_whom, recorded_at)
     values (@id, @day, @line, @done, @at, @by, @recordedAt)`,
  );
  return {
    all: (): LockUpTickFact[] => all.all().map((row) => ({ ...row, done: row.done === 1 })),
    insert: (tick: LockUpTickFact, recordedAt: number): void => {
      insert.run({ ...tick, done: tick.done ? 1 : 0, recordedAt });
    },
  };
}
export type LockUpTable = ReturnType<typeof lockUpTable>;
