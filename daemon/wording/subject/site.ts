import type { Nothing } from '../phrase.ts';

/** What is amiss with the computer itself: disk, clock, database, broker. */
export interface SiteSentences {
  'disk-full': Nothing;
  'disk-low': { freeMiB: number };
  'broker-away': Nothing;
  'clock-not-set': Nothing;
  'clock-was-set/forward': { minutes: number };
  'clock-was-set/back': { minutes: number };
  'sensor-clock/ahead': { sensor: string; minutes: number };
  'sensor-clock/behind': { sensor: string; minutes: number };
  /** `found`: as the database engine says it. */
  'folder-gone': { name: string };
  'database-damaged': { found: string };
  /** `because`: as whoever made it said it. */
  'backup-not-made': { because: string };
}
