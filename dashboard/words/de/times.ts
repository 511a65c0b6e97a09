import type { PartOfDay } from '../../format/painters-time.ts';
import type { times as English } from '../en/times.ts';
import { type DayParts, type LengthPhrases, timesIn } from '../times.ts';

/** After “heute”, “morgen”, “gestern”. */
const parts: DayParts = {
  early: 'früh',
  'before-lunch': 'Vormittag',
  'at-lunch': 'Mittag',
  'after-lunch': 'Nachmittag',
  evening: 'Abend',
  night: 'Nacht',
};

const today: DayParts = {
  early: 'heute früh',
  'before-lunch': 'heute Vormittag',
  'at-lunch': 'heute Mittag',
  'after-lunch': 'heute Nachmittag',
  evening: 'heute Abend',
  night: 'heute Nacht',
};

/** “Donnerstagnachmittag”, “Donnerstag früh”. */
const weekdayPart = (weekday: string, part: PartOfDay) =>
  part === 'early' ? `${weekday} früh` : `${weekday}${parts[part].toLowerCase()}`;

/** “am Donnerstagnachmittag”, “in der Donnerstagnacht”. */
const on = (weekday: string, part: PartOfDay) => `${part === 'night' ? 'in der' : 'am'} ${weekday}`;

const length: LengthPhrases = {
  moment: 'weniger als eine Minute',
  minutes: { one: '# Minute', other: '# Minuten' },
  hours: { one: '# Stunde', other: '# Stunden' },
  days: { one: '# Tag', other: '# Tage' },
};

export const times: typeof English = timesIn('de', {
  now: 'jetzt',
  fewMinutes: 'in wenigen Minuten',
  inMinutes: (minutes) => `in ${minutes} Minuten`,
  aboutAnHour: 'in etwa einer Stunde',
  today,
  tomorrow: (part) => `morgen ${parts[part]}`,
  weekday: weekdayPart,
  on: { date: (date) => `am ${date}`, weekday: on },

  justNow: 'gerade eben',
  earlierToday: today,
  yesterday: (part) => (part === 'night' ? 'letzte Nacht' : `gestern ${parts[part]}`),
  lastWeekday: (weekday, part) => on(weekdayPart(weekday, part), part),

  length,
  ago: {
    length: {
      ...length,
      moment: 'weniger als einer Minute',
      days: { one: '# Tag', other: '# Tagen' },
    },
    said: (span) => `vor ${span}`,
  },

  expected: {
    ready: 'Neun von zehn, dass es so weit ist',
    held: 'Gehärtet, aber gesperrt',
    'feel-now': 'Anfassen lohnt sich jetzt',
    'about-now': 'Wahrscheinlich etwa jetzt',
    'cannot-tell': 'Wann, lässt sich nicht sagen',
  },
  likely: (when) => `Wahrscheinlich ${when}`,
  feelFirst: 'Vor dem Weitermachen anfassen.',
  nineInTen: (by) => `neun von zehn ${by}`,
  by: (when) => `bis ${when}`,
  window: {
    until: (late) => `jederzeit bis ${late}`,
    between: (early, late) => `zwischen ${early} und ${late}`,
  },
  soonWindow: {
    until: (late) => `von jetzt an, spätestens ${late}`,
    between: (early, late) => `frühestens ${early}, spät ${late}`,
  },

  exactHour: 'Die genaue Uhrzeit zeigen',
  odds: {
    almostSurely: 'so gut wie gewiss',
    nextToNone: 'so gut wie keine',
    lessThanOneInTen: 'weniger als 1 von 10',
    moreThanNineInTen: 'mehr als 9 von 10',
    inTen: (tenths) => `${tenths} von 10`,
  },
});
