import type { Length, PartOfDay, Past, When } from '../format/painters-time.ts';
import type { Expected } from '../format/time-left.ts';
import type { Language } from './language.ts';
import { type PluralForms, plural } from './plural.ts';

/** A text for each part of a day. */
export type DayParts = Readonly<Record<PartOfDay, string>>;

/** How lengths of time are said. */
export interface LengthPhrases {
  readonly moment: string;
  readonly minutes: PluralForms;
  readonly hours: PluralForms;
  readonly days: PluralForms;
}

interface WindowPhrases {
  readonly until: (late: string) => string;
  readonly between: (early: string, late: string) => string;
}

/** What a language has to know to say times as a painter does. Weekdays come without inflection. */
export interface TimePhrases {
  readonly now: string;
  readonly fewMinutes: string;
  readonly inMinutes: (minutes: number) => string;
  readonly aboutAnHour: string;
  readonly today: DayParts;
  readonly tomorrow: (part: PartOfDay) => string;
  /** Without the word that it has as an answer to “when”: that comes from `on`. */
  readonly weekday: (weekday: string, part: PartOfDay) => string;
  /** “on 12 May”; as little as a language adds. */
  readonly on?: {
    readonly date?: (date: string) => string;
    readonly weekday?: (weekday: string, part: PartOfDay) => string;
  };

  readonly justNow: string;
  readonly earlierToday: DayParts;
  readonly yesterday: (part: PartOfDay) => string;
  readonly lastWeekday: (weekday: string, part: PartOfDay) => string;

  readonly length: LengthPhrases;
  /** `length`: in another case where “ago” wants one. */
  readonly ago: { readonly length?: LengthPhrases; readonly said: (length: string) => string };

  /** What is said of a job whose time cannot be named. */
  readonly expected: Readonly<Record<Exclude<Expected['kind'], 'likely'>, string>>;
  readonly likely: (when: string) => string;
  readonly feelFirst: string;
  readonly nineInTen: (by: string) => string;
  /** “by tomorrow after lunch” */
  readonly by: (when: string) => string;
  readonly window: WindowPhrases;
  /** The same where its nearest end is minutes away: “until in 20 minutes” cannot be said. */
  readonly soonWindow: WindowPhrases;

  /** What a tap on a moment does. */
  readonly exactHour: string;
  /** A probability in words that do not pretend to be exact. */
  readonly odds: {
    readonly almostSurely: string;
    readonly nextToNone: string;
    readonly lessThanOneInTen: string;
    readonly moreThanNineInTen: string;
    readonly inTen: (tenths: number) => string;
  };
}

const isSoon = ({ kind }: When) => kind === 'minutes' || kind === 'about-an-hour';

/** Moments and lengths of time in a painter’s words. */
export function timesIn(language: Language, phrases: TimePhrases) {
  /** As it stands after another word, such as “by”. */
  function bare(moment: When): string {
    switch (moment.kind) {
      case 'now':
        return phrases.now;
      case 'minutes':
        return moment.minutes < 10 ? phrases.fewMinutes : phrases.inMinutes(moment.minutes);
      case 'about-an-hour':
        return phrases.aboutAnHour;
      case 'date':
        return moment.date;
      case 'today':
        return phrases.today[moment.part];
      case 'tomorrow':
        return phrases.tomorrow(moment.part);
      case 'weekday':
        return phrases.weekday(moment.weekday, moment.part);
    }
  }

  /** “tomorrow after lunch”, as it stands alone or after “Likely”. */
  function when(moment: When): string {
    const said = bare(moment);
    if (moment.kind === 'date') return phrases.on?.date?.(said) ?? said;
    if (moment.kind === 'weekday') return phrases.on?.weekday?.(said, moment.part) ?? said;
    return said;
  }

  /** “yesterday after lunch”, as it stands alone or after “Last board”. */
  function past(moment: Past): string {
    switch (moment.kind) {
      case 'just-now':
        return phrases.justNow;
      case 'minutes-ago':
        return ago({ kind: 'minutes', minutes: moment.minutes });
      case 'date':
        return moment.date;
      case 'today':
        return phrases.earlierToday[moment.part];
      case 'yesterday':
        return phrases.yesterday(moment.part);
      case 'weekday':
        return phrases.lastWeekday(moment.weekday, moment.part);
    }
  }

  function lengthBy(forms: LengthPhrases, span: Length): string {
    switch (span.kind) {
      case 'moment':
        return forms.moment;
      case 'minutes':
        return plural(language, span.minutes, forms.minutes);
      case 'hours':
        return plural(language, span.hours, forms.hours);
      case 'days': {
        const days = plural(language, span.days, forms.days);
        return span.hours === 0 ? days : `${days} ${plural(language, span.hours, forms.hours)}`;
      }
    }
  }

  const length = (span: Length): string => lengthBy(phrases.length, span);

  function ago(span: Length | null): string {
    if (span === null) return phrases.justNow;
    return phrases.ago.said(lengthBy(phrases.ago.length ?? phrases.length, span));
  }

  /** After “nine in ten”: “by tomorrow after lunch”, “in about an hour”. */
  const by = (moment: When): string => (isSoon(moment) ? when(moment) : phrases.by(bare(moment)));

  /** The main line: “Likely tomorrow after lunch”. */
  const likely = (expected: Expected): string =>
    expected.kind === 'likely'
      ? phrases.likely(when(expected.likely))
      : phrases.expected[expected.kind];

  /** The doubt around it: “between this evening and Friday before lunch”; null without any. */
  function doubt(expected: Expected): string | null {
    switch (expected.kind) {
      case 'ready':
        return phrases.feelFirst;
      case 'feel-now':
      case 'about-now':
        return expected.late === null || expected.late.kind === 'now'
          ? null
          : phrases.nineInTen(by(expected.late));
      case 'likely':
        return window(expected.early, expected.likely, expected.late);
      default:
        return null;
    }
  }

  function window(early: When | null, middle: When, late: When | null): string | null {
    if (late === null) return null;
    if (early === null || early.kind === 'now') {
      return isSoon(late) ? phrases.soonWindow.until(when(late)) : phrases.window.until(bare(late));
    }
    const [from, to] = [when(early), when(late)];
    if (from === to) return from === when(middle) ? null : from;
    return isSoon(early)
      ? phrases.soonWindow.between(from, to)
      : phrases.window.between(bare(early), bare(late));
  }

  const { exactHour, odds } = phrases;
  return { when, past, exactHour, by, length, ago, likely, doubt, odds };
}
