import type { Clock } from './clock.ts';
import type { DaemonLog } from './daemon-log.ts';
import type { AddedMore } from './ingest/group-commit.ts';
import type { KeptMessages } from './ingest/unreleased-messages.ts';
import type { OpenSite } from './open-site.ts';
import type { OpenMessage } from './rules/facts.ts';

interface Parts {
  reader: Pick<OpenSite['reader'], 'openMessages'>;
  /** Where they are let go of, after what came before. */
  queue: {
    add(
      readings: [],
      refused: [],
      done: (failure: Error | null) => void,
      more: Pick<AddedMore, 'released' | 'from'>,
    ): void;
  };
  clock: Pick<Clock, 'now' | 'monotonic'>;
  log: Pick<DaemonLog, 'warn'>;
}

/**
 * QoS 2 messages that were open when the daemon ended last. In a copy of another daemon’s database their
 * numbers are let go of: its senders know nothing of them.
 */
export function siteOpenMessages({ reader, queue, clock, log }: Parts): KeptMessages {
  const letGo = (messages: readonly OpenMessage[]) =>
    new Promise<void>((done, lost) => {
      const told = (failure: Error | null) => (failure ? lost(failure) : done());
      const released = messages.map(({ client, messageId }) => ({ client, messageId }));
      queue.add([], [], told, { released, from: messages[0]?.client });
    });
  const all = reader.openMessages();
  const foreign = all.filter(({ isOwn }) => !isOwn);
  if (foreign.length > 0) {
    log.warn(
      { messages: foreign.length },
      'the database is a copy of another: the numbers of QoS 2 messages that were open in it are let go of',
    );
    // What cannot be written now is no more heeded for it, and tried again at the next start.
    letGo(foreign).catch(() => {});
  }
  const kept = all
    .filter(({ isOwn }) => isOwn)
    .map(({ client, messageId, content, openedAt }) => ({
      ...{ client, messageId, content },
      openForMs: Math.max(0, clock.now() - openedAt),
    }));
  return { kept, letGo, upMs: clock.monotonic };
}
