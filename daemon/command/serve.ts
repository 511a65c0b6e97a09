import { pino } from 'pino';
import { startDaemon } from '../main.ts';
import { liveSettings } from '../settings/live.ts';
import { readSettings, SettingsError } from '../settings/load.ts';
import { wallClock } from '../wall-clock.ts';
import type { CommandIo } from './command-io.ts';
import { serviceManager } from './service-manager.ts';

/** `boardcure serve`: runs the daemon until it is asked to stop. Returns the exit code. */
export async function serve(args: string[], io: CommandIo): Promise<number> {
  const load = () => readSettings({ args, env: io.env, cwd: io.cwd });
  let live: ReturnType<typeof liveSettings>;
  let origins: ReturnType<typeof load>['origins'];
  try {
    const first = load();
    origins = first.origins;
    live = liveSettings(first.settings);
  } catch (cause) {
    if (!(cause instanceof SettingsError)) throw cause;
    io.stderr(cause.message);
    return 2;
  }
  const { settings } = live;
  // The standard output belongs to the ready line; the log goes to standard error.
  const log = pino({ level: settings.log.level }, pino.destination({ dest: 2, sync: true }));
  io.onReload?.(() => {
    try {
      const anew = load();
      const changes = live.take(anew.settings);
      origins = anew.origins;
      log.level = settings.log.level;
      const atOnce = changes.filter((change) => change.atOnce).map(({ name }) => name);
      log.info({ atOnce, fromNextStart: live.waiting() }, 'the settings were read anew');
    } catch (cause) {
      if (!(cause instanceof SettingsError)) throw cause;
      log.error({ faults: cause.message }, 'the settings were not read anew; those of before hold');
    }
  });
  let daemon: Awaited<ReturnType<typeof startDaemon>>;
  try {
    daemon = await startDaemon({
      settings,
      clock: wallClock({ longestGapMs: settings.cure.maxGapHours * 3_600_000 }),
      log,
      restartFor: live.waiting,
      origins: () => origins,
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
