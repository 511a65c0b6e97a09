import type { IngestLog } from './message-port.ts';

/** How often the same thing is told, ms: a storm of clients must not become one of lines on a card. */
const quietMs = 60_000;

/** Warns at once the first time, then at most once a minute, with how often it happened since. */
export function sparingLog(log: IngestLog) {
  const told = new Map<string, { at: number; since: number }>();
  return (text: string, facts: object = {}): void => {
    const now = performance.now();
    const last = told.get(text);
    if (last && now - last.at < quietMs) {
      last.since++;
      return;
    }
    log.warn({ ...facts, ...(last && last.since > 0 ? { alsoBefore: last.since } : {}) }, text);
    told.set(text, { at: now, since: 0 });
  };
}
