import { quantities } from '../contract/quantity.ts';
import { lookAtDatabase, readOnce } from '../store/backup-look.ts';
import { type NightBackup, nightBackupsIn, nightFolder } from '../store/backup-nightly.ts';
import { fileFault } from '../store/file-fault.ts';
import type { StoreReader } from '../store/store.ts';
import { type Finding, look, ok, sizeWords, spanWords, wrong } from './doctor-finding.ts';

const dayMs = 86_400_000;
/** A backup is made every night; after so long something is in its way. */
const backupOldAfterMs = 3 * dayMs;
/** A larger log was not put back into the file for long. Assumption. */
const largeLogBytes = 200e6;
const namedAtMost = 10;

export interface DatabaseFindings {
  readonly findings: Finding[];
  /** UTC epoch ms of the newest reading, null for none. */
  readonly newestAt: number | null;
  /** Whether this program's version can read it. */
  readonly readable: boolean;
}

/** Looks at the database: version, wholeness, size, the newest of each sensor, work left over. */
export function lookAtData(file: string, now: number): DatabaseFindings {
  const found = lookAtDatabase(file);
  const nothing = (finding: Finding) => ({ findings: [finding], newestAt: null, readable: false });
  const restore =
    'Stop the daemon and put the newest backup in its place: boardcure restore <file> --replace.';
  if (found.kind === 'none') {
    return nothing(look('database', `There is no database ${file} yet.`, 'Start the daemon once.'));
  }
  if (found.kind === 'closed') {
    const says = 'The database was not looked at: this user may not read it.';
    return nothing(wrong('database', says, found.because));
  }
  if (found.kind === 'unreadable') return nothing(wrong('database', found.because, restore));
  if (found.faults.length > 0) {
    return nothing(
      wrong('database', `The database is damaged: ${found.faults.join('; ')}.`, restore),
    );
  }
  const { version, knownVersion, bytes, logBytes } = found;
  if (version > knownVersion) {
    const says = `The database is at version ${version}; this program knows only ${knownVersion}.`;
    return nothing(wrong('database', says, 'Install the newer program again.'));
  }
  const size = `${sizeWords(bytes)} and a log of ${sizeWords(logBytes)}`;
  if (version < knownVersion) {
    const says = `The database (${size}) is whole, at version ${version}; this program uses ${knownVersion}.`;
    return nothing(look('database', says, 'Start the daemon: it keeps a copy and brings it up.'));
  }
  const state =
    logBytes > largeLogBytes
      ? look(
          'database',
          `The database is whole, but its log is large: ${size}.`,
          'Stop the daemon and start it again.',
        )
      : ok('database', `The database is whole at version ${version}: ${size}.`);
  return readOnce(file, (reader) => {
    const newest = newestOfSensors(reader);
    const times = newest.flatMap(({ at }) => (at === null ? [] : [at]));
    return {
      findings: [state, workLeft(reader), sensorsHeard(newest, now)],
      newestAt: times.length === 0 ? null : Math.max(...times),
      readable: true,
    };
  });
}

function workLeft(reader: StoreReader): Finding {
  const spans = reader.dirtySpans().length;
  return spans === 0
    ? ok('database', 'Every hour sum agrees with the readings.')
    : look(
        'database',
        `${spans} stretches of hours are still to be reckoned anew after late readings.`,
        'Let the daemon run; look again in some minutes.',
      );
}

interface NewestOfSensor {
  readonly id: string;
  readonly at: number | null;
}

function newestOfSensors(reader: StoreReader): NewestOfSensor[] {
  return reader.sensors().map(({ key, id }) => {
    const times = quantities.flatMap(
      (quantity) => reader.readingExtent(key, quantity)?.lastAt ?? [],
    );
    return { id, at: times.length === 0 ? null : Math.max(...times) };
  });
}

function sensorsHeard(sensors: readonly NewestOfSensor[], now: number): Finding {
  if (sensors.length === 0) {
    return look(
      'sensors',
      'No sensor has sent anything yet.',
      'Let one publish; README.md tells the topics.',
    );
  }
  const lines = sensors.map(({ id, at }) => ({
    id,
    at,
    silentMs: at === null ? Infinity : now - at,
  }));
  const words = ({ id, at }: NewestOfSensor) =>
    at === null ? `${id} never` : `${id} ${at > now ? 'just now' : `${spanWords(now - at)} ago`}`;
  const listed = (some: readonly NewestOfSensor[]) => {
    const more = some.length > namedAtMost ? ` and ${some.length - namedAtMost} more` : '';
    return `${some.slice(0, namedAtMost).map(words).join(', ')}${more}`;
  };
  const silent = lines.filter(({ silentMs }) => silentMs > dayMs);
  return silent.length === 0
    ? ok('sensors', `Newest readings: ${listed(lines)}.`)
    : look(
        'sensors',
        `${silent.length} of ${lines.length} sensors have been silent for more than a day: ${listed(silent)}.`,
        'Look at their batteries and at how far they are from their radio or broker.',
      );
}

/** Looks how old the newest nightly backup is. */
export function lookAtBackups(
  settings: { data: string; backup: { folder: string | null; keep: number } },
  now: number,
): Finding {
  const folder = nightFolder(settings);
  if (settings.backup.keep === 0) {
    return look(
      'backups',
      'Nightly backups are turned off.',
      'Set keep in the section backup, or run boardcure backup yourself.',
    );
  }
  let backups: NightBackup[];
  try {
    backups = nightBackupsIn(folder);
  } catch (cause) {
    const says = `The nightly backups in ${folder} cannot be looked at.`;
    return wrong('backups', says, fileFault(cause) ?? String(cause));
  }
  const [newest] = backups;
  if (!newest) {
    return look(
      'backups',
      `There is no nightly backup in ${folder} yet.`,
      'Let the daemon run for an hour, then look again.',
    );
  }
  const age = now - newest.writtenAt;
  const says = `The newest of ${backups.length} nightly backups is ${spanWords(Math.max(0, age))} old (${sizeWords(newest.bytes)}).`;
  return age > backupOldAfterMs
    ? look(
        'backups',
        says,
        'See that the daemon runs and that the disk has room; its log tells why none was made.',
      )
    : ok('backups', says);
}
