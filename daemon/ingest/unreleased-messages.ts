import { createHash } from 'node:crypto';
import type { OpenMessage } from '../rules/facts.ts';
import type { Acknowledge } from './group-commit.ts';

/** A QoS 2 message of a client, by the number it gave it. */
export interface NumberedMessage {
  client: string;
  messageId: number;
  topic: string;
  payload: Uint8Array;
}

/** What is on disk of such messages, and how it is let go of. */
export interface KeptMessages {
  /** Those that were not released when the program ended, the oldest first, and for how long they were open. */
  kept: readonly (OpenMessage & { openForMs: number })[];
  /** Settles once they are no longer on disk; rejects where that could not be. */
  letGo(messages: readonly OpenMessage[]): Promise<void>;
  /** Milliseconds since a fixed moment; never goes back. */
  upMs(): number;
}

/**
 * For so long a number stands for the same message: over a weekend without power a node may still send it
 * again. Of one that is open longer its node is gone or has forgotten it, and gives the number to a
 * message that would be taken for the old one where both say the same. Assumption.
 */
export const longestOpenMs = 3 * 24 * 3_600_000;
/** So many messages are remembered; of more the oldest is forgotten. */
const mostRemembered = 5000;

interface Known extends OpenMessage {
  /** By `upMs`; negative where that was before its fixed moment. */
  openedUpMs: number;
  /** Those who wait until it is on disk; null once it is. */
  waiting: Acknowledge[] | null;
  /** It is on disk with its readings, or will be. */
  isKept: boolean;
}

/**
 * Remembers QoS 2 messages until their sender releases them, also over a lost connection, so that
 * one that is sent again is not taken twice: its sender may not have heard that it had arrived. What
 * would be stored twice is remembered on disk, and a release counts once it is there.
 *
 * **Source:** MQTT 3.1.1 (2014), section 4.3.3 (a number that was not released stands for the same
 * message) and 3.1.2.4 (a session without “clean” keeps such numbers). A node that has forgotten its
 * numbers begins anew with them: what has other content is another message, whatever its number.
 */
export function unreleasedMessages({ kept, letGo, upMs }: KeptMessages) {
  const keyOf = (client: string, messageId: number) => `${messageId} ${client}`;
  const startedUpMs = upMs();
  const known = new Map<string, Known>(
    kept.map(({ openForMs, ...one }) => [
      keyOf(one.client, one.messageId),
      { ...one, openedUpMs: startedUpMs - openForMs, waiting: null, isKept: true },
    ]),
  );

  const isOld = ({ openedUpMs }: Known) => upMs() - openedUpMs > longestOpenMs;

  /** What stays on disk is at worst let go of when its number comes again. */
  function forgetAll(messages: readonly Known[]): void {
    for (const { client, messageId } of messages) known.delete(keyOf(client, messageId));
    const onDisk = messages.filter(({ isKept }) => isKept);
    if (onDisk.length > 0) letGo(onDisk).catch(() => {});
  }

  /** The oldest come first. */
  function forgetOld(): void {
    const old: Known[] = [];
    for (const one of known.values()) {
      if (!isOld(one)) break;
      old.push(one);
    }
    forgetAll(old);
  }

  return {
    /**
     * Has a message taken, unless it was already.
     *
     * @param take - takes it, and tells when it is on disk or why it is not; what `keep` returns is to
     *   be written with it where it could be stored twice
     * @param told - `taken` is told of this, or `again` where it was taken before
     */
    once(
      message: NumberedMessage,
      take: (done: Acknowledge, keep: () => OpenMessage) => void,
      told: { taken: Acknowledge; again: Acknowledge },
    ): void {
      forgetOld();
      const { client, messageId } = message;
      const key = keyOf(client, messageId);
      const content = digest(message);
      const before = known.get(key);
      if (before?.content === content && !isOld(before)) {
        if (before.waiting) before.waiting.push(told.again);
        else told.again(null);
        return;
      }
      if (before) forgetAll([before]);
      const one: Known = {
        ...{ client, messageId, content },
        ...{ openedUpMs: upMs(), waiting: [], isKept: false },
      };
      known.set(key, one);
      const oldest = known.size > mostRemembered ? known.values().next().value : undefined;
      if (oldest) forgetAll([oldest]);
      const keep = () => {
        one.isKept = true;
        return { client, messageId, content };
      };
      take((failure) => {
        const others = one.waiting ?? [];
        one.waiting = null;
        if (failure && known.get(key) === one) known.delete(key);
        told.taken(failure);
        for (const done of others) done(failure);
      }, keep);
    },
    /**
     * Its sender knows that it has arrived; the number is free for another one.
     *
     * @returns settles once that is on disk; rejects where it could not be written
     */
    async released(client: string, messageId: number): Promise<void> {
      const key = keyOf(client, messageId);
      const one = known.get(key);
      if (one?.isKept) await letGo([one]);
      if (known.get(key) === one) known.delete(key);
    },
    /** A client that begins a clean session sends nothing again. */
    beginsAnew(client: string): void {
      forgetAll([...known.values()].filter((one) => one.client === client));
    },
  };
}

const digest = ({ topic, payload }: NumberedMessage): string =>
  createHash('sha256').update(topic).update('\0').update(payload).digest('base64');
