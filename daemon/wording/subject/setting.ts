import type { Nothing } from '../phrase.ts';

/** Why a setting is not changed on the page, or what was chosen there does not hold. */
export interface SettingSentences {
  'setting-unknown': { name: string };
  'setting-by-hand': { name: string };
  /** `other`: the flag or the variable. */
  'setting-given': { name: string; other: string };
  /** `found`: where the file cannot be read, as whoever reads it says it. */
  'chosen-damaged': { found: string };
  'settings-unwritten': { found: string };
  'settings-nothing-asked': Nothing;
}
