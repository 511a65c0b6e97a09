import type { SpreadMoment } from '../../daemon/contract/plan-ahead.ts';
import type { Calendar } from '../format/calendar.ts';
import type { Node } from '../words/node.ts';

/** On which days something may fall, as they are shown; a catalogue says it as a sentence. */
export type Spread =
  /** Not within the calendar of the plan, a year. */
  | { readonly kind: 'never' }
  /** As likely as not later than that. */
  | { readonly kind: 'perhaps'; readonly early: Node }
  | { readonly kind: 'one-day'; readonly likely: Node }
  /** An end that is null is not within the calendar. */
  | {
      readonly kind: 'about';
      readonly early: Node;
      readonly likely: Node;
      readonly late: Node;
    };

/**
 * The days on which something may fall: early, likely and late are ends of one in ten each.
 *
 * @param shown - a moment as it is shown
 */
export function spreadOf(
  { early, likely, late }: SpreadMoment,
  calendar: Calendar,
  shown: (moment: string) => Node,
): Spread {
  const dayOf = (moment: string | null) => moment && calendar.date(Date.parse(moment));
  const show = (moment: string | null) => moment && shown(moment);
  if (likely === null) {
    return early === null ? { kind: 'never' } : { kind: 'perhaps', early: shown(early) };
  }
  return dayOf(early) === dayOf(late)
    ? { kind: 'one-day', likely: shown(likely) }
    : { kind: 'about', early: show(early), likely: shown(likely), late: show(late) };
}
