import { entryText } from '../rules/message-words.ts';
import type { OutgoingEntry, OutgoingFact } from '../rules/outgoing.ts';
import type { Voice } from '../wording/voice.ts';

/** A message that is to go one way now. */
export interface Outbound {
  message: OutgoingFact;
  title: string;
  text: string;
  /** Speaks the site’s language. */
  voice: Voice;
}

/** One way out. `send` settles when the other side has taken the message, and rejects when not. */
export interface Channel {
  readonly name: OutgoingFact['channel'];
  /**
   * @param signal - given up when it fires
   * @throws SaidError, or an Error whose message may be shown to anyone: no secret, no address of a person
   */
  send(outbound: Outbound, signal: AbortSignal): Promise<void>;
}

/** One notice of a message as the outside sees it: in the site’s language, with what it tells. */
export function entryOut(entry: OutgoingEntry, voice: Voice) {
  const { told = null, ...rest } = entry;
  return {
    ...rest,
    text: entryText(entry, voice),
    ...(told ?? { code: entry.kind }),
    at: new Date(entry.at).toISOString(),
    clearedAt: entry.clearedAt === null ? null : new Date(entry.clearedAt).toISOString(),
  };
}
