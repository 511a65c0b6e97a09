/** Bytes read at once from a connection while others wait for their turn. */
const fairBytes = 1024;

/**
 * Holds connections back while too many messages wait for the disk. Those held come back in the
 * order in which they were held, a little from each, so that a flood of one keeps nobody else
 * waiting for long.
 *
 * @param limit - messages, and bytes of theirs, that may be under way
 * @param resume - lets a connection read on
 */
export function readingGate<Connection>(
  limit: { messages: number; bytes: number },
  resume: (connection: Connection) => void,
) {
  let messages = 0;
  let bytes = 0;
  let waking = false;
  const held = new Set<Connection>();
  const shut = () => messages >= limit.messages || bytes >= limit.bytes;

  function wake(): void {
    waking = false;
    // Those that are held again meanwhile come after what else there is to do.
    for (const connection of [...held]) {
      if (shut()) return;
      held.delete(connection);
      resume(connection);
    }
  }

  function wakeSoon(): void {
    if (held.size === 0 || waking || shut()) return;
    waking = true;
    setImmediate(wake);
  }

  return {
    /** Bytes that a connection may read now; 0 when it is held until `resume`. */
    mayRead(connection: Connection): number {
      if (!shut()) return held.size > 0 ? fairBytes : Number.POSITIVE_INFINITY;
      held.add(connection);
      return 0;
    },
    begun(payloadBytes: number): void {
      messages++;
      bytes += payloadBytes;
    },
    done(payloadBytes: number): void {
      messages--;
      bytes -= payloadBytes;
      wakeSoon();
    },
    /** Lets a connection read on after those that are held. */
    later(connection: Connection): void {
      held.add(connection);
      wakeSoon();
    },
    forget: (connection: Connection) => held.delete(connection),
  };
}
