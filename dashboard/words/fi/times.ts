import type { PartOfDay } from '../../format/painters-time.ts';
import type { times as English } from '../en/times.ts';
import { type DayParts, timesIn } from '../times.ts';

const parts: DayParts = {
  early: 'aikaisin aamulla',
  'before-lunch': 'aamupäivällä',
  'at-lunch': 'puolenpäivän aikaan',
  'after-lunch': 'iltapäivällä',
  evening: 'illalla',
  night: 'yöllä',
};

const today: DayParts = {
  early: 'tänään aikaisin aamulla',
  'before-lunch': 'tänään aamupäivällä',
  'at-lunch': 'tänään puolenpäivän aikaan',
  'after-lunch': 'tänään iltapäivällä',
  evening: 'tänä iltana',
  night: 'tänä yönä',
};

/** The essive of a weekday, “torstaina”: all seven end in -i or -ko, so none of them changes its stem. */
const onWeekday = (weekday: string, part: PartOfDay) => `${weekday}na ${parts[part]}`;

/** Finnish has no word for “between” two moments: each end is said for itself. */
const window = {
  until: (late: string) => `milloin vain, viimeistään ${late}`,
  between: (early: string, late: string) => `aikaisintaan ${early}, viimeistään ${late}`,
};

export const times: typeof English = timesIn('fi', {
  now: 'nyt',
  fewMinutes: 'muutaman minuutin kuluttua',
  inMinutes: (minutes) => `${minutes} minuutin kuluttua`,
  aboutAnHour: 'noin tunnin kuluttua',
  today,
  tomorrow: (part) => `huomenna ${parts[part]}`,
  weekday: onWeekday,

  justNow: 'juuri äsken',
  earlierToday: today,
  yesterday: (part) => (part === 'night' ? 'viime yönä' : `eilen ${parts[part]}`),
  lastWeekday: onWeekday,

  length: {
    moment: 'alle minuutti',
    minutes: { one: '# minuutti', other: '# minuuttia' },
    hours: { one: '# tunti', other: '# tuntia' },
    days: { one: '# vuorokausi', other: '# vuorokautta' },
  },
  ago: { said: (length) => `${length} sitten` },

  expected: {
    ready: 'Yhdeksän kymmenestä, että on valmis',
    held: 'Kovettunut, mutta jokin estää',
    'feel-now': 'Kannattaa tunnustella nyt',
    'about-now': 'Todennäköisesti nyt',
    'cannot-tell': 'Ei voi sanoa, milloin',
  },
  likely: (when) => `Todennäköisesti ${when}`,
  feelFirst: 'Tunnustele ennen kuin jatkat.',
  nineInTen: (by) => `yhdeksän kymmenestä ${by}`,
  by: (when) => `viimeistään ${when}`,
  window,
  soonWindow: window,

  exactHour: 'Näytä tarkka kellonaika',
  odds: {
    almostSurely: 'lähes varmasti',
    nextToNone: 'tuskin lainkaan',
    lessThanOneInTen: 'alle 1/10',
    moreThanNineInTen: 'yli 9/10',
    inTen: (tenths) => `${tenths}/10`,
  },
});
