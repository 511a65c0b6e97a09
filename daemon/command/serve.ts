import { pino } from 'pino';
import { startDaemon } from '../main.ts';
import { loadSettings, SettingsError } from '../settings/load.ts';
import { wallClock } from '../wall-clock.ts';
import type { CommandIo } from './command-io.ts';

/** `boardcure serve`: runs the daemon until it is asked to stop. Returns the exit code. */
export async function serve(args: string[], io: CommandIo): Promise<number> {
  let settings: ReturnType<typeof loadSettings>;
  try {
    settings = loadSettings({ args, env: io.env, cwd: io.cwd });
  } catch (cause) {
    if (!(cause instanceof SettingsError)) throw cause;
    io.stderr(cause.message);
    return 2;
  }
  // The standard output belongs to the ready line; the log goes to standard error.
  const log = pino({ level: settings.log.level }, pino.destination({ dest: 2, sync: true }));
  let daemon: Awaited<ReturnType<typeof startDaemon>>;
  try {
    daemon = await startDaemon({
      settings,
      clock: wallClock({ longestGapMs: settings.cure.maxGapHours * 3_600_000 }),
      log,
    });
  } catch (cause) {
    io.stderr(cause instanceof Error ? cause.message : String(cause));
    return 1;
  }
  io.stdout(JSON.stringify(daemon.ready));
  io.stderr(`Open http://localhost:${daemon.ready.http} in a browser.`);
  const stopped = new Promise<null>((resolve) => {
    if (io.stop.aborted) resolve(null);
    io.stop.addEventListener('abort', () => resolve(null), { once: true });
  });
  const failure = await Promise.race([stopped, daemon.failed]);
  if (failure) {
    log.error({ cause: failure.message }, 'the daemon cannot go on');
    return 1;
  }
  await daemon.close();
  return 0;
}
