import { pino } from 'pino';
import { startDaemon } from '../main.ts';
import { readGround, SettingsError } from '../settings/load.ts';
import { type StandingSettings, standingSettings } from '../settings/standing.ts';
import { wallClock } from '../wall-clock.ts';
import type { CommandIo } from './command-io.ts';
import { serviceManager } from './service-manager.ts';

/** `boardcure serve`: runs the daemon until it is asked to stop. Returns the exit code. */
export async function serve(args: string[], io: CommandIo): Promise<number> {
  let standing: StandingSettings;
  try {
    standing = standingSettings(() => readGround({ args, env: io.env, cwd: io.cwd }));
  } catch (cause) {
    if (!(cause instanceof SettingsError)) throw cause;
    io.stderr(cause.message);
    return 2;
  }
  const { settings } = standing;
  // The standard output belongs to the ready line; the log goes to standard error.
  const log = pino({ level: settings.log.level }, pino.destination({ dest: 2, sync: true }));
  const tellDoubts = () => {
    for (const { name, because } of standing.doubts()) {
      log.warn(
        { setting: name, because: because.text },
        'what was chosen on the page does not hold',
      );
    }
  };
  tellDoubts();
  standing.onChange((changes) => {
    log.level = settings.log.level;
    const atOnce = changes.filter((change) => change.atOnce).map(({ name }) => name);
    log.info({ atOnce, fromNextStart: standing.waiting() }, 'settings were read anew or chosen');
    tellDoubts();
  });
  io.onReload?.(() => {
    try {
      standing.reload();
    } catch (cause) {
      if (!(cause instanceof SettingsError)) throw cause;
      log.error({ faults: cause.message }, 'the settings were not read anew; those of before hold');
    }
  });
  let daemon: Awaited<ReturnType<typeof startDaemon>>;
  try {
    daemon = await startDaemon({
      settings: standing,
      clock: wallClock({ longestGapMs: settings.cure.maxGapHours * 3_600_000 }),
      log,
    });
  } catch (cause) {
    io.stderr(cause instanceof Error ? cause.message : String(cause));
    return 1;
  }
  const manager = serviceManager(io.env);
  const { http, mqtt } = daemon.ready;
  io.stdout(JSON.stringify(daemon.ready));
  manager.ready(`Pages at port ${http}${mqtt === null ? '' : `, sensors at port ${mqtt}`}.`);
  const stopWatching = manager.watch(daemon.answers);
  const scheme = daemon.ready.tls ? 'https' : 'http';
  io.stderr(`Open ${scheme}://localhost:${daemon.ready.http} in a browser.`);
  if (daemon.setUpCode !== null) io.stderr(setUpWords(daemon.setUpCode));
  const stopped = new Promise<null>((resolve) => {
    if (io.stop.aborted) resolve(null);
    io.stop.addEventListener('abort', () => resolve(null), { once: true });
  });
  const failure = await Promise.race([stopped, daemon.failed]);
  stopWatching();
  manager.stopping();
  if (failure) {
    log.error({ cause: failure.message }, 'the daemon cannot go on');
    return 1;
  }
  await daemon.close();
  return 0;
}

const setUpWords = (code: string): string =>
  `No PIN is set: changes are taken from this computer only. To choose one from another device, open the page there, “Access”, and type this code, good once and for a day: ${code}`;
