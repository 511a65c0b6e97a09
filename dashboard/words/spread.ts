import type { Spread } from '../ahead/spread.ts';
import type { Node } from './node.ts';

/** What a language has to know to say on which days something may fall. */
export interface SpreadPhrases {
  readonly notWithinAYear: string;
  readonly perhaps: (early: Node) => Node;
  readonly oneDay: (day: Node) => Node;
  readonly about: (likely: Node, early: Node, late: Node) => Node;
}

/** After “done”: “about Thu 14 May (early Tue 12 May, late Sat 16 May)”. */
export function spreadIn(phrases: SpreadPhrases): (spread: Spread) => Node {
  const day = (date: Node) => date ?? phrases.notWithinAYear;
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
