import type { SpreadMoment } from '../../daemon/contract/plan-ahead.ts';
import type { Calendar } from '../format/calendar.ts';

/** On which days something may fall, as the reader writes them; a catalogue says it as a sentence. */
export type Spread =
  /** Not within the calendar of the plan, a year. */
  | { readonly kind: 'never' }
  /** As likely as not later than that. */
  | { readonly kind: 'perhaps'; readonly early: string }
  | { readonly kind: 'one-day'; readonly likely: string }
  /** An end that is null is not within the calendar. */
  | {
      readonly kind: 'about';
      readonly early: string | null;
      readonly likely: string;
      readonly late: string | null;
    };

/** The days on which something may fall: early, likely and late are ends of one in ten each. */
export function spreadOf(moments: SpreadMoment, calendar: Calendar): Spread {
  const day = (moment: string | null) =>
    moment === null ? null : calendar.date(Date.parse(moment));
  const early = day(moments.early);
  const likely = day(moments.likely);
  const late = day(moments.late);
  if (likely === null) return early === null ? { kind: 'never' } : { kind: 'perhaps', early };
  return early === late ? { kind: 'one-day', likely } : { kind: 'about', early, likely, late };
}
