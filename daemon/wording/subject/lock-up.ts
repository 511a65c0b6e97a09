import type { LockUpLine } from '../../contract/lock-up.ts';
import type { Nothing } from '../phrase.ts';

type LineTitles = { [Line in LockUpLine as `lock-up-title/${Line}`]: Nothing };
type Lines = { [Line in LockUpLine as `lock-up/${Line}`]: Nothing };

/** What is seen to before the shed is left, what made it a day of coating, and what the night may do. */
export interface LockUpSentences extends LineTitles, Lines {
  'day-coated': { batchName: string };
  'day-begun': { batchName: string };
  'day-sanded': { batchName: string };
  'night-cold/wet-boards': { lowC: number; errorK: number; limitC: number };
  'night-dew/wet-boards': { marginK: number; limitK: number };
  'night-damp/wet-boards': { rhPercent: number; limitPercent: number };
  'night-rain': { rainMm: number };
}
