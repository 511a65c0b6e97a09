import type { PartOfDay } from '../../format/painters-time.ts';
import type { times as English } from '../en/times.ts';
import { type DayParts, timesIn } from '../times.ts';

const today: DayParts = {
  early: 'tidigt i dag',
  'before-lunch': 'i förmiddag',
  'at-lunch': 'vid lunch i dag',
  'after-lunch': 'i eftermiddag',
  evening: 'i kväll',
  night: 'i natt',
};

const parts: DayParts = {
  early: 'tidigt',
  'before-lunch': 'förmiddag',
  'at-lunch': 'vid lunch',
  'after-lunch': 'eftermiddag',
  evening: 'kväll',
  night: 'natt',
};

/** “i morgon eftermiddag”, “på torsdag kväll”, “tidigt på torsdag”. */
const onDay = (day: string, part: PartOfDay) =>
  part === 'early' ? `tidigt ${day}` : `${day} ${parts[part]}`;

export const times: typeof English = timesIn('sv', {
  now: 'nu',
  fewMinutes: 'om några minuter',
  inMinutes: (minutes) => `om ${minutes} minuter`,
  aboutAnHour: 'om ungefär en timme',
  today,
  tomorrow: (part) => onDay('i morgon', part),
  weekday: (weekday, part) => onDay(`på ${weekday}`, part),

  justNow: 'nyss',
  earlierToday: { ...today, 'before-lunch': 'i förmiddags' },
  yesterday: (part) => onDay('i går', part),
  lastWeekday: (weekday, part) => onDay(`i ${weekday}s`, part),

  length: {
    moment: 'mindre än en minut',
    minutes: { one: '# minut', other: '# minuter' },
    hours: { one: '# timme', other: '# timmar' },
    days: { one: '# dygn', other: '# dygn' },
  },
  ago: { said: (length) => `för ${length} sedan` },

  expected: {
    ready: 'Nio av tio att det är klart',
    held: 'Härdat, men hindrat',
    'feel-now': 'Värt att känna på nu',
    'about-now': 'Troligen ungefär nu',
    'cannot-tell': 'Kan inte säga när',
  },
  likely: (when) => `Troligen ${when}`,
  feelFirst: 'Känn innan du går vidare.',
  nineInTen: (by) => `nio av tio ${by}`,
  by: (when) => `senast ${when}`,
  window: {
    until: (late) => `när som helst fram till ${late}`,
    between: (early, late) => `mellan ${early} och ${late}`,
  },
  soonWindow: {
    until: (late) => `när som helst, senast ${late}`,
    between: (early, late) => `tidigast ${early}, senast ${late}`,
  },

  exactHour: 'Visa det exakta klockslaget',
  odds: {
    almostSurely: 'så gott som visst',
    nextToNone: 'så gott som ingen',
    lessThanOneInTen: 'mindre än 1 av 10',
    moreThanNineInTen: 'mer än 9 av 10',
    inTen: (tenths) => `${tenths} av 10`,
  },
});
