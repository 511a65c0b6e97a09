import type { Clock } from './clock.ts';
import type { Closing } from './closing.ts';
import type { DaemonLog } from './daemon-log.ts';
import type { Settings } from './settings/schema.ts';
import { nightFolder, nightlyBackups } from './store/backup-nightly.ts';
import { damageWatch } from './store/damage-watch.ts';
import { spaceDoubts } from './store/free-space.ts';

interface BackupParts {
  settings: Settings;
  clock: Clock;
  log: DaemonLog;
  file: string;
  atClose: Closing['atClose'];
  /** The compiled process that copies; only tests give another one. */
  processUrl?: URL;
}

/** Watches over the database file: damage, free space, nightly copies. */
export function siteBackups({ settings, clock, log, file, atClose, processUrl }: BackupParts) {
  const { keep, at } = settings.backup;
  const damage = damageWatch(file);
  atClose(() => damage.close());
  const backups = nightlyBackups({
    ...{ file, folder: nightFolder(settings), keep },
    ...(processUrl ? { processUrl } : {}),
  });
  atClose(() => backups.close());
  const leastSpace = () => settings.storage.lowSpaceMiB * 1_048_576;

  return {
    doubts: [damage.doubts, backups.doubts, () => spaceDoubts(settings.data, leastSpace())],
    async lookForDamage() {
      const faults = await damage.look();
      if (faults.length > 0) log.error({ faults }, 'the database is damaged');
    },
    schedule:
      keep === 0
        ? null
        : {
            at,
            async whenDue(isItsHour: boolean) {
              // A simulated shed is gone tomorrow.
              if (clock.speed > 1) return;
              const copy = await backups.whenDue(clock.now(), isItsHour);
              if (copy)
                log.info({ file: copy.file, bytes: copy.bytes }, 'the database was backed up');
            },
          },
  };
}
