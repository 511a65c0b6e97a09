import type { Length, PartOfDay, Past, When } from '../../format/painters-time.ts';
import type { Expected } from '../../format/time-left.ts';
import type { times as English } from '../en/times.ts';
import { plural } from '../plural.ts';

/** After “heute”, “morgen”, “gestern”. */
const parts: Readonly<Record<PartOfDay, string>> = {
  early: 'früh',
  'before-lunch': 'Vormittag',
  'at-lunch': 'Mittag',
  'after-lunch': 'Nachmittag',
  evening: 'Abend',
  night: 'Nacht',
};

const count = (number: number, one: string, other: string) =>
  plural('de', number, { one: `# ${one}`, other: `# ${other}` });

/** “Donnerstagnachmittag”, “Donnerstag früh”. */
function weekdayPart(weekday: string, part: PartOfDay): string {
  return part === 'early' ? `${weekday} früh` : `${weekday}${parts[part].toLowerCase()}`;
}

function onWeekday(weekday: string, part: PartOfDay): string {
  return `${part === 'night' ? 'in der' : 'am'} ${weekdayPart(weekday, part)}`;
}

/** „morgen Nachmittag“, „am Donnerstagnachmittag“. */
function when(moment: When): string {
  switch (moment.kind) {
    case 'date':
      return `am ${moment.date}`;
    case 'weekday':
      return onWeekday(moment.weekday, moment.part);
    default:
      return bare(moment);
  }
}

/** The same without “am”, as after “bis”. */
function bare(moment: When): string {
  switch (moment.kind) {
    case 'now':
      return 'jetzt';
    case 'minutes':
      return moment.minutes < 10 ? 'in wenigen Minuten' : `in ${moment.minutes} Minuten`;
    case 'about-an-hour':
      return 'in etwa einer Stunde';
    case 'date':
      return moment.date;
    case 'today':
      return `heute ${parts[moment.part]}`;
    case 'tomorrow':
      return `morgen ${parts[moment.part]}`;
    case 'weekday':
      return weekdayPart(moment.weekday, moment.part);
  }
}

function past(moment: Past): string {
  switch (moment.kind) {
    case 'just-now':
      return 'gerade eben';
    case 'minutes-ago':
      return `vor ${count(moment.minutes, 'Minute', 'Minuten')}`;
    case 'date':
      return moment.date;
    case 'today':
      return `heute ${parts[moment.part]}`;
    case 'yesterday':
      return moment.part === 'night' ? 'letzte Nacht' : `gestern ${parts[moment.part]}`;
    case 'weekday':
      return onWeekday(moment.weekday, moment.part);
  }
}

const isSoon = (moment: When) => moment.kind === 'minutes' || moment.kind === 'about-an-hour';

function by(moment: When): string {
  return isSoon(moment) ? when(moment) : `bis ${bare(moment)}`;
}

/** @param days - the word for days in the case that is wanted */
function lengthWith(span: Length, days: string): string {
  switch (span.kind) {
    case 'moment':
      return 'weniger als eine Minute';
    case 'minutes':
      return count(span.minutes, 'Minute', 'Minuten');
    case 'hours':
      return count(span.hours, 'Stunde', 'Stunden');
    case 'days':
      return span.hours === 0
        ? count(span.days, 'Tag', days)
        : `${count(span.days, 'Tag', days)} ${count(span.hours, 'Stunde', 'Stunden')}`;
  }
}

const length = (span: Length) => lengthWith(span, 'Tage');

function ago(span: Length | null): string {
  if (span === null) return 'gerade eben';
  return span.kind === 'moment'
    ? 'vor weniger als einer Minute'
    : `vor ${lengthWith(span, 'Tagen')}`;
}

function likely(expected: Expected): string {
  switch (expected.kind) {
    case 'ready':
      return 'Neun von zehn, dass es so weit ist';
    case 'held':
      return 'Gehärtet, aber gesperrt';
    case 'feel-now':
      return 'Anfassen lohnt sich jetzt';
    case 'about-now':
      return 'Wahrscheinlich etwa jetzt';
    case 'cannot-tell':
      return 'Wann, lässt sich nicht sagen';
    case 'likely':
      return `Wahrscheinlich ${when(expected.likely)}`;
  }
}

function doubt(expected: Expected): string | null {
  switch (expected.kind) {
    case 'ready':
      return 'Vor dem Weitermachen anfassen.';
    case 'feel-now':
    case 'about-now':
      return expected.late === null || expected.late.kind === 'now'
        ? null
        : `neun von zehn ${by(expected.late)}`;
    case 'likely':
      return window(expected.early, when(expected.likely), expected.late);
    default:
      return null;
  }
}

function window(early: When | null, middle: string, late: When | null): string | null {
  if (late === null) return null;
  if (early === null || early.kind === 'now')
    return isSoon(late) ? `von jetzt an, spätestens ${when(late)}` : `jederzeit bis ${bare(late)}`;
  if (when(early) === when(late)) return when(early) === middle ? null : when(early);
  if (isSoon(early)) return `frühestens ${when(early)}, spät ${when(late)}`;
  return `zwischen ${bare(early)} und ${bare(late)}`;
}

export const times: typeof English = {
  when,
  past,
  exactHour: 'Die genaue Uhrzeit zeigen',
  by,
  length,
  ago,
  likely,
  doubt,
  odds: {
    almostSurely: 'so gut wie gewiss',
    nextToNone: 'so gut wie keine',
    lessThanOneInTen: 'weniger als 1 von 10',
    moreThanNineInTen: 'mehr als 9 von 10',
    inTen: (tenths) => `${tenths} von 10`,
  },
};
