import type { Length, PartOfDay, Past, When } from '../../format/painters-time.ts';
import type { Expected } from '../../format/time-left.ts';
import type { times as English } from '../en/times.ts';
import { plural } from '../plural.ts';

const parts: Readonly<Record<PartOfDay, string>> = {
  early: 'tidlig',
  'before-lunch': 'formiddag',
  'at-lunch': 'ved lunsjtid',
  'after-lunch': 'ettermiddag',
  evening: 'kveld',
  night: 'natt',
};

const todayParts: Readonly<Record<PartOfDay, string>> = {
  early: 'tidlig i dag',
  'before-lunch': 'i formiddag',
  'at-lunch': 'ved lunsjtid i dag',
  'after-lunch': 'i ettermiddag',
  evening: 'i kveld',
  night: 'i natt',
};

const count = (number: number, one: string, other: string) =>
  plural('nb', number, { one: `# ${one}`, other: `# ${other}` });

/** «i morgen ettermiddag», «på torsdag kveld», «tidlig på torsdag». */
function onDay(day: string, part: PartOfDay): string {
  return part === 'early' ? `tidlig ${day}` : `${day} ${parts[part]}`;
}

function when(moment: When): string {
  switch (moment.kind) {
    case 'now':
      return 'nå';
    case 'minutes':
      return moment.minutes < 10 ? 'om noen minutter' : `om ${moment.minutes} minutter`;
    case 'about-an-hour':
      return 'om omtrent en time';
    case 'date':
      return moment.date;
    case 'today':
      return todayParts[moment.part];
    case 'tomorrow':
      return onDay('i morgen', moment.part);
    case 'weekday':
      return onDay(`på ${moment.weekday}`, moment.part);
  }
}

function past(moment: Past): string {
  switch (moment.kind) {
    case 'just-now':
      return 'nettopp';
    case 'minutes-ago':
      return `for ${count(moment.minutes, 'minutt', 'minutter')} siden`;
    case 'date':
      return moment.date;
    case 'today':
      return todayParts[moment.part];
    case 'yesterday':
      return onDay('i går', moment.part);
    case 'weekday':
      return onDay(`sist ${moment.weekday}`, moment.part);
  }
}

function by(moment: When): string {
  return moment.kind === 'minutes' || moment.kind === 'about-an-hour'
    ? when(moment)
    : `senest ${when(moment)}`;
}

function length(span: Length): string {
  switch (span.kind) {
    case 'moment':
      return 'mindre enn ett minutt';
    case 'minutes':
      return count(span.minutes, 'minutt', 'minutter');
    case 'hours':
      return count(span.hours, 'time', 'timer');
    case 'days':
      return span.hours === 0
        ? count(span.days, 'døgn', 'døgn')
        : `${count(span.days, 'døgn', 'døgn')} ${count(span.hours, 'time', 'timer')}`;
  }
}

function likely(expected: Expected): string {
  switch (expected.kind) {
    case 'ready':
      return 'Ni av ti for at det er klart';
    case 'held':
      return 'Herdet, men hindret';
    case 'feel-now':
      return 'Verdt å kjenne på nå';
    case 'about-now':
      return 'Trolig omtrent nå';
    case 'cannot-tell':
      return 'Kan ikke si når';
    case 'likely':
      return `Trolig ${when(expected.likely)}`;
  }
}

function doubt(expected: Expected): string | null {
  switch (expected.kind) {
    case 'ready':
      return 'Kjenn etter før du går videre.';
    case 'feel-now':
    case 'about-now':
      return expected.late === null || expected.late.kind === 'now'
        ? null
        : `ni av ti ${by(expected.late)}`;
    case 'likely':
      return window(expected.early, when(expected.likely), expected.late);
    default:
      return null;
  }
}

function window(early: When | null, middle: string, late: When | null): string | null {
  if (late === null) return null;
  if (early === null || early.kind === 'now') return `når som helst frem til ${when(late)}`;
  if (when(early) === when(late)) return when(early) === middle ? null : when(early);
  return `mellom ${when(early)} og ${when(late)}`;
}

export const times: typeof English = {
  when,
  past,
  exactHour: 'Vis nøyaktig klokkeslett',
  by,
  length,
  ago: (span) => (span === null ? 'nettopp' : `for ${length(span)} siden`),
  likely,
  doubt,
  odds: {
    almostSurely: 'så godt som visst',
    nextToNone: 'så godt som ingen',
    lessThanOneInTen: 'mindre enn 1 av 10',
    moreThanNineInTen: 'mer enn 9 av 10',
    inTen: (tenths) => `${tenths} av 10`,
  },
};
