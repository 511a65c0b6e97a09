import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const built = new URL('../../.build/', import.meta.url);

export interface HowToRun {
  /** Another folder than the one that the build makes, with a slash at its end. */
  build?: URL;
  /** A program that watches it, with its arguments. */
  tracer?: readonly string[];
}

/** A command of the built program in a process of its own. */
export interface RunningCommand {
  readonly process: ChildProcess;
  /** Lines on standard output so far. */
  readonly out: readonly string[];
  /** All that was said on standard error so far. */
  err(): string;
  /** Settles with the exit code; null when a signal ended it. */
  readonly ended: Promise<number | null>;
}

/** The daemon in a process of its own, as the operator runs it. */
export interface RunningDaemon extends RunningCommand {
  readonly http: number;
  /** Port of the embedded broker; null with an external one. */
  readonly mqtt: number | null;
  /** Asks it to stop, and settles with the exit code. */
  stop(): Promise<number | null>;
  /** As when the power is cut. */
  kill(): Promise<void>;
}

/**
 * Starts a command of the built program.
 *
 * @param args - what stands after the program's name
 */
export function runCommand(args: readonly string[], how: HowToRun = {}): RunningCommand {
  // A build with a planted fault has no bundle.
  const cli = how.build
    ? new URL('daemon/command/cli.js', how.build)
    : new URL('bundle/cli.js', built);
  if (!existsSync(fileURLToPath(cli))) throw new Error('Build first: npm run build');
  const code = `import(${JSON.stringify(cli.href)}).then((it) => it.run(process.argv.slice(1)))`;
  const words = [...(how.tracer ?? []), process.execPath, '-e', code, '--', ...args];
  const child = spawn(words[0] ?? '', words.slice(1), {
    stdio: ['ignore', 'pipe', 'pipe'],
    env: { ...process.env, BOARDCURE_LOG: 'warn' },
  });
  const out: string[] = [];
  let rest = '';
  let err = '';
  child.stdout?.on('data', (bytes: Buffer) => {
    const lines = (rest + bytes.toString()).split('\n');
    rest = lines.pop() ?? '';
    out.push(...lines);
    for (const line of lines) child.emit('line', line);
  });
  child.stderr?.on('data', (bytes: Buffer) => {
    err += bytes.toString();
  });
  const ended = once(child, 'close').then(([exitCode]) => exitCode as number | null);
  return { process: child, out, err: () => err, ended };
}

/**
 * Starts the daemon and waits for its ready line.
 *
 * @param data - its folder
 * @param ports - of the pages and the broker; free ones when left out; `mqtt` may be another
 *   broker's address; `config` is a settings file
 * @throws Error with what it said when it ended before it was ready
 */
export async function startDaemon(
  data: string,
  ports: { http?: number; mqtt?: number | string; config?: string } = {},
  how: HowToRun = {},
): Promise<RunningDaemon> {
  const mqtt = ports.mqtt ?? 0;
  const command = runCommand(
    [
      ...['--data', data, '--http', `127.0.0.1:${ports.http ?? 0}`],
      ...['--mqtt', typeof mqtt === 'string' ? mqtt : `127.0.0.1:${mqtt}`],
      ...(ports.config === undefined ? [] : ['--config', ports.config]),
    ],
    how,
  );
  const line = new Promise<string>((resolve) => command.process.once('line', resolve));
  const first = await Promise.race([line, command.ended]);
  if (typeof first !== 'string') {
    throw new Error(`The daemon ended with ${first} before it was ready: ${command.err()}`);
  }
  const ready = JSON.parse(first) as { http: number; mqtt: number | null };
  return {
    ...command,
    http: ready.http,
    mqtt: ready.mqtt,
    async stop() {
      command.process.kill('SIGTERM');
      return command.ended;
    },
    async kill() {
      command.process.kill('SIGKILL');
      await command.ended;
    },
  };
}
