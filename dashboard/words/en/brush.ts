import type { FitReason, FitToBrush } from '../../../daemon/contract/fit-to-brush.ts';
import type { Node } from '../node.ts';

type FitWord = FitToBrush['word'];

/** “Fit to brush?”: whether and until when one may coat. */
export const brush = {
  title: 'Fit to brush?',
  noPlace: (link: Node) => ['There is no place yet. ', link],
  setUpFirst: 'Set up the shed or the wall first.',
  where: 'Where',
  /** In a choice: “North shed, room”. `kind` is written as within a sentence. */
  placeOfKind: (place: string, kind: string) => `${place}, ${kind}`,
  whichBoards: 'Which boards',
  noMatter: 'No matter which',
  now: 'Now',
  /** The word in large letters: as short as can be. */
  words: {
    good: 'Brush',
    poor: 'With care',
    no: 'Not now',
    'cannot-tell': 'Can’t tell',
  } satisfies Record<FitWord, string>,
  stopNow: 'Put the brush down now.',
  stopBy: (moment: string) => `Stop by ${moment}.`,
  why: 'Why',
  /** What a reason does to the word, written in front of it. */
  weights: {
    no: 'Against it',
    unknown: 'Not known',
    poor: 'Mind',
    fine: 'Good',
    note: 'Also',
  } satisfies Record<FitReason['weight'], string>,
  hours: {
    title: 'The hours ahead',
    byForecast: 'By the weather forecast that was sent, and the recorded days.',
    carriedOn: 'Carried on from the recorded days: no weather forecast was sent.',
    from: 'From',
    brush: 'Brush?',
    air: 'Air',
    humidity: 'Humidity',
    /** Heading of the distance between surface and dew point. */
    aboveDew: 'Above dew',
    rain: 'Rain',
    /** The word of one hour, short enough for a column of them. */
    words: {
      good: 'brush',
      poor: 'care',
      no: 'no',
      'cannot-tell': '?',
    } satisfies Record<FitWord, string>,
    /** What stands against an hour, beside its word: “no · cold, near dew”. */
    against: {
      cold: 'cold',
      hot: 'hot',
      damp: 'damp',
      dew: 'near dew',
      rain: 'rain',
      slow: 'slow',
      warm: 'warm',
    },
  },
  /** The moisture meter, with its two pins. */
  meter: {
    title: 'The meter',
    /** Where to measure. Common practice, no source. */
    how: (fromTheEnd: string) =>
      `Five boards, ${fromTheEnd} from the end: the worst of them counts.`,
    board: (number: string) => `Board ${number}`,
    record: 'Record the figures',
  },
};
