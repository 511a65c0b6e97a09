import type { Length, PartOfDay, Past, When } from '../../format/painters-time.ts';
import type { Expected } from '../../format/time-left.ts';
import type { times as English } from '../en/times.ts';
import { plural } from '../plural.ts';

const parts: Readonly<Record<PartOfDay, string>> = {
  early: 'aikaisin aamulla',
  'before-lunch': 'aamupäivällä',
  'at-lunch': 'puolenpäivän aikaan',
  'after-lunch': 'iltapäivällä',
  evening: 'illalla',
  night: 'yöllä',
};

function today(part: PartOfDay): string {
  if (part === 'night') return 'tänä yönä';
  return part === 'evening' ? 'tänä iltana' : `tänään ${parts[part]}`;
}

/** The essive of a weekday, “torstaina”: all seven end in -i or -ko, so none of them changes its stem. */
const onWeekday = (weekday: string, part: PartOfDay) => `${weekday}na ${parts[part]}`;

const minutes = (count: number) => plural('fi', count, { one: '# minuutti', other: '# minuuttia' });
const hours = (count: number) => plural('fi', count, { one: '# tunti', other: '# tuntia' });
const days = (count: number) =>
  plural('fi', count, { one: '# vuorokausi', other: '# vuorokautta' });

function when(moment: When): string {
  switch (moment.kind) {
    case 'now':
      return 'nyt';
    case 'minutes':
      return moment.minutes < 10
        ? 'muutaman minuutin kuluttua'
        : `${moment.minutes} minuutin kuluttua`;
    case 'about-an-hour':
      return 'noin tunnin kuluttua';
    case 'date':
      return moment.date;
    case 'today':
      return today(moment.part);
    case 'tomorrow':
      return `huomenna ${parts[moment.part]}`;
    case 'weekday':
      return onWeekday(moment.weekday, moment.part);
  }
}

function past(moment: Past): string {
  switch (moment.kind) {
    case 'just-now':
      return 'juuri äsken';
    case 'minutes-ago':
      return `${minutes(moment.minutes)} sitten`;
    case 'date':
      return moment.date;
    case 'today':
      return today(moment.part);
    case 'yesterday':
      return moment.part === 'night' ? 'viime yönä' : `eilen ${parts[moment.part]}`;
    case 'weekday':
      return onWeekday(moment.weekday, moment.part);
  }
}

function by(moment: When): string {
  return moment.kind === 'minutes' || moment.kind === 'about-an-hour'
    ? when(moment)
    : `viimeistään ${when(moment)}`;
}

function length(span: Length): string {
  switch (span.kind) {
    case 'moment':
      return 'alle minuutti';
    case 'minutes':
      return minutes(span.minutes);
    case 'hours':
      return hours(span.hours);
    case 'days':
      return span.hours === 0 ? days(span.days) : `${days(span.days)} ${hours(span.hours)}`;
  }
}

function likely(expected: Expected): string {
  switch (expected.kind) {
    case 'ready':
      return 'Yhdeksän kymmenestä, että on valmis';
    case 'held':
      return 'Kovettunut, mutta jokin estää';
    case 'feel-now':
      return 'Kannattaa tunnustella nyt';
    case 'about-now':
      return 'Todennäköisesti nyt';
    case 'cannot-tell':
      return 'Ei voi sanoa, milloin';
    case 'likely':
      return `Todennäköisesti ${when(expected.likely)}`;
  }
}

function doubt(expected: Expected): string | null {
  switch (expected.kind) {
    case 'ready':
      return 'Tunnustele ennen kuin jatkat.';
    case 'feel-now':
    case 'about-now':
      return expected.late === null || expected.late.kind === 'now'
        ? null
        : `yhdeksän kymmenestä ${by(expected.late)}`;
    case 'likely':
      return window(expected.early, when(expected.likely), expected.late);
    default:
      return null;
  }
}

function window(early: When | null, middle: string, late: When | null): string | null {
  if (late === null) return null;
  if (early === null || early.kind === 'now') return `milloin vain, viimeistään ${when(late)}`;
  if (when(early) === when(late)) return when(early) === middle ? null : when(early);
  return `aikaisintaan ${when(early)}, viimeistään ${when(late)}`;
}

export const times: typeof English = {
  when,
  past,
  exactHour: 'Näytä tarkka kellonaika',
  by,
  length,
  ago: (span) => (span === null ? 'juuri äsken' : `${length(span)} sitten`),
  likely,
  doubt,
  odds: {
    almostSurely: 'lähes varmasti',
    nextToNone: 'tuskin lainkaan',
    lessThanOneInTen: 'alle 1/10',
    moreThanNineInTen: 'yli 9/10',
    inTen: (tenths) => `${tenths}/10`,
  },
};
