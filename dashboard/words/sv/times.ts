import type { Length, PartOfDay, Past, When } from '../../format/painters-time.ts';
import type { Expected } from '../../format/time-left.ts';
import type { times as English } from '../en/times.ts';
import { plural } from '../plural.ts';

const parts: Readonly<Record<PartOfDay, string>> = {
  early: 'tidigt',
  'before-lunch': 'förmiddag',
  'at-lunch': 'vid lunch',
  'after-lunch': 'eftermiddag',
  evening: 'kväll',
  night: 'natt',
};

const todayParts: Readonly<Record<PartOfDay, string>> = {
  early: 'tidigt i dag',
  'before-lunch': 'i förmiddag',
  'at-lunch': 'vid lunch i dag',
  'after-lunch': 'i eftermiddag',
  evening: 'i kväll',
  night: 'i natt',
};

const count = (number: number, one: string, other: string) =>
  plural('sv', number, { one: `# ${one}`, other: `# ${other}` });

/** “i morgon eftermiddag”, “på torsdag kväll”, “tidigt på torsdag”. */
function onDay(day: string, part: PartOfDay): string {
  return part === 'early' ? `tidigt ${day}` : `${day} ${parts[part]}`;
}

function when(moment: When): string {
  switch (moment.kind) {
    case 'now':
      return 'nu';
    case 'minutes':
      return moment.minutes < 10 ? 'om några minuter' : `om ${moment.minutes} minuter`;
    case 'about-an-hour':
      return 'om ungefär en timme';
    case 'date':
      return moment.date;
    case 'today':
      return todayParts[moment.part];
    case 'tomorrow':
      return onDay('i morgon', moment.part);
    case 'weekday':
      return onDay(`på ${moment.weekday}`, moment.part);
  }
}

function past(moment: Past): string {
  switch (moment.kind) {
    case 'just-now':
      return 'nyss';
    case 'minutes-ago':
      return `för ${count(moment.minutes, 'minut', 'minuter')} sedan`;
    case 'date':
      return moment.date;
    case 'today':
      return moment.part === 'before-lunch' ? 'i förmiddags' : todayParts[moment.part];
    case 'yesterday':
      return onDay('i går', moment.part);
    case 'weekday':
      return onDay(`i ${moment.weekday}s`, moment.part);
  }
}

function by(moment: When): string {
  return moment.kind === 'minutes' || moment.kind === 'about-an-hour'
    ? when(moment)
    : `senast ${when(moment)}`;
}

function length(span: Length): string {
  switch (span.kind) {
    case 'moment':
      return 'mindre än en minut';
    case 'minutes':
      return count(span.minutes, 'minut', 'minuter');
    case 'hours':
      return count(span.hours, 'timme', 'timmar');
    case 'days':
      return span.hours === 0
        ? count(span.days, 'dygn', 'dygn')
        : `${count(span.days, 'dygn', 'dygn')} ${count(span.hours, 'timme', 'timmar')}`;
  }
}

function likely(expected: Expected): string {
  switch (expected.kind) {
    case 'ready':
      return 'Nio av tio att det är klart';
    case 'held':
      return 'Härdat, men hindrat';
    case 'feel-now':
      return 'Värt att känna på nu';
    case 'about-now':
      return 'Troligen ungefär nu';
    case 'cannot-tell':
      return 'Kan inte säga när';
    case 'likely':
      return `Troligen ${when(expected.likely)}`;
  }
}

function doubt(expected: Expected): string | null {
  switch (expected.kind) {
    case 'ready':
      return 'Känn innan du går vidare.';
    case 'feel-now':
    case 'about-now':
      return expected.late === null || expected.late.kind === 'now'
        ? null
        : `nio av tio ${by(expected.late)}`;
    case 'likely':
      return window(expected.early, when(expected.likely), expected.late);
    default:
      return null;
  }
}

function window(early: When | null, middle: string, late: When | null): string | null {
  if (late === null) return null;
  if (early === null || early.kind === 'now') return `när som helst fram till ${when(late)}`;
  if (when(early) === when(late)) return when(early) === middle ? null : when(early);
  return `mellan ${when(early)} och ${when(late)}`;
}

export const times: typeof English = {
  when,
  past,
  exactHour: 'Visa det exakta klockslaget',
  by,
  length,
  ago: (span) => (span === null ? 'nyss' : `för ${length(span)} sedan`),
  likely,
  doubt,
  odds: {
    almostSurely: 'så gott som visst',
    nextToNone: 'så gott som ingen',
    lessThanOneInTen: 'mindre än 1 av 10',
    moreThanNineInTen: 'mer än 9 av 10',
    inTen: (tenths) => `${tenths} av 10`,
  },
};
