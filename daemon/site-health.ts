import type { Said } from './contract/sentence.ts';
import type { HttpParts } from './http/ports.ts';
import type { IntakeCounts } from './ingest/intake.ts';
import type { MessagePort } from './ingest/message-port.ts';
import { sentence } from './wording/english.ts';

interface HealthParts {
  port: MessagePort;
  counts: IntakeCounts;
  /** Whether nothing can be acknowledged because the disk is full. */
  isFull: () => boolean;
  /** Settings that were changed in the file and wait for the next start. */
  restartFor: () => string[];
  /** What is amiss with the time, and with the database; none when all is well. */
  doubts: readonly (() => Said[])[];
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
    const reasonsSaid = [
      ...(refusing ? [sentence('disk-full', {})] : []),
      ...(connected ? [] : [sentence('broker-away', {})]),
      ...doubts.flatMap((tell) => tell()),
    ];
    return {
      status: reasonsSaid.length === 0 ? 'ok' : 'degraded',
      reasons: reasonsSaid.map(({ text }) => text),
      reasonsSaid,
      restartFor: restartFor(),
      broker: port.kind,
      connected,
      intake: { ...counts, refusing },
      clients: port.traffic(),
    };
  };
}
