import type { Spread } from '../ahead/spread.ts';

/** What a language has to know to say on which days something may fall. */
export interface SpreadPhrases {
  readonly notWithinAYear: string;
  readonly perhaps: (early: string) => string;
  readonly oneDay: (day: string) => string;
  readonly about: (likely: string, early: string, late: string) => string;
}

/** After “done”: “about Thu 14 May (early Tue 12 May, late Sat 16 May)”. */
export function spreadIn(phrases: SpreadPhrases): (spread: Spread) => string {
  const day = (date: string | null) => date ?? phrases.notWithinAYear;
  return (spread) => {
    switch (spread.kind) {
      case 'never':
        return phrases.notWithinAYear;
      case 'perhaps':
        return phrases.perhaps(spread.early);
      case 'one-day':
        return phrases.oneDay(spread.likely);
      case 'about':
        return phrases.about(spread.likely, day(spread.early), day(spread.late));
    }
  };
}
