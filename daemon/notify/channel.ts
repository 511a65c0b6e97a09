import type { OutgoingFact } from '../rules/outgoing.ts';

/** A message that is to go one way now. */
export interface Outbound {
  message: OutgoingFact;
  title: string;
  text: string;
}

/** One way out. `send` settles when the other side has taken the message, and rejects when not. */
export interface Channel {
  readonly name: OutgoingFact['channel'];
  /**
   * @param signal - given up when it fires
   * @throws Error whose message may be shown to anyone: no secret, no address of a person
   */
  send(outbound: Outbound, signal: AbortSignal): Promise<void>;
}

/** One notice of a message as the outside sees it. */
export const entryOut = <T extends { at: number; clearedAt: number | null }>(entry: T) => ({
  ...entry,
  at: new Date(entry.at).toISOString(),
  clearedAt: entry.clearedAt === null ? null : new Date(entry.clearedAt).toISOString(),
});
