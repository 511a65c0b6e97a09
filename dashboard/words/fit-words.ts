import type { FitReason, FitToBrush } from '../../daemon/contract/fit-to-brush.ts';

type FitWord = FitToBrush['word'];

/** The word in large letters. */
export const fitWords: Readonly<Record<FitWord, string>> = {
  good: 'Brush',
  poor: 'With care',
  no: 'Not now',
  'cannot-tell': 'Can’t tell',
};

/** The word of one hour, short enough for a column of them. */
export const fitHourWords: Readonly<Record<FitWord, string>> = {
  good: 'brush',
  poor: 'care',
  no: 'no',
  'cannot-tell': '?',
};

/** How the board is painted that the word stands on. */
export const fitSigns: Readonly<Record<FitWord, string>> = {
  good: 'sign-ready',
  poor: 'sign-test',
  no: 'sign-hold',
  'cannot-tell': 'sign-no-data',
};

/** What a reason does, in front of it: never by colour alone. */
export const weightWords: Readonly<Record<FitReason['weight'], string>> = {
  no: 'Against it',
  unknown: 'Not known',
  poor: 'Mind',
  fine: 'Good',
  note: 'Also',
};

/** What stands against an hour. */
export const againstWords: Readonly<Record<string, string>> = {
  cold: 'cold',
  hot: 'hot',
  damp: 'damp',
  dew: 'near dew',
  rain: 'rain',
  slow: 'slow',
  warm: 'warm',
};
