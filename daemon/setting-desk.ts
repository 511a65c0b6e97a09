import { toMoment } from './contract/moment.ts';
import { BoardcureError } from './contract/problem.ts';
import type { SettingPort } from './http/setting-port.ts';
import type { Monitor } from './monitor/monitor.ts';
import type { StandingSettings } from './settings/standing.ts';
import { sentence } from './wording/english.ts';

interface DeskParts {
  standing: StandingSettings;
  monitor: Pick<Monitor, 'factsChanged'>;
  /** Has what is shown made anew. */
  changed(batchId: null): void;
}

/** Where settings are chosen on the page: verdicts and every page that is open follow. */
export function settingDesk({ standing, monitor, changed }: DeskParts): SettingPort {
  standing.onChange(() => {
    monitor.factsChanged();
    changed(null);
  });
  return {
    list: standing.list,
    changes: standing.changes,
    async choose(wish, now, by) {
      try {
        await standing.choose(wish, toMoment(now), by);
      } catch (cause) {
        if (cause instanceof BoardcureError) throw cause;
        const { code, message } = cause as NodeJS.ErrnoException;
        const said = sentence('settings-unwritten', { found: message });
        throw new BoardcureError(code === 'ENOSPC' ? 'BC_STORE_FULL' : 'BC_INTERNAL', said, {
          cause,
        });
      }
    },
  };
}
