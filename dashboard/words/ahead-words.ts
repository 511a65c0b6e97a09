import type { LastStartReply, SpreadMoment } from '../../daemon/contract/plan-ahead.ts';
import type { Calendar } from '../format/calendar.ts';

/** “about Thu 14 May (early Tue 12 May, late Sat 16 May)”, or why there is no date. */
export function spreadWords({ early, likely, late }: SpreadMoment, calendar: Calendar): string {
  const day = (moment: string | null) =>
    moment === null ? 'not within a year' : calendar.date(Date.parse(moment));
  if (likely === null) {
    return early === null
      ? 'not within a year'
      : `perhaps ${day(early)}, as likely as not later than a year`;
  }
  if (day(early) === day(late)) return `on ${day(likely)}`;
  return `about ${day(likely)} (early ${day(early)}, late ${day(late)})`;
}

/** Whether a coat can still be begun before winter. */
export function lastStartWords(start: LastStartReply, calendar: Calendar): string {
  switch (start.answer) {
    case 'by':
      return `Begin by ${calendar.date(Date.parse(start.at ?? ''))}: then even a slow coat has cured before the cold.`;
    case 'not-this-year':
      return 'Not this year: even begun now, a slow coat would not cure before the cold. Wait for spring.';
    case 'no-limit':
      return 'No last day: it stays warm enough there all year.';
    case 'cannot-tell':
      return 'Cannot tell: the site has no record of that season there, and no monthly means were typed.';
  }
}
