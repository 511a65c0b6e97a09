import type { Length, PartOfDay, Past, When } from '../../format/painters-time.ts';
import type { Expected } from '../../format/time-left.ts';
import { plural } from '../plural.ts';

const parts = {
  early: 'early',
  'before-lunch': 'before lunch',
  'at-lunch': 'at lunch',
  'after-lunch': 'after lunch',
  evening: 'evening',
  night: 'night',
} as const satisfies Record<PartOfDay, string>;

const count = (number: number, one: string, other: string) =>
  plural('en', number, { one: `# ${one}`, other: `# ${other}` });

/** “tomorrow after lunch”, as it stands alone or after “Likely”. */
function when(moment: When): string {
  switch (moment.kind) {
    case 'now':
      return 'now';
    case 'minutes':
      return moment.minutes < 10 ? 'in a few minutes' : `in ${moment.minutes} minutes`;
    case 'about-an-hour':
      return 'in about an hour';
    case 'date':
      return `on ${moment.date}`;
    case 'today':
      if (moment.part === 'night') return 'tonight';
      if (moment.part === 'evening') return 'this evening';
      return moment.part === 'early' ? 'early today' : `today ${parts[moment.part]}`;
    case 'tomorrow':
      return onDay('tomorrow', moment.part);
    case 'weekday':
      return onDay(moment.weekday, moment.part);
  }
}

function onDay(day: string, part: PartOfDay): string {
  return part === 'early' ? `early ${day}` : `${day} ${parts[part]}`;
}

/** “yesterday after lunch”, as it stands alone or after “Last board”. */
function past(moment: Past): string {
  switch (moment.kind) {
    case 'just-now':
      return 'just now';
    case 'minutes-ago':
      return `${count(moment.minutes, 'minute', 'minutes')} ago`;
    case 'date':
      return moment.date;
    case 'today':
      if (moment.part === 'night') return 'tonight';
      if (moment.part === 'evening') return 'this evening';
      return moment.part === 'early' ? 'early today' : `today ${parts[moment.part]}`;
    case 'yesterday':
      return moment.part === 'night' ? 'last night' : onDay('yesterday', moment.part);
    case 'weekday':
      return onDay(moment.weekday, moment.part);
  }
}

/** After “nine in ten”: “by tomorrow after lunch”, “in about an hour”. */
function by(moment: When): string {
  if (moment.kind === 'minutes' || moment.kind === 'about-an-hour') return when(moment);
  return moment.kind === 'date' ? `by ${moment.date}` : `by ${when(moment)}`;
}

function length(span: Length): string {
  switch (span.kind) {
    case 'moment':
      return 'less than a minute';
    case 'minutes':
      return count(span.minutes, 'minute', 'minutes');
    case 'hours':
      return count(span.hours, 'hour', 'hours');
    case 'days':
      return span.hours === 0
        ? count(span.days, 'day', 'days')
        : `${count(span.days, 'day', 'days')} ${count(span.hours, 'hour', 'hours')}`;
  }
}

/** The main line: “Likely tomorrow after lunch”. */
function likely(expected: Expected): string {
  switch (expected.kind) {
    case 'ready':
      return 'Nine in ten it is there';
    case 'held':
      return 'Cured, but held';
    case 'feel-now':
      return 'Worth feeling now';
    case 'about-now':
      return 'Likely about now';
    case 'cannot-tell':
      return 'Can’t tell when';
    case 'likely':
      return `Likely ${when(expected.likely)}`;
  }
}

/** The doubt around it: “between this evening and Friday before lunch”; null without any. */
function doubt(expected: Expected): string | null {
  switch (expected.kind) {
    case 'ready':
      return 'Feel it before you go on.';
    case 'feel-now':
    case 'about-now':
      return expected.late === null || expected.late.kind === 'now'
        ? null
        : `nine in ten ${by(expected.late)}`;
    case 'likely':
      return window(expected.early, when(expected.likely), expected.late);
    default:
      return null;
  }
}

function window(early: When | null, middle: string, late: When | null): string | null {
  if (late === null) return null;
  if (early === null || early.kind === 'now') return `any time until ${when(late)}`;
  if (when(early) === when(late)) return when(early) === middle ? null : when(early);
  return `between ${when(early)} and ${when(late)}`;
}

/** Moments and lengths of time in a painter’s words. */
export const times = {
  when,
  past,
  /** What a tap on a moment does. */
  exactHour: 'Show the exact hour',
  by,
  length,
  ago: (span: Length | null) => (span === null ? 'just now' : `${length(span)} ago`),
  likely,
  doubt,
  /** A probability in words that do not pretend to be exact. */
  odds: {
    almostSurely: 'almost surely',
    nextToNone: 'next to none',
    lessThanOneInTen: 'less than 1 in 10',
    moreThanNineInTen: 'more than 9 in 10',
    inTen: (tenths: number) => `${tenths} in 10`,
  },
};
