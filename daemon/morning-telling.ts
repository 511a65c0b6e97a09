import type { Clock } from './clock.ts';
import type { Sentence } from './contract/sentence.ts';
import type { Monitor } from './monitor/monitor.ts';
import { postingPlan, siteTimeZone } from './notices-out.ts';
import { localTime } from './rules/local-time.ts';
import { morningDigest } from './rules/morning-digest.ts';
import type { RepeatedActs } from './schedule/cron.ts';
import type { Settings } from './settings/schema.ts';
import type { StoreThread } from './store/thread.ts';
import { siteVoice } from './wording/voice.ts';

interface MorningParts {
  settings: Pick<Settings, 'notices' | 'timeZone' | 'language'>;
  clock: Pick<Clock, 'now' | 'speed'>;
  monitor: Pick<Monitor, 'morning'>;
  writer: Pick<StoreThread, 'addMessages'>;
  health(): { reasonsSaid: Sentence[] };
  /** Called once the digest is on disk. */
  sent(): Promise<void>;
}

/** Sums up the morning for every channel: one digest a day, whatever restarts come in between. */
export function morningTelling(parts: MorningParts): RepeatedActs['digest'] {
  const { settings, clock, monitor, writer, health, sent } = parts;
  const { digestAt } = settings.notices;
  if (digestAt === null) return null;
  const timeZone = siteTimeZone(settings);
  return {
    at: digestAt,
    timeZone,
    async tell() {
      // A simulated shed has its mornings every few minutes.
      if (clock.speed > 1) return;
      const now = clock.now();
      const view = monitor.morning(now, health().reasonsSaid);
      const words = morningDigest(view, now, timeZone, siteVoice(settings.language, timeZone));
      const { day } = localTime(now, timeZone);
      await writer.addMessages(
        postingPlan(settings).channels.map(({ name }) => ({
          id: `digest-${day}.${name}`,
          channel: name,
          body: { kind: 'digest', ...words },
          createdAt: now,
          dueAt: now,
        })),
      );
      await sent();
    },
  };
}
