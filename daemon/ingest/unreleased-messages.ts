import { createHash } from 'node:crypto';
import type { Acknowledge } from './group-commit.ts';

/** A QoS 2 message of a client, by the number it gave it. */
export interface NumberedMessage {
  client: string;
  messageId: number;
  topic: string;
  payload: Uint8Array;
}

/** So many messages are remembered; of more the oldest is forgotten. */
const mostRemembered = 5000;

interface Known {
  content: string;
  /** Those who wait until it is on disk; null once it is. */
  waiting: Acknowledge[] | null;
}

/**
 * Remembers QoS 2 messages until their sender releases them, also over a lost connection, so that
 * one that is sent again is not taken twice: its sender may not have heard that it had arrived.
 *
 * **Source:** MQTT 3.1.1 (2014), section 4.3.3 (a number that was not released stands for the same
 * message) and 3.1.2.4 (a session without “clean” keeps such numbers). A node that has forgotten its
 * numbers begins anew with them: what has other content is another message, whatever its number.
 */
export function unreleasedMessages() {
  const known = new Map<string, Known>();
  const keyOf = (client: string, messageId: number) => `${messageId} ${client}`;

  return {
    /**
     * Has a message taken, unless it was already.
     *
     * @param take - takes it, and tells when it is on disk or why it is not
     * @param told - `taken` is told of this, or `again` where it was taken before
     */
    once(
      message: NumberedMessage,
      take: (done: Acknowledge) => void,
      told: { taken: Acknowledge; again: Acknowledge },
    ): void {
      const key = keyOf(message.client, message.messageId);
      const content = digest(message);
      const before = known.get(key);
      if (before?.content === content) {
        if (before.waiting) before.waiting.push(told.again);
        else told.again(null);
        return;
      }
      const one: Known = { content, waiting: [] };
      known.delete(key);
      known.set(key, one);
      const oldest = known.size > mostRemembered ? known.keys().next().value : undefined;
      if (oldest !== undefined) known.delete(oldest);
      take((failure) => {
        const others = one.waiting ?? [];
        one.waiting = null;
        if (failure && known.get(key) === one) known.delete(key);
        told.taken(failure);
        for (const done of others) done(failure);
      });
    },
    /** Its sender knows that it has arrived; the number is free for another one. */
    released: (client: string, messageId: number): void => {
      known.delete(keyOf(client, messageId));
    },
    /** A client that begins a clean session sends nothing again. */
    beginsAnew(client: string): void {
      for (const key of known.keys()) {
        if (key.slice(key.indexOf(' ') + 1) === client) known.delete(key);
      }
    },
  };
}

const digest = ({ topic, payload }: NumberedMessage): string =>
  createHash('sha256').update(topic).update('\0').update(payload).digest('base64');
