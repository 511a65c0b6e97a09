import type { Nothing } from '../phrase.ts';

/** What holds a job back, and what would help. */
export interface HelpSentences {
  'air-unknown/how-warm': Nothing;
  'stands-still': { tempC: number };
  cold: { tempC: number };
  damp: { rhPercent: number };
  'still-air': Nothing;
  'failed-test/slow-coat': Nothing;
  time: Nothing;
  'help-changed-air': Nothing;
  'help-changed-air/wetter-outside': Nothing;
  'help-drier': Nothing;
  'help-drier/near-dew': { marginK: number };
  'help-warmer-later': Nothing;
  'help-warmer': { toTempC: number; soonerHours: number };
  'help-warmer/at-all': { toTempC: number };
  'help-touch': Nothing;
  'help-only-time': Nothing;
  'help-only-time/outdoors': Nothing;
}
