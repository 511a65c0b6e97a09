import type { Database } from 'better-sqlite3';
import type { RefusedMessage } from '../rules/facts.ts';
import { readSaid, writtenTold } from './told-column.ts';

/** How many refused messages are kept; the oldest go first. */
export const keptRefused = 500;

type RefusedRow = Omit<RefusedMessage, 'detailSaid'> & { told: string | null };

export function refusedTable(db: Database) {
  const insert = db.prepare(
    `insert into refused (at, topic, code, detail, told, payload_start, payload_bytes)
     values (@at, @topic, @code, @detail, @told, @payloadStart, @payloadBytes)`,
  );
  const trim = db.prepare(
    `delete from refused where rank <= (select max(rank) from refused) - ${keptRefused}`,
  );
  const newest = db.prepare<[], RefusedRow>(
    `select at, topic, code, detail, told, payload_start as payloadStart, payload_bytes as payloadBytes
       from refused order by rank desc limit ${keptRefused}`,
  );
  return {
    insert: (messages: readonly RefusedMessage[]): void => {
      for (const { detailSaid, ...message } of messages) {
        insert.run({ ...message, told: writtenTold(detailSaid) });
      }
      if (messages.length > 0) trim.run();
    },
    newest: (): RefusedMessage[] =>
      newest.all().map(({ told, ...message }) => {
        const detailSaid = readSaid(message.detail, told);
        return detailSaid === null ? message : { ...message, detailSaid };
      }),
  };
}
export type RefusedTable = ReturnType<typeof refusedTable>;
