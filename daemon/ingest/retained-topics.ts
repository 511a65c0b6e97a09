/** Of all topics together. */
const mostBytes = 8 * 1_048_576;

/**
 * Counts what clients have the broker keep for later listeners: it keeps it in memory, for ever.
 *
 * @param most - topics
 */
export function retainedTopics(most: number) {
  const bytesOf = new Map<string, number>();
  let total = 0;
  return {
    /** Whether a retained message may be kept; an empty one clears its topic. */
    mayKeep(topic: string, payloadBytes: number): boolean {
      const before = bytesOf.get(topic);
      const isClearing = payloadBytes === 0;
      const bytes = isClearing ? 0 : topic.length + payloadBytes;
      const isNew = before === undefined && !isClearing;
      const after = total - (before ?? 0) + bytes;
      if ((isNew && bytesOf.size >= most) || after > mostBytes) return isClearing;
      total = after;
      if (isClearing) bytesOf.delete(topic);
      else bytesOf.set(topic, bytes);
      return true;
    },
  };
}
