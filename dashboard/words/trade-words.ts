import type { Batch } from '../../daemon/contract/batch.ts';
import type { GateChange } from '../../daemon/contract/coat.ts';
import type { Tin } from '../../daemon/contract/tin.ts';
import type { Calendar } from '../format/calendar.ts';
import { whenWords } from '../format/painters-time.ts';
import { jobs } from './job-words.ts';
import { signs } from './verdict-words.ts';

type Timber = Batch['timber'];
type Known<T> = NonNullable<T>;

export const stateBeforeWords: Readonly<Record<Known<Timber['stateBefore']>, string>> = {
  new: 'New',
  weathered: 'Weathered grey',
  painted: 'Painted before',
  unknown: 'Nobody knows',
};

export const storedWords: Readonly<Record<Known<Timber['storedHow']>, string>> = {
  indoors: 'Indoors',
  'under-roof': 'Under a roof',
  wrapped: 'Wrapped',
  'bare-outdoors': 'Bare outdoors',
};

export const supportWords: Readonly<Record<Known<Timber['support']>, string>> = {
  points: 'On points',
  hung: 'Hung',
  stickers: 'On stickers, to turn',
};

export const knotsWords: Readonly<Record<Known<Timber['knots']>, string>> = {
  'not-looked': 'Not looked yet',
  few: 'Few knots',
  many: 'Many knots',
  resinous: 'Resin runs',
};

/** What was said of the timber, as one sentence; empty where nothing was. */
export function timberWords(timber: Timber, calendar: Calendar): string {
  const { stateBefore, storedHow, support, knots, deliveredAt } = timber;
  const said = [
    stateBefore === 'unknown'
      ? 'Nobody knows what was on it before'
      : stateBefore && stateBeforeWords[stateBefore],
    deliveredAt && `delivered ${calendar.exact(Date.parse(deliveredAt))}`,
    storedHow && `stored ${storedWords[storedHow].toLowerCase()}`,
    support && supportWords[support].toLowerCase(),
    knots && (knots === 'not-looked' ? 'knots not looked at' : knotsWords[knots].toLowerCase()),
  ].filter((part) => part !== null);
  const [first = '', ...rest] = said;
  return said.length === 0
    ? ''
    : `${[first.charAt(0).toUpperCase() + first.slice(1), ...rest].join(', ')}.`;
}

export const tinKindWords: Readonly<Record<Tin['kind'], string>> = {
  paint: 'Paint',
  primer: 'Primer',
  oil: 'Raw linseed oil',
  turpentine: 'Turpentine',
};

export const driersWords: Readonly<Record<Tin['driers'], string>> = {
  unknown: 'Not known',
  'as-sold': 'As sold',
  added: 'Some added',
  poor: 'Poor in driers',
};

/** What a touch test changed about one job, as one would say it across the rack. */
export function changeWords(change: GateChange, now: number, calendar: Calendar): string {
  const { gate, before, after } = change;
  const job = jobs[gate];
  if (before.verdict !== after.verdict) {
    const [was, is] = [signs[before.verdict].spoken, signs[after.verdict].spoken];
    const when =
      after.verdict === 'ready' || after.likely === null
        ? ''
        : `, likely ${whenWords(Date.parse(after.likely), now, calendar)}`;
    return `${capital(job.noun)}: “${was}” became “${is}”${when}.`;
  }
  if (before.likely !== null && after.likely !== null) {
    const [was, is] = [before.likely, after.likely].map((at) =>
      whenWords(Date.parse(at), now, calendar),
    );
    if (was !== is) return `Ready ${job.infinitive} moved from ${was} to ${is}.`;
  }
  const [was, is] = [before.probability, after.probability].map((p) => Math.round(p * 10));
  return was === is
    ? `Ready ${job.infinitive}: a little ${before.probability < after.probability ? 'likelier' : 'less likely'} than before.`
    : `Ready ${job.infinitive}: the chance went from ${was} to ${is} in 10.`;
}

/** “on North rack since Tuesday”, with the day when it is long ago. */
export function liesWords(lies: Batch['lies'], now: number, calendar: Calendar): string {
  const { placeName, since } = lies;
  if (since === null) return `at ${placeName} from the start`;
  const at = Date.parse(since);
  const days = calendar.at(now).day - calendar.at(at).day;
  if (days === 0) return `at ${placeName} since today`;
  if (days === 1) return `at ${placeName} since yesterday`;
  if (days < 7) return `at ${placeName} since ${calendar.at(at).weekday}`;
  return `at ${placeName} since ${calendar.date(at)}`;
}

const capital = (word: string) => word.charAt(0).toUpperCase() + word.slice(1);
