import type { Database } from 'better-sqlite3';
import type { Said } from '../contract/sentence.ts';
import type { NewNoticeFact } from '../rules/facts.ts';
import {
  type ChannelName,
  type OutgoingBody,
  type OutgoingFact,
  type PostingPlan,
  postingsOf,
} from '../rules/outgoing.ts';
import { readSaid, writtenTold } from './told-column.ts';

interface OutgoingRow extends Omit<OutgoingFact, 'body'> {
  body: string;
}

/** How a channel does: what waits, what arrived last, and what went wrong since. */
export interface ChannelTally {
  channel: ChannelName;
  waiting: number;
  givenUp: number;
  sentAt: number | null;
  /** English. */
  lastError: string | null;
  /** The same as a sentence; null where there is none, and for one from before sentences were kept. */
  lastErrorSaid: Said | null;
}

/** Messages that are to leave the house; written in the transaction of the fact they tell of. */
export function outgoingTable(db: Database) {
  const columns =
    'id, channel, body, created_at as createdAt, due_at as dueAt, tries from outgoing_message';
  const due = db.prepare<[string, number], OutgoingRow>(
    `select ${columns} where channel = ? and due_at <= ? and sent_at is null and given_up_at is null
      order by created_at, id limit 50`,
  );
  const untried = db.prepare<[string], OutgoingRow>(
    `select ${columns} where id = ? and tries = 0 and sent_at is null`,
  );
  const held = db.prepare<[], OutgoingRow>(
    `select ${columns} where tries = 0 and sent_at is null and given_up_at is null`,
  );
  const insert = db.prepare(
    `insert or ignore into outgoing_message (id, channel, kind, body, created_at, due_at)
     values (@id, @channel, @kind, @body, @createdAt, @dueAt)`,
  );
  const rewrite = db.prepare('update outgoing_message set body = ? where id = ?');
  const begin = db.prepare('update outgoing_message set tries = tries + 1 where id = ?');
  const sent = db.prepare('update outgoing_message set sent_at = ? where id = ?');
  const failed = db.prepare(
    `update outgoing_message set last_error = @error, last_error_told = @told,
       due_at = coalesce(@dueAt, due_at), given_up_at = @givenUpAt where id = @id`,
  );
  const prune = db.prepare('delete from outgoing_message where coalesce(sent_at, given_up_at) < ?');
  const tally = db.prepare<[], Omit<ChannelTally, 'lastError' | 'lastErrorSaid'>>(
    `select channel,
       sum(sent_at is null and given_up_at is null) as waiting,
       sum(given_up_at is not null) as givenUp,
       max(sent_at) as sentAt
     from outgoing_message group by channel`,
  );
  // With max() the other columns are those of its row. **Source:** SQLite manual, “SELECT”, section 2.5.
  const lastErrors = db.prepare<[], { channel: ChannelName; text: string; told: string | null }>(
    `select channel, last_error as text, last_error_told as told, max(created_at)
       from outgoing_message where sent_at is null and last_error is not null group by channel`,
  );
  const read = (row: OutgoingRow): OutgoingFact => ({ ...row, body: JSON.parse(row.body) });
  /** @returns false where a message with this id was written before */
  const add = (message: Omit<OutgoingFact, 'tries'>): boolean => {
    const { body, ...rest } = message;
    return insert.run({ ...rest, kind: body.kind, body: JSON.stringify(body) }).changes === 1;
  };

  return {
    due: (channel: ChannelName, now: number): OutgoingFact[] => due.all(channel, now).map(read),
    tally(): ChannelTally[] {
      const errors = new Map(lastErrors.all().map((one) => [one.channel, one]));
      return tally.all().map((row) => {
        const { text = null, told = null } = errors.get(row.channel) ?? {};
        return {
          ...{ ...row, lastError: text },
          lastErrorSaid: text === null ? null : readSaid(text, told),
        };
      });
    },
    /** Writes down who is to be told of a notice; what is held joins what is held already. */
    post(notice: NewNoticeFact, at: number, repeats: number, plan: PostingPlan): void {
      for (const { id, channel, entry, dueAt, held: isHeld } of postingsOf(
        notice,
        at,
        repeats,
        plan,
      )) {
        const known = isHeld ? untried.get(id) : undefined;
        if (known) {
          const body = JSON.parse(known.body) as OutgoingBody & { kind: 'notices' };
          body.entries.push(entry);
          rewrite.run(JSON.stringify(body), id);
          continue;
        }
        const message = { channel, createdAt: at, dueAt };
        const body = { kind: 'notices' as const, entries: [entry] };
        // A clock that was set back may find the message of its hour on its way already.
        if (!add({ id, ...message, body }) && isHeld) {
          add({ id: `${notice.id}.${repeats}.${id}`, ...message, body });
        }
      }
    },
    add,
    /** A notice that is over says so in what has not left yet. */
    noteCleared(noticeId: string, at: number): void {
      for (const message of held.all().map(read)) {
        if (message.body.kind !== 'notices') continue;
        const entries = message.body.entries.filter((entry) => entry.noticeId === noticeId);
        if (entries.length === 0) continue;
        for (const entry of entries) entry.clearedAt ??= at;
        rewrite.run(JSON.stringify(message.body), message.id);
      }
    },
    begin: (id: string): void => {
      begin.run(id);
    },
    sent: (id: string, at: number): void => {
      sent.run(at, id);
    },
    /** @param nextAt - when it is tried again; null gives it up */
    failed: (id: string, error: Said, at: number, nextAt: number | null): void => {
      failed.run({
        id,
        error: error.text,
        told: writtenTold(error),
        dueAt: nextAt,
        givenUpAt: nextAt === null ? at : null,
      });
    },
    prune: (before: number): void => {
      prune.run(before);
    },
  };
}
/** What a sender writes down of its messages; each verb is one transaction of its own. */
export function messageKeeper(db: Database, outgoing: OutgoingTable) {
  return {
    addMessages: (messages: Omit<OutgoingFact, 'tries'>[]): void => {
      db.transaction(() => {
        for (const message of messages) outgoing.add(message);
      }).immediate();
    },
    beginMessage: outgoing.begin,
    messageSent: outgoing.sent,
    messageFailed: outgoing.failed,
    pruneMessages: outgoing.prune,
  };
}
export type OutgoingTable = ReturnType<typeof outgoingTable>;
