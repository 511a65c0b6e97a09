import type { PartOfDay } from '../../format/painters-time.ts';
import type { times as English } from '../en/times.ts';
import { type DayParts, timesIn } from '../times.ts';

const today: DayParts = {
  early: 'tidlig i dag',
  'before-lunch': 'i formiddag',
  'at-lunch': 'ved lunsjtid i dag',
  'after-lunch': 'i ettermiddag',
  evening: 'i kveld',
  night: 'i natt',
};

const parts: DayParts = {
  early: 'tidlig',
  'before-lunch': 'formiddag',
  'at-lunch': 'ved lunsjtid',
  'after-lunch': 'ettermiddag',
  evening: 'kveld',
  night: 'natt',
};

/** «i morgen ettermiddag», «på torsdag kveld», «tidlig på torsdag». */
const onDay = (day: string, part: PartOfDay) =>
  part === 'early' ? `tidlig ${day}` : `${day} ${parts[part]}`;

export const times: typeof English = timesIn('nb', {
  now: 'nå',
  fewMinutes: 'om noen minutter',
  inMinutes: (minutes) => `om ${minutes} minutter`,
  aboutAnHour: 'om omtrent en time',
  today,
  tomorrow: (part) => onDay('i morgen', part),
  weekday: (weekday, part) => onDay(`på ${weekday}`, part),

  justNow: 'nettopp',
  earlierToday: today,
  yesterday: (part) => onDay('i går', part),
  lastWeekday: (weekday, part) => onDay(`sist ${weekday}`, part),

  length: {
    moment: 'mindre enn ett minutt',
    minutes: { one: '# minutt', other: '# minutter' },
    hours: { one: '# time', other: '# timer' },
    days: { one: '# døgn', other: '# døgn' },
  },
  ago: { said: (length) => `for ${length} siden` },

  expected: {
    ready: 'Ni av ti for at det er klart',
    held: 'Herdet, men hindret',
    'feel-now': 'Verdt å kjenne på nå',
    'about-now': 'Trolig omtrent nå',
    'cannot-tell': 'Kan ikke si når',
  },
  likely: (when) => `Trolig ${when}`,
  feelFirst: 'Kjenn etter før du går videre.',
  nineInTen: (by) => `ni av ti ${by}`,
  by: (when) => `senest ${when}`,
  window: {
    until: (late) => `når som helst frem til ${late}`,
    between: (early, late) => `mellom ${early} og ${late}`,
  },
  soonWindow: {
    until: (late) => `når som helst, senest ${late}`,
    between: (early, late) => `tidligst ${early}, senest ${late}`,
  },

  exactHour: 'Vis nøyaktig klokkeslett',
  odds: {
    almostSurely: 'så godt som visst',
    nextToNone: 'så godt som ingen',
    lessThanOneInTen: 'mindre enn 1 av 10',
    moreThanNineInTen: 'mer enn 9 av 10',
    inTen: (tenths) => `${tenths} av 10`,
  },
});
