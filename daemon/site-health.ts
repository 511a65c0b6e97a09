import type { HttpParts } from './http/ports.ts';
import type { IntakeCounts } from './ingest/intake.ts';
import type { MessagePort } from './ingest/message-port.ts';

interface HealthParts {
  port: MessagePort;
  counts: IntakeCounts;
  /** Whether nothing can be acknowledged because the disk is full. */
  isFull: () => boolean;
  /** Settings that were changed in the file and wait for the next start. */
  restartFor: () => string[];
  /** What is amiss with the time, and with the database; none when all is well. */
  doubts: readonly (() => string[])[];
}

/** How the daemon does, with a reason for everything that is not as it should be. */
export function siteHealth({
  port,
  counts,
  isFull,
  restartFor,
  doubts,
}: HealthParts): HttpParts['health'] {
  return () => {
    const connected = port.connected();
    const refusing = isFull();
    const reasons = doubts.flatMap((tell) => tell());
    if (!connected) reasons.unshift('The MQTT broker is out of reach; readings wait there.');
    if (refusing) {
      reasons.unshift(
        'The disk is full: readings are not acknowledged, so that sensors keep them. Free some space; recording goes on by itself.',
      );
    }
    return {
      status: reasons.length === 0 ? 'ok' : 'degraded',
      reasons,
      restartFor: restartFor(),
      broker: port.kind,
      connected,
      intake: { ...counts, refusing },
      clients: port.traffic(),
    };
  };
}
