import { type ReadTopic, readTopic } from '../../sensors/payload/topic.ts';

/** So many topics are remembered; then it starts anew, so that a flood of them fills no memory. */
const mostTopics = 4000;
/** A longer one is no sensor’s. */
const longestTopic = 200;

/** Reads topics, each once: a sensor publishes to the same ones all the time. */
export function knownTopics(site: string): (topic: string) => ReadTopic {
  const known = new Map<string, ReadTopic>();
  return (topic) => {
    const before = known.get(topic);
    if (before) return before;
    const read = readTopic(topic, site);
    if (topic.length > longestTopic) return read;
    if (known.size >= mostTopics) known.clear();
    known.set(topic, read);
    return read;
  };
}
