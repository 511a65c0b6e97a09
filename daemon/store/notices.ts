import type { Database } from 'better-sqlite3';
import type { NewNoticeFact, NoticeFact } from '../rules/facts.ts';
import type { PostingPlan } from '../rules/outgoing.ts';
import type { OutgoingTable } from './outgoing.ts';
import { withTold, writtenTold } from './told-column.ts';

interface NoticeRow extends Omit<NoticeFact, 'told'> {
  told: string | null;
}
const noticeOf = (row: NoticeRow): NoticeFact => withTold(row);

/**
 * What wants attention, and what did. Whoever is to be told is written down with it, in the same
 * transaction: no crash comes between a notice and its message.
 */
export function noticeTable(db: Database, outgoing: OutgoingTable, posting: PostingPlan) {
  const columns = `id, kind, subject, text, told, raised_at as raisedAt, seen_at as seenAt,
    cleared_at as clearedAt, repeats, repeated_at as repeatedAt from notice`;
  const newest = db.prepare<[], NoticeRow>(
    `select ${columns} order by cleared_at is not null, raised_at desc limit 500`,
  );
  const byId = db.prepare<[string], NoticeRow>(`select ${columns} where id = ?`);
  const openOfKind = db.prepare<[string, number], NoticeRow>(
    `select ${columns} where kind = ? and cleared_at is null and raised_at <= ?`,
  );
  const insert = db.prepare(
    `insert or ignore into notice (id, kind, subject, text, told, raised_at)
     values (@id, @kind, @subject, @text, @told, @raisedAt)`,
  );
  const seenOfSubject = db.prepare<[string, string], NoticeRow>(
    `select ${columns} where kind = ? and subject = ? and cleared_at is null and seen_at is not null`,
  );
  const clear = db.prepare('update notice set cleared_at = ? where id = ? and cleared_at is null');
  const see = db.prepare('update notice set seen_at = coalesce(seen_at, ?) where id = ?');
  const repeat = db.prepare(
    `update notice set repeats = repeats + 1, repeated_at = ?, seen_at = null
      where id = ? and cleared_at is null`,
  );
  const clearOne = (id: string, at: number): void => {
    if (clear.run(at, id).changes > 0) outgoing.noteCleared(id, at);
  };
  return {
    newest: (): NoticeFact[] => newest.all().map(noticeOf),
    /** Raises a notice; one of its kind that nobody has seen yet stands, a seen one gives way. */
    raise: (notice: NewNoticeFact): void => {
      const { kind, subject, raisedAt } = notice;
      for (const { id } of seenOfSubject.all(kind, subject)) clearOne(id, raisedAt);
      const row = { ...notice, told: writtenTold(notice.told) };
      if (insert.run(row).changes === 1) outgoing.post(notice, raisedAt, 0, posting);
    },
    clear: clearOne,
    /** Tells again of what is open: it counts as unseen from then on. */
    repeat: (id: string, at: number): void => {
      if (repeat.run(at, id).changes === 0) return;
      const notice = byId.get(id);
      if (notice) outgoing.post(noticeOf(notice), at, notice.repeats, posting);
    },
    /** Clears all of a kind that were raised by a moment. */
    clearKind: (kind: NoticeFact['kind'], at: number): void => {
      for (const { id } of openOfKind.all(kind, at)) clearOne(id, at);
    },
    see: (id: string, at: number): void => {
      see.run(at, id);
    },
  };
}
export type NoticeTable = ReturnType<typeof noticeTable>;
