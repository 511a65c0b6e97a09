import type { SettingList, SettingWish } from '../contract/setting.ts';

/** What the server needs of the settings; handed over by main. */
export interface SettingPort {
  list(): SettingList;
  /**
   * Chooses settings, all or none.
   *
   * @param now - UTC epoch ms
   * @param by - name of the device; null for the computer itself
   * @throws BoardcureError where they are not to be chosen, do not fit, or cannot be written
   */
  choose(wish: SettingWish, now: number, by: string | null): Promise<void>;
  /** How often something was changed since the start. */
  changes(): number;
}
