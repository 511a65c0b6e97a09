import type { Said } from '../contract/sentence.ts';
import type { SettingList, SettingWish } from '../contract/setting.ts';
import { sentence } from '../wording/english.ts';
import { chosenAfter } from './choose.ts';
import { chosenFileIn, writeChosen } from './chosen-file.ts';
import { listSettings } from './listing.ts';
import { liveSettings, type SettingChange } from './live.ts';
import { type GroundSettings, laidOn } from './load.ts';
import { noOrigins } from './origin.ts';
import type { Settings } from './schema.ts';

/** The settings of a daemon that runs: what holds, and how it is changed meanwhile. */
export interface StandingSettings {
  /** Those that can change while the daemon runs tell their newest value. */
  readonly settings: Settings;
  /**
   * Reads the file anew, and what was chosen.
   *
   * @throws SettingsError where the file does not fit; then nothing is changed
   */
  reload(): SettingChange[];
  /**
   * Chooses settings, all or none, and keeps that on disk.
   *
   * @param at - ISO 8601, UTC
   * @param by - name of the device; null for the computer itself
   * @throws BoardcureError where they are not to be chosen or do not fit; nothing is changed then
   * @throws Error of the system where the choice cannot be written; nothing is changed either
   */
  choose(wish: SettingWish, at: string, by: string | null): Promise<void>;
  list(): SettingList;
  /** Settings that wait for the next start. */
  waiting(): string[];
  /** What of the choices does not hold, and why. */
  doubts(): SettingDoubt[];
  /** How often something was changed since the start. */
  changes(): number;
  /** Calls back after a change. */
  onChange(listener: (changes: SettingChange[]) => void): void;
}

export interface SettingDoubt {
  /** The setting; null for the whole file of choices. */
  readonly name: string | null;
  readonly because: Said;
}

/**
 * @param read - reads file, environment and flags, without what was chosen
 * @throws SettingsError when they do not fit
 */
export function standingSettings(read: () => GroundSettings): StandingSettings {
  let ground = read();
  let laid = laidOn(ground);
  const live = liveSettings(laid.settings);
  const atStart = { ground, laid };
  const listeners: ((changes: SettingChange[]) => void)[] = [];
  let count = 0;
  let queue: Promise<unknown> = Promise.resolve();

  function take(): SettingChange[] {
    laid = laidOn(ground);
    const changes = live.take(laid.settings);
    count++;
    for (const listener of listeners) listener(changes);
    return changes;
  }

  async function choose(wish: SettingWish, at: string, by: string | null): Promise<void> {
    // Read anew: whoever mended the file by hand loses nothing.
    const { file, chosen } = laidOn(ground);
    const { tree, given } = ground;
    const entries = chosenAfter(wish, {
      ...{ entries: file.entries, holding: chosen, tree, given, at, by },
    });
    await writeChosen(chosenFileIn(ground.settings.data), entries);
    take();
  }

  return {
    settings: live.settings,
    reload() {
      ground = read();
      return take();
    },
    choose(wish, at, by) {
      // One after the other: each is laid over what the one before left.
      const done = queue.then(() => choose(wish, at, by));
      queue = done.catch(() => {});
      return done;
    },
    list: () =>
      listSettings({
        settings: live.settings,
        next: live.newest(),
        waiting: live.waiting(),
        ...{ atStart, newest: { ground, laid } },
      }),
    waiting: live.waiting,
    doubts: () => doubtsOf(laid),
    changes: () => count,
    onChange: (listener) => void listeners.push(listener),
  };
}

/** What of the choices does not hold, and why. */
export function doubtsOf({
  file,
  setAside,
}: Pick<ReturnType<typeof laidOn>, 'file' | 'setAside'>): SettingDoubt[] {
  return [
    ...(file.fault === null
      ? []
      : [{ name: null, because: sentence('chosen-damaged', { found: file.fault }) }]),
    ...setAside.map(({ entry, because }) => ({ name: entry.name, because })),
  ];
}

/** Settings that nobody wrote into a file. */
export const plainGround = (settings: Settings): GroundSettings => ({
  ...{ tree: settings, settings, given: new Map(), origins: noOrigins },
});
