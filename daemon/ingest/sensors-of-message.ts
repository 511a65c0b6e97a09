import type { Decoded, Message } from '../../sensors/payload/decode-message.ts';
import { knownTopics } from './known-topics.ts';

/** Topics whose answer is remembered; then it starts anew. */
const mostTopics = 5000;
/** How often a topic of a rule is looked into where nothing hangs on it, ms. */
const lookAgainMs = 60_000;

export interface SensorsOfParts {
  site: string;
  /** What becomes of topics beside the default layout. */
  decode(message: Message, at: number): Decoded;
  /** UTC epoch ms. */
  now(): number;
}

/**
 * Whose readings a message carries: null where its topic is no sensor’s, none where nothing in it
 * can be read.
 *
 * @returns a function of topic and payload; told that it need not be exact, it looks into messages
 *   of topic rules once a minute only, and answers none in between
 */
export function sensorsOfMessage({ site, decode, now }: SensorsOfParts) {
  const topicOf = knownTopics(site);
  const known = new Map<string, readonly string[]>();
  const lookedAt = new Map<string, number>();
  const utf8 = new TextDecoder('utf-8', { fatal: true });

  function ofRule(topic: string, payload: Uint8Array): readonly string[] | null {
    let text: string | null = null;
    try {
      text = utf8.decode(payload);
    } catch {
      // No text: a rule may still read it.
    }
    const message = { topic, text, byteLength: payload.byteLength, bytes: payload };
    const decoded = decode(message, now());
    if (decoded.kind === 'not-ours') return null;
    if (decoded.kind === 'refused') return [];
    return [...new Set(decoded.readings.map(({ sensor }) => sensor))];
  }

  return (topic: string, payload: Uint8Array, exact: boolean): readonly string[] | null => {
    const before = known.get(topic);
    if (before) return before;
    const read = topicOf(topic);
    if (read.kind === 'not-ours') {
      if (exact) return ofRule(topic, payload);
      const at = now();
      if (at - (lookedAt.get(topic) ?? Number.NEGATIVE_INFINITY) < lookAgainMs) return [];
      if (lookedAt.size >= mostTopics) lookedAt.clear();
      lookedAt.set(topic, at);
      return ofRule(topic, payload);
    }
    const sensors = read.kind === 'address' ? [read.address.sensor] : [];
    if (known.size >= mostTopics) known.clear();
    known.set(topic, sensors);
    return sensors;
  };
}
