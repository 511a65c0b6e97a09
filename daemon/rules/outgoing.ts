import type { Told } from '../contract/sentence.ts';
import type { NewNoticeFact, NoticeFact } from './facts.ts';
import { noticeKinds } from './notice-kind.ts';
import { type QuietHours, quietUntil } from './quiet-hours.ts';

export type ChannelName = 'mqtt' | 'webhook' | 'mail';

/** Where notices go, and when people are to be spared. */
export interface PostingPlan {
  channels: readonly { name: ChannelName; heedsQuiet: boolean }[];
  quiet: QuietHours | null;
  /** IANA name */
  timeZone: string;
}

/** Nothing leaves the house. */
export const noPosting: PostingPlan = { channels: [], quiet: null, timeZone: 'UTC' };

/** One notice as it stands in a message. */
export interface OutgoingEntry {
  noticeId: string;
  event: 'raised' | 'repeated';
  kind: NoticeFact['kind'];
  subject: string;
  text: string;
  /** The sentence of the text, where it was kept. */
  told?: Told | null;
  at: number;
  /** When it was over, where that was before the message left; null while it is so. */
  clearedAt: number | null;
}

/** What a message holds: notices, or the digest of a morning. */
export type OutgoingBody =
  | { kind: 'notices'; entries: OutgoingEntry[] }
  | { kind: 'digest'; title: string; text: string };

/** A message on its way out, as kept. */
export interface OutgoingFact {
  /** The same at every try, so that a receiver knows what comes twice. */
  id: string;
  channel: ChannelName;
  body: OutgoingBody;
  createdAt: number;
  dueAt: number;
  tries: number;
}

/** A notice for one channel: at once, or held to be told with others at the end of the quiet hours. */
export interface Posting {
  id: string;
  channel: ChannelName;
  entry: OutgoingEntry;
  dueAt: number;
  held: boolean;
}

/**
 * What goes out when a notice is raised, or told again.
 *
 * @param repeats - how often it was told before
 */
export function postingsOf(
  notice: NewNoticeFact,
  at: number,
  repeats: number,
  plan: PostingPlan,
): Posting[] {
  const urgent = noticeKinds[notice.kind].ignoresQuiet;
  return plan.channels.map(({ name, heedsQuiet }) => {
    const until = urgent || !heedsQuiet ? null : quietUntil(at, plan.quiet, plan.timeZone);
    const own = repeats === 0 ? notice.id : `${notice.id}.${repeats}`;
    return {
      id: until === null ? `${own}.${name}` : `held-${new Date(until).toISOString()}.${name}`,
      channel: name,
      entry: {
        noticeId: notice.id,
        event: repeats === 0 ? 'raised' : 'repeated',
        kind: notice.kind,
        subject: notice.subject,
        text: notice.text,
        ...(notice.told ? { told: notice.told } : {}),
        at,
        clearedAt: null,
      },
      dueAt: until ?? at,
      held: until !== null,
    };
  });
}

/** How a message that did not arrive is tried again. */
export interface RetryPolicy {
  firstMs: number;
  longestMs: number;
  giveUpMs: number;
}

/**
 * When a message is tried again: twice as late each time.
 *
 * @param tries - how often it was tried, at least once
 * @returns UTC epoch ms; null when it is given up
 */
export function nextTryAt(
  message: Pick<OutgoingFact, 'tries' | 'createdAt'>,
  now: number,
  policy: RetryPolicy,
): number | null {
  if (now - message.createdAt >= policy.giveUpMs) return null;
  return now + Math.min(policy.longestMs, policy.firstMs * 2 ** Math.max(0, message.tries - 1));
}
