import type { Batch } from '../../daemon/contract/batch.ts';
import type { Words } from '../words/words.ts';
import type { Calendar } from './calendar.ts';
import { plainList } from './lists.ts';

/**
 * What was said of the timber, a few words a part; empty where nothing was.
 */
export function timberLine(
  { stateBefore, storedHow, support, knots, deliveredAt }: Batch['timber'],
  calendar: Calendar,
  { timber }: Words['trade'],
): string {
  const parts = [
    stateBefore && timber.before[stateBefore],
    deliveredAt && timber.delivered(calendar.exact(Date.parse(deliveredAt))),
    storedHow && timber.stored[storedHow],
    support && timber.support[support],
    knots && timber.knots[knots],
  ].filter((part) => part !== null);
  return plainList(parts);
}
