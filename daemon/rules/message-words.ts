import { sentence } from '../wording/english.ts';
import { inner, told } from '../wording/sentence.ts';
import type { Voice } from '../wording/voice.ts';
import type { OutgoingBody, OutgoingEntry } from './outgoing.ts';

/** A message as people read it. */
export interface MessageWords {
  title: string;
  text: string;
}

/** The sentence of an entry in the site’s language; as it was written where it was kept as text alone. */
export const entryText = ({ kind, text, told = null }: OutgoingEntry, voice: Voice): string =>
  voice({ ...(told ?? { code: kind }), text });

/**
 * A message in words: one notice by itself, several under one head, or the digest as it was written.
 *
 * @param voice - speaks the site’s language
 */
export function messageWords(body: OutgoingBody, voice: Voice): MessageWords {
  if (body.kind === 'digest') return { title: body.title, text: body.text };
  const { entries } = body;
  const [first] = entries;
  if (!first) return { title: voice(told('message-title/nothing', {})), text: '' };
  const words = entries.map((entry) => entryWords(entry, voice));
  if (entries.length > 1) {
    return {
      title: voice(told('message-title/held-back', { notices: entries.length })),
      text: words.map((one) => `- ${one}`).join('\n'),
    };
  }
  const title = inner(sentence(`notice-title/${first.kind}`, {}));
  const again = first.event === 'repeated';
  return { title: voice(told('message-title', { title, again })), text: words.join('') };
}

function entryWords(entry: OutgoingEntry, voice: Voice): string {
  const { at, clearedAt } = entry;
  const text = entryText(entry, voice);
  return clearedAt === null
    ? voice(told('message-entry', { text, at }))
    : voice(told('message-entry/over', { text, at, overAt: clearedAt }));
}
