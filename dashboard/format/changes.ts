import type { Batch } from '../../daemon/contract/batch.ts';
import type { GateChange } from '../../daemon/contract/coat.ts';
import type { Words } from '../words/words.ts';
import type { Calendar } from './calendar.ts';
import { whenOf } from './painters-time.ts';

type Said = Pick<Words, 'jobs' | 'signs' | 'times' | 'trade'>;

/** What a touch test changed about one job, as one would say it across the rack. */
export function changeLine(
  change: GateChange,
  now: number,
  calendar: Calendar,
  { jobs, signs, times, trade }: Said,
): string {
  const { gate, before, after } = change;
  const { noun, infinitive } = jobs[gate];
  const words = trade.change;
  const when = (at: string) => times.when(whenOf(Date.parse(at), now, calendar));
  if (before.verdict !== after.verdict) {
    const was = signs[before.verdict].spoken;
    const is = signs[after.verdict].spoken;
    return after.verdict === 'ready' || after.likely === null
      ? words.verdict(noun, was, is)
      : words.verdictLikely(noun, was, is, when(after.likely));
  }
  if (before.likely !== null && after.likely !== null) {
    const was = when(before.likely);
    const is = when(after.likely);
    if (was !== is) return words.moved(infinitive, was, is);
  }
  const was = Math.round(before.probability * 10);
  const is = Math.round(after.probability * 10);
  if (was !== is) return words.chance(infinitive, String(was), String(is));
  return before.probability < after.probability
    ? words.likelier(infinitive)
    : words.lessLikely(infinitive);
}

/** Where boards lie and since when: “… at North rack since Tuesday.”, with the date when long ago. */
export function liesLine(
  { placeName, since }: Batch['lies'],
  now: number,
  calendar: Calendar,
  { trade: { lies } }: Pick<Words, 'trade'>,
): string {
  if (since === null) return lies.fromTheStart(placeName);
  const at = Date.parse(since);
  const days = calendar.at(now).day - calendar.at(at).day;
  if (days === 0) return lies.today(placeName);
  if (days === 1) return lies.yesterday(placeName);
  return lies.since(placeName, days < 7 ? calendar.at(at).weekday : calendar.date(at));
}
