import { type ChildProcess, fork } from 'node:child_process';
import { once } from 'node:events';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { BoardcureError } from './contract/problem.ts';
import type { SimulatedShed } from './contract/site.ts';
import type { DaemonLog } from './daemon-log.ts';
import type { SimulatedShedPort } from './http/own-site-port.ts';

const usualSpeed = 900;
/** A simulation that somebody forgot must not keep a small computer busy for a year. Assumption. */
const longestMs = 2 * 3_600_000;
/** How long it may take to end by itself before it is ended. */
const patienceMs = 10_000;

interface SimulatedShedParts {
  /** Address that pages are served on. */
  host: string;
  /** Whether this daemon is a simulated shed itself: one within another helps nobody. */
  isSimulated: () => boolean;
  log: DaemonLog;
  /** The compiled program; only tests give another one. */
  programUrl?: URL;
}

/**
 * The simulated shed beside a site: a whole daemon of its own in a process of its own, on free ports and
 * with a temporary folder that goes with it. So nothing invented can ever get among what is real, and
 * ending it leaves nothing to clean up in the site.
 */
export function simulatedShed({
  host,
  isSimulated,
  log,
  programUrl = new URL('./command/demo-process.js', import.meta.url),
}: SimulatedShedParts): SimulatedShedPort & { close(): Promise<void> } {
  let child: ChildProcess | null = null;
  let now: SimulatedShed = { state: 'off', port: null, speed: null, fault: null };

  function off(fault: string | null): void {
    child = null;
    now = { state: 'off', port: null, speed: null, fault };
  }

  async function stop(): Promise<void> {
    const running = child;
    if (running === null) return off(null);
    const gone = once(running, 'exit');
    // It asks its own daemon to close, and removes its folder.
    running.kill('SIGTERM');
    const ending = setTimeout(() => running.kill('SIGKILL'), patienceMs);
    await gone;
    clearTimeout(ending);
    off(null);
  }

  return {
    state: () => now,
    start(speed) {
      if (child !== null) return now;
      if (isSimulated()) {
        throw new BoardcureError('BC_STATE_CONFLICT', 'This is a simulated shed already.');
      }
      const pace = speed ?? usualSpeed;
      const bound = host.includes(':') ? `[${host}]` : host;
      const started = fork(
        fileURLToPath(programUrl),
        ['--http', `${bound}:0`, '--mqtt', '127.0.0.1:0', '--speed', String(pace)],
        // Its own words would look like ours; what it dies of is kept.
        { stdio: ['ignore', 'pipe', 'pipe', 'ipc'], execArgv: [] },
      );
      child = started;
      now = { state: 'starting', port: null, speed: pace, fault: null };
      const forgotten = setTimeout(() => void stop(), longestMs);
      forgotten.unref();
      if (started.stdout) {
        createInterface({ input: started.stdout }).on('line', (line) => {
          const port = portOf(line);
          if (port !== null && child === started) now = { ...now, state: 'running', port };
        });
      }
      let last = '';
      started.stderr?.on('data', (chunk: Buffer) => {
        last = chunk.toString('utf8').trim().split('\n').at(-1) ?? last;
      });
      started.once('error', (cause) => {
        last = cause.message;
      });
      started.once('exit', (code, signal) => {
        clearTimeout(forgotten);
        if (child !== started) return;
        const fault = code === 0 || signal === 'SIGTERM' ? null : last || `code ${code ?? signal}`;
        if (fault !== null) log.warn({ fault }, 'the simulated shed ended by itself');
        off(fault);
      });
      log.info({ speed: pace }, 'a simulated shed was started beside this site');
      return now;
    },
    stop,
    close: stop,
  };
}

/** The port of the page in the ready line; null for any other line. */
function portOf(line: string): number | null {
  if (!line.startsWith('{')) return null;
  try {
    const said = JSON.parse(line) as { event?: unknown; http?: unknown };
    return said.event === 'ready' && typeof said.http === 'number' ? said.http : null;
  } catch {
    return null;
  }
}
