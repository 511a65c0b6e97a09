import type { LastStartReply } from '../../daemon/contract/plan-ahead.ts';
import type { Calendar } from '../format/calendar.ts';
import type { RestWords } from '../words/words.ts';

/** Whether a coat can still be begun before winter, as a sentence. */
export function lastStartLine(
  start: Pick<LastStartReply, 'answer' | 'at'>,
  winter: RestWords['ahead']['winter'],
  calendar: Calendar,
): string {
  switch (start.answer) {
    case 'by':
      return start.at === null ? winter.cannotTell : winter.by(calendar.date(Date.parse(start.at)));
    case 'not-this-year':
      return winter.notThisYear;
    case 'no-limit':
      return winter.noLimit;
    case 'cannot-tell':
      return winter.cannotTell;
  }
}
