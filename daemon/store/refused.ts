import type { Database } from 'better-sqlite3';
import type { RefusedMessage } from '../rules/facts.ts';
import { readSaid, writtenSaid } from './said-column.ts';

/** How many refused messages are kept; the oldest go first. */
export const keptRefused = 500;

export function refusedTable(db: Database) {
  const insert = db.prepare(
    `insert into refused (at, topic, code, detail, payload_start, payload_bytes)
     values (@at, @topic, @code, @detail, @payloadStart, @payloadBytes)`,
  );
  const trim = db.prepare(
    `delete from refused where rank <= (select max(rank) from refused) - ${keptRefused}`,
  );
  const newest = db.prepare<[], RefusedMessage>(
    `select at, topic, code, detail, payload_start as payloadStart, payload_bytes as payloadBytes
       from refused order by rank desc limit ${keptRefused}`,
  );
  return {
    insert: (messages: readonly RefusedMessage[]): void => {
      for (const { detailSaid, ...message } of messages) {
        insert.run({ ...message, detail: writtenSaid(message.detail, detailSaid) });
      }
      if (messages.length > 0) trim.run();
    },
    newest: (): RefusedMessage[] =>
      newest.all().map(({ detail, ...message }) => {
        const { text, said } = readSaid(detail);
        return { ...message, detail: text, ...(said === null ? {} : { detailSaid: said }) };
      }),
  };
}
export type RefusedTable = ReturnType<typeof refusedTable>;
