import type { Said } from '../contract/sentence.ts';
import { messageWords } from '../rules/message-words.ts';
import {
  type ChannelName,
  nextTryAt,
  type OutgoingFact,
  type RetryPolicy,
} from '../rules/outgoing.ts';
import { sentence } from '../wording/english.ts';
import { SaidError } from '../wording/said-error.ts';
import type { Voice } from '../wording/voice.ts';
import type { Channel } from './channel.ts';

/** What is kept of messages; each verb settles when it is on disk. */
export interface MessageKeeper {
  beginMessage(id: string): Promise<void>;
  messageSent(id: string, at: number): Promise<void>;
  messageFailed(id: string, error: Said, at: number, nextAt: number | null): Promise<void>;
}

export interface DeliveryParts {
  channels: readonly Channel[];
  due(channel: ChannelName, now: number): OutgoingFact[];
  keeper: MessageKeeper;
  policy: RetryPolicy;
  /** Speaks the site’s language. */
  voice: Voice;
  now: () => number;
  log: { warn(facts: object, text: string): void; error(facts: object, text: string): void };
}

/**
 * Takes messages out of the house, each channel in its own order. A message is marked as sent only
 * when the other side has taken it: after a crash in between it goes again under the same id, so
 * that nothing is lost and a receiver knows what it has already.
 */
export function deliverer(parts: DeliveryParts) {
  const { channels, due, keeper, policy, voice, now, log } = parts;
  const stop = new AbortController();
  const running = new Map<ChannelName, Promise<void>>();
  const again = new Set<ChannelName>();

  async function sendOne(channel: Channel, message: OutgoingFact): Promise<boolean> {
    await keeper.beginMessage(message.id);
    try {
      const outbound = { message, voice, ...messageWords(message.body, voice) };
      await channel.send(outbound, stop.signal);
    } catch (cause) {
      // Stopped by ourselves: it stays due and goes at the next start.
      if (stop.signal.aborted) return false;
      const error = reasonOf(cause);
      const at = now();
      const nextAt = nextTryAt({ ...message, tries: message.tries + 1 }, at, policy);
      await keeper.messageFailed(message.id, error, at, nextAt);
      const facts = { channel: channel.name, message: message.id, error: error.text };
      if (nextAt === null) log.error(facts, 'a message was given up');
      else log.warn(facts, 'a message did not arrive; it is tried again');
      return true;
    }
    await keeper.messageSent(message.id, now());
    return true;
  }

  async function round(channel: Channel): Promise<void> {
    do {
      again.delete(channel.name);
      for (const message of due(channel.name, now())) {
        if (stop.signal.aborted || !(await sendOne(channel, message))) return;
      }
    } while (again.has(channel.name));
  }

  return {
    /** Sends what is due. Settles when nothing that was due at its call is left untried. */
    async kick(): Promise<void> {
      await Promise.all(
        channels.map((channel) => {
          const known = running.get(channel.name);
          if (known) {
            again.add(channel.name);
            return known;
          }
          const started = round(channel)
            .catch((cause: unknown) =>
              log.error(
                { channel: channel.name, cause: String(cause) },
                'messages could not be sent',
              ),
            )
            .finally(() => running.delete(channel.name));
          running.set(channel.name, started);
          return started;
        }),
      );
    },
    async close(): Promise<void> {
      stop.abort();
      await Promise.all(running.values());
    },
  };
}

/** Why a message did not arrive; what another program says of it is quoted. */
function reasonOf(cause: unknown): Said {
  if (cause instanceof SaidError) return cause.said;
  const because = cause instanceof Error ? cause.message : String(cause);
  return sentence('delivery-failed', { because });
}
export type Deliverer = ReturnType<typeof deliverer>;
