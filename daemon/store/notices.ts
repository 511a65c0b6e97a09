import type { Database } from 'better-sqlite3';
import type { NoticeFact } from '../rules/facts.ts';

export function noticeTable(db: Database) {
  const newest = db.prepare<[], NoticeFact>(
    `select id, kind, subject, text, raised_at as raisedAt, seen_at as seenAt, cleared_at as clearedAt
       from notice order by cleared_at is not null, raised_at desc limit 500`,
  );
  const raise = db.prepare(
    `insert or ignore into notice (id, kind, subject, text, raised_at)
     values (@id, @kind, @subject, @text, @raisedAt)`,
  );
  const clearSeen = db.prepare(
    `update notice set cleared_at = @raisedAt
      where kind = @kind and subject = @subject and cleared_at is null and seen_at is not null`,
  );
  const clear = db.prepare('update notice set cleared_at = ? where id = ? and cleared_at is null');
  const see = db.prepare('update notice set seen_at = coalesce(seen_at, ?) where id = ?');
  return {
    newest: (): NoticeFact[] => newest.all(),
    /** Raises a notice; one of its kind that nobody has seen yet stands, a seen one gives way. */
    raise: (notice: NoticeFact): void => {
      const { kind, subject, raisedAt } = notice;
      clearSeen.run({ kind, subject, raisedAt });
      raise.run(notice);
    },
    clear: (id: string, at: number): void => {
      clear.run(at, id);
    },
    see: (id: string, at: number): void => {
      see.run(at, id);
    },
  };
}
export type NoticeTable = ReturnType<typeof noticeTable>;
