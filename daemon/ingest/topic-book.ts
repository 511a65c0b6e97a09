/** A message as it came, its payload perhaps cut. */
export interface HeardBytes {
  /** UTC epoch ms of its arrival. */
  at: number;
  payload: Uint8Array;
  /** Of the whole payload. */
  bytes: number;
  /** The broker kept it: it may be old. */
  retained: boolean;
}

export interface HeardTopic {
  topic: string;
  /** Messages that were sent just then; those the broker kept do not count. */
  count: number;
  firstAt: number;
  /** The last few, the newest last; never empty. */
  messages: HeardBytes[];
}

/** Enough to see what changes from one message to the next. Assumption. */
const messagesKept = 5;
/** A longer topic is not remembered; the protocol allows 65,535 bytes. Assumption. */
const longestTopic = 256;
/** A topic that was silent this long makes room for a new one, ms. Assumption. */
const silentMs = 3_600_000;

/**
 * Remembers the last messages of topics, in memory and within bounds: `maxTopics` × 5 × `maxBytes`.
 *
 * Who makes up topics without end must not push out a sensor: what was heard once only goes first,
 * then what was silent for an hour; beyond that a new topic is left out, and counted.
 */
export function topicBook({ maxTopics, maxBytes }: { maxTopics: number; maxBytes: number }) {
  /** Heard once, and more often; each with the longest silent first. */
  const once = new Map<string, HeardTopic>();
  const again = new Map<string, HeardTopic>();
  let leftOut = 0;

  function room(at: number): boolean {
    if (once.size + again.size < maxTopics) return true;
    const [first] = once.keys();
    if (first !== undefined) return once.delete(first);
    const [oldest] = again.values();
    const lastAt = oldest?.messages.at(-1)?.at;
    if (oldest === undefined || lastAt === undefined || at - lastAt < silentMs) return false;
    return again.delete(oldest.topic);
  }

  return {
    note(topic: string, payload: Uint8Array, at: number, retained: boolean): void {
      if (maxTopics === 0) return;
      const heard = again.get(topic) ?? once.get(topic);
      // The broker sends what it keeps at every new subscription.
      if (retained && heard !== undefined) return;
      const message: HeardBytes = {
        at,
        // A copy: a view would keep the whole packet in memory.
        payload: new Uint8Array(payload.subarray(0, maxBytes)),
        bytes: payload.byteLength,
        retained,
      };
      if (heard !== undefined) {
        heard.count++;
        heard.messages.push(message);
        if (heard.messages.length > messagesKept) heard.messages.shift();
        once.delete(topic);
        again.delete(topic);
        again.set(topic, heard);
        return;
      }
      if (topic.length > longestTopic || !room(at)) {
        leftOut++;
        return;
      }
      once.set(topic, { topic, count: retained ? 0 : 1, firstAt: at, messages: [message] });
    },
    forget(topic: string): void {
      once.delete(topic);
      again.delete(topic);
    },
    /** The last heard first. */
    topics: (): HeardTopic[] =>
      [...once.values(), ...again.values()].sort(
        (a, b) => (b.messages.at(-1)?.at ?? 0) - (a.messages.at(-1)?.at ?? 0),
      ),
    /** Messages of topics that there was no room for. */
    leftOut: (): number => leftOut,
  };
}
export type TopicBook = ReturnType<typeof topicBook>;
