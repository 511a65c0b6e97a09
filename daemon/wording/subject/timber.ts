import type { Nothing } from '../phrase.ts';

/** What is to be minded of timber, of a coat that has stood, and of the tin it comes from. */
export interface TimberSentences {
  'maybe-lead': Nothing;
  weathered: Nothing;
  'weathered-by-now': { days: number; limitDays: number };
  wrapped: Nothing;
  'knots-not-looked': Nothing;
  resin: Nothing;
  'on-stickers': Nothing;
  'recoat-wash': { days: number };
  'recoat-winter': Nothing;
  'tin-old': { tinName: string; months: number };
  'tin-drier-poor': { tinName: string };
}
