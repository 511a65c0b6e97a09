import type { Nothing } from '../phrase.ts';

/** What is usually done about what was seen on a coat, one step each; and a night of dew. */
export interface RemarkSentences {
  'cure-wrinkled/wait': Nothing;
  'cure-wrinkled/scrape': Nothing;
  'cure-wrinkled/thinner': Nothing;
  'cure-runs/while-soft': Nothing;
  'cure-runs/once-set': Nothing;
  'cure-dull/feed': Nothing;
  'cure-dull/spots-first': Nothing;
  'cure-glossy/wait': Nothing;
  'cure-glossy/rub-matt': Nothing;
  'cure-got-wet/dry': Nothing;
  'cure-got-wet/look': Nothing;
  'cure-dew-night/dry': Nothing;
  'cure-dew-night/look': Nothing;
  'cure-bleached/cure-through': Nothing;
  'cure-still-standing/brush-out': Nothing;
  'cure-still-standing/rags': Nothing;
  'cure-wiped-off/rags': Nothing;
  'cure-sunk-in/fine': Nothing;
  'cure-clogged/stop': Nothing;
  'cure-clogged/dust': Nothing;
  'cure-sanded/tell': Nothing;
  'cure-sanded/dust': Nothing;
  'dew-night': { placeName: string; tempC: number; rhPercent: number };
}
