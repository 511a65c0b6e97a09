import type { PartOfDay } from '../../format/painters-time.ts';
import { type DayParts, timesIn } from '../times.ts';

const today: DayParts = {
  early: 'early today',
  'before-lunch': 'today before lunch',
  'at-lunch': 'today at lunch',
  'after-lunch': 'today after lunch',
  evening: 'this evening',
  night: 'tonight',
};

const parts: DayParts = {
  early: 'early',
  'before-lunch': 'before lunch',
  'at-lunch': 'at lunch',
  'after-lunch': 'after lunch',
  evening: 'evening',
  night: 'night',
};

/** “early Thursday”, “Thursday after lunch”. */
const onDay = (day: string, part: PartOfDay) =>
  part === 'early' ? `early ${day}` : `${day} ${parts[part]}`;

/** Moments and lengths of time in a painter’s words. */
export const times = timesIn('en', {
  now: 'now',
  fewMinutes: 'in a few minutes',
  inMinutes: (minutes) => `in ${minutes} minutes`,
  aboutAnHour: 'in about an hour',
  today,
  tomorrow: (part) => onDay('tomorrow', part),
  weekday: onDay,
  on: { date: (date) => `on ${date}` },

  justNow: 'just now',
  earlierToday: today,
  yesterday: (part) => (part === 'night' ? 'last night' : onDay('yesterday', part)),
  lastWeekday: onDay,

  length: {
    moment: 'less than a minute',
    minutes: { one: '# minute', other: '# minutes' },
    hours: { one: '# hour', other: '# hours' },
    days: { one: '# day', other: '# days' },
  },
  ago: { said: (length) => `${length} ago` },

  expected: {
    ready: 'Nine in ten it is there',
    held: 'Cured, but held',
    'feel-now': 'Worth feeling now',
    'about-now': 'Likely about now',
    'cannot-tell': 'Can’t tell when',
  },
  likely: (when) => `Likely ${when}`,
  feelFirst: 'Feel it before you go on.',
  nineInTen: (by) => `nine in ten ${by}`,
  by: (when) => `by ${when}`,
  window: {
    until: (late) => `any time until ${late}`,
    between: (early, late) => `between ${early} and ${late}`,
  },
  soonWindow: {
    until: (late) => `any time now, ${late} at the latest`,
    between: (early, late) => `${early} at the earliest, ${late} at the latest`,
  },

  exactHour: 'Show the exact hour',
  odds: {
    almostSurely: 'almost surely',
    nextToNone: 'next to none',
    lessThanOneInTen: 'less than 1 in 10',
    moreThanNineInTen: 'more than 9 in 10',
    inTen: (tenths) => `${tenths} in 10`,
  },
});
