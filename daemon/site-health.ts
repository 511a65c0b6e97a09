import type { Clock } from './clock.ts';
import type { HttpParts } from './http/ports.ts';
import type { IntakeCounts } from './ingest/intake.ts';
import type { MessagePort } from './ingest/message-port.ts';

interface HealthParts {
  port: MessagePort;
  counts: IntakeCounts;
  clock: Clock;
}

/** How the daemon does, with a reason for everything that is not as it should be. */
export function siteHealth({ port, counts, clock }: HealthParts): HttpParts['health'] {
  return () => {
    const connected = port.connected();
    const reasons: string[] = [];
    if (!connected) reasons.push('The MQTT broker is out of reach; readings wait there.');
    if (!clock.trusted()) reasons.push('The computer’s clock has not been set.');
    return {
      status: reasons.length === 0 ? 'ok' : 'degraded',
      reasons,
      broker: port.kind,
      connected,
      intake: { ...counts },
    };
  };
}
