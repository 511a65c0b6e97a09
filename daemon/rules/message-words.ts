import type { NoticeFact } from './facts.ts';
import { clockWords, localTime } from './local-time.ts';
import { noticeKinds } from './notice-kind.ts';
import type { OutgoingBody, OutgoingEntry } from './outgoing.ts';

/** A message as people read it. */
export interface MessageWords {
  title: string;
  text: string;
}

const headline = (kind: NoticeFact['kind']) => noticeKinds[kind].headline;

/**
 * A message in words: one notice by itself, several under one head, or the digest as it was written.
 *
 * @param timeZone - IANA name, for the times in it
 */
export function messageWords(body: OutgoingBody, timeZone: string): MessageWords {
  if (body.kind === 'digest') return { title: body.title, text: body.text };
  const { entries } = body;
  const [first] = entries;
  if (!first) return { title: 'Nothing to tell', text: '' };
  if (entries.length === 1) {
    const again = first.event === 'repeated' ? ', told again' : '';
    return { title: `${headline(first.kind)}${again}`, text: entryWords(first, timeZone) };
  }
  return {
    title: `${entries.length} notices that were held back over the quiet hours`,
    text: entries.map((entry) => `- ${entryWords(entry, timeZone)}`).join('\n'),
  };
}

function entryWords({ text, at, clearedAt }: OutgoingEntry, timeZone: string): string {
  const when = `${localTime(at, timeZone).day} ${clockWords(at, timeZone)}`;
  const over = clearedAt === null ? '' : `, over since ${clockWords(clearedAt, timeZone)}`;
  return `${text} (${when}${over})`;
}
