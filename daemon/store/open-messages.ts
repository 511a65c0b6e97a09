import type { Database } from 'better-sqlite3';
import type { OpenMessage, ReadingGroup } from '../rules/facts.ts';

/** QoS 2 messages that were taken, until their senders release them. */
export function openMessageTable(db: Database) {
  const all = db.prepare<[], OpenMessage>(
    'select client, message_id as messageId, content from open_message order by rowid',
  );
  const put = db.prepare(
    'insert or replace into open_message (client, message_id, content) values (?, ?, ?)',
  );
  const drop = db.prepare('delete from open_message where client = ? and message_id = ?');
  return {
    /** In the order they came. */
    all: (): OpenMessage[] => all.all(),
    /** Keeps what a group opens, and drops what it releases. */
    note({ opened = [], released = [] }: Pick<ReadingGroup, 'opened' | 'released'>): void {
      for (const { client, messageId } of released) drop.run(client, messageId);
      for (const { client, messageId, content } of opened) put.run(client, messageId, content);
    },
  };
}
export type OpenMessageTable = ReturnType<typeof openMessageTable>;
