import type { Settings } from '../settings/schema.ts';
import { teachClock } from '../site-time.ts';
import { heldByDaemon, readOnce } from '../store/backup-look.ts';
import { databaseFile } from '../store/open.ts';
import { type WallClock, wallClock } from '../wall-clock.ts';
import { commandArguments } from './command-arguments.ts';
import type { CommandIo } from './command-io.ts';
import { lookAtBroker, whoTakesMessages } from './doctor-broker.ts';
import { lookAtClock } from './doctor-clock.ts';
import { lookAtBackups, lookAtData } from './doctor-database.ts';
import type { Finding } from './doctor-finding.ts';
import { ok } from './doctor-finding.ts';
import { lookAtDisk, lookAtFolder } from './doctor-folder.ts';
import { lookAtPort, whoServesPages } from './doctor-ports.ts';
import { lookAtSettings } from './doctor-settings.ts';
import { lookAtVersions } from './doctor-versions.ts';

const usage = `boardcure doctor [options]: looks whether all is in order, and says what to do

  --json                 one line for programs
  --data, --http, --mqtt, --site, --config
                         as the daemon is started with

It changes nothing, and works beside a running daemon or without one.
The exit code is 1 when something is wrong.`;

/**
 * `boardcure doctor`: looks at all that the daemon hangs on, and says what to do.
 *
 * @param args - what follows the word `doctor`
 * @param io - where lines go
 * @param clock - only tests give another one
 * @returns exit code: 0 when nothing is wrong, else 1
 */
export async function doctor(
  args: string[],
  io: CommandIo,
  clock: WallClock = wallClock(),
): Promise<number> {
  const given = commandArguments(args, ['json']);
  if (given.kind === 'help') {
    io.stderr(usage);
    return 0;
  }
  const { settings, findings } = lookAtSettings({
    args: [...given.settings, ...given.plain],
    env: io.env,
    cwd: io.cwd,
  });
  findings.push(...lookAtVersions());
  if (settings !== null) findings.push(...(await lookAround(settings, clock)));
  const wrongs = findings.filter(({ level }) => level === 'wrong').length;
  const looks = findings.filter(({ level }) => level === 'look').length;
  if (given.own.has('json')) {
    io.stdout(JSON.stringify({ event: 'looked', wrong: wrongs, look: looks, findings }));
  } else {
    for (const finding of findings) io.stdout(linesOf(finding));
    io.stdout(`\n${summary(wrongs, looks)}`);
  }
  return wrongs === 0 ? 0 : 1;
}

async function lookAround(settings: Settings, clock: WallClock): Promise<Finding[]> {
  const { data, http, mqtt, site } = settings;
  const now = clock.now();
  const file = databaseFile(data);
  const findings = [lookAtFolder(data), ...lookAtDisk(data)];
  let daemonRuns = false;
  try {
    daemonRuns = heldByDaemon(file);
  } catch {
    // A lock that may not be read was told of as a fault of the folder.
  }
  const { findings: ofData, newestAt, readable } = lookAtData(file, now);
  // The clock is judged as the daemon judges it: by what is on record.
  if (readable) readOnce(file, (reader) => teachClock(clock, reader));
  else clock.learn({ newestAt: null, trustedBoot: null });
  await clock.ask();
  const whoWorks = daemonRuns ? 'A daemon works' : 'No daemon works';
  findings.push(...ofData, ok('database', `${whoWorks} on the data folder now.`));
  findings.push(lookAtBackups(settings, now));
  findings.push(
    lookAtClock({
      now,
      trusted: clock.trusted(),
      doubts: clock.doubts().map(({ text }) => text),
      newestAt,
    }),
  );
  findings.push(
    await lookAtPort({ about: 'pages', flag: '--http', ...http, daemonRuns }, () =>
      whoServesPages(http.host, http.port, http.tls),
    ),
  );
  if (mqtt.external !== null) findings.push(await lookAtBroker(mqtt.external, site));
  else {
    const { host, port } = mqtt;
    findings.push(
      await lookAtPort({ about: 'broker', flag: '--mqtt', host, port, daemonRuns }, () =>
        whoTakesMessages(host, port, site, daemonRuns),
      ),
    );
  }
  return findings;
}

/** A finding for people: how it is, what about, what was found, and below it what to do. */
function linesOf({ about, level, says, doThis }: Finding): string {
  const first = `${level.padEnd(5)}  ${about.padEnd(8)}  ${says}`;
  return doThis === null ? first : `${first}\n${' '.repeat(17)}→ ${doThis}`;
}

function summary(wrongs: number, looks: number): string {
  if (wrongs === 0 && looks === 0) return 'All is in order.';
  const parts = [
    ...(wrongs > 0 ? [`${wrongs} wrong`] : []),
    ...(looks > 0 ? [`${looks} worth a look`] : []),
  ];
  return `${parts.join(', ')}; the lines above say what to do.`;
}
