import type { Aedes, AedesPublishPacket, Client } from 'aedes';

/** So many topics are remembered; then it starts anew, so that a flood of them fills no memory. */
const mostTopics = 4000;
/** A longer one is not worth remembering. */
const longestTopic = 200;

/** What the broker publishes of itself comes without a client. */
type Publish = (
  packet: AedesPublishPacket,
  client: Client | (() => void),
  done?: () => void,
) => void;

/**
 * Keeps from the broker what it would pass on to nobody: most readings are heard by no client, and
 * looking for one costs about as much as taking the reading in. What is to be kept for later listeners
 * goes its usual way.
 */
export function passOnToListeners(broker: Aedes) {
  const passOn = broker.publish.bind(broker) as unknown as Publish;
  const filters = new Map<Client, Set<string>>();
  const known = new Map<string, boolean>();

  /** Somebody may listen to it, or the broker has to refuse it. */
  function concernsBroker(topic: string): boolean {
    const before = known.get(topic);
    if (before !== undefined) return before;
    const levels = topic.split('/');
    let heard = !mayPublishTo(levels);
    for (const all of filters.values()) {
      for (const filter of all) heard ||= filterMatches(filter, levels);
    }
    if (topic.length > longestTopic) return heard;
    if (known.size >= mostTopics) known.clear();
    known.set(topic, heard);
    return heard;
  }

  const publish: Publish = (packet, client, done) => {
    const isOfClient = done !== undefined && typeof client === 'object' && client !== null;
    if (!isOfClient || packet.retain || concernsBroker(packet.topic)) passOn(packet, client, done);
    else done();
  };
  broker.publish = publish as unknown as typeof broker.publish;

  return {
    /** Whether the broker would have anything to do with a message that is not to be kept. */
    concernsBroker,
    /** To be told before a client listens. */
    listens(client: Client, filter: string): void {
      const all = filters.get(client) ?? new Set();
      filters.set(client, all.add(filter));
      known.clear();
    },
    /** To be told of a client that is gone. */
    gone(client: Client): void {
      if (filters.delete(client)) known.clear();
    },
  };
}

/** More levels the broker refuses. */
const mostLevels = 100;

/** **Source:** MQTT 3.1.1 (2014), section 4.7.1: no wildcard is part of a topic’s name. */
const mayPublishTo = (levels: readonly string[]): boolean =>
  levels.length <= mostLevels &&
  !levels.some((level) => level.includes('+') || level.includes('#'));

/**
 * Whether a topic may be meant by a filter.
 *
 * **Source:** MQTT 3.1.1 (2014), section 4.7.1; that wildcards leave out topics under `$` is left to
 * the broker.
 *
 * @param levels - of the topic
 */
export function filterMatches(filter: string, levels: readonly string[]): boolean {
  const wanted = filter.split('/');
  for (const [i, level] of wanted.entries()) {
    if (level === '#') return true;
    if (i >= levels.length || (level !== '+' && level !== levels[i])) return false;
  }
  return wanted.length === levels.length;
}
