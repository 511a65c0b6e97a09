import type { Database } from 'better-sqlite3';
import type { KeptOpenMessage, ReadingGroup } from '../rules/facts.ts';
import { fileIdentity } from './file-identity.ts';

type NotedGroup = Pick<ReadingGroup, 'opened' | 'released' | 'arrivedAt'>;

/**
 * QoS 2 messages that were taken, until their senders release them. Each is bound to the file it was
 * written to: who sends to a daemon on a copy has other messages under way.
 */
export function openMessageTable(db: Database) {
  const file = db.memory ? 'memory' : fileIdentity(db.name);
  const all = db.prepare<{ file: string }, Omit<KeptOpenMessage, 'isOwn'> & { isOwn: number }>(
    `select client, message_id as messageId, content, opened_at as openedAt,
            coalesce(file, @file) = @file as isOwn
       from open_message order by rowid`,
  );
  const put = db.prepare(
    `insert or replace into open_message (client, message_id, content, file, opened_at)
     values (?, ?, ?, ?, ?)`,
  );
  const drop = db.prepare('delete from open_message where client = ? and message_id = ?');
  return {
    /** In the order they came. */
    all: (): KeptOpenMessage[] =>
      all.all({ file }).map(({ isOwn, ...one }) => ({ ...one, isOwn: isOwn === 1 })),
    /** Keeps what a group opens, and drops what it releases. */
    note({ opened = [], released = [], arrivedAt }: NotedGroup): void {
      for (const { client, messageId } of released) drop.run(client, messageId);
      for (const { client, messageId, content } of opened) {
        put.run(client, messageId, content, file, arrivedAt);
      }
    },
  };
}
export type OpenMessageTable = ReturnType<typeof openMessageTable>;
