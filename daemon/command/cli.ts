import { setFlagsFromString } from 'node:v8';
import type { CommandIo } from './command-io.ts';

type Command = (args: string[], io: CommandIo) => Promise<number>;

/** Each command is loaded only when it is asked for. */
const commands: Record<string, { about: string; load: () => Promise<Command> }> = {
  serve: {
    about: 'run the daemon (the default)',
    load: async () => (await import('./serve.ts')).serve,
  },
  demo: {
    about: 'run it with a simulated shed, at high speed',
    load: async () => (await import('./demo.ts')).demo,
  },
  replay: {
    about: 'feed a recording from a CSV file into a running daemon over MQTT',
    load: async () => (await import('./replay.ts')).replay,
  },
  backup: {
    about: 'copy the database into one file, also while the daemon runs',
    load: async () => (await import('./backup.ts')).backup,
  },
  restore: {
    about: 'put a backup in the place of the database',
    load: async () => (await import('./restore.ts')).restore,
  },
  export: {
    about: 'write everything into a folder as CSV and JSON',
    load: async () => (await import('./export.ts')).exportSite,
  },
  doctor: {
    about: 'look at settings, ports, folder, disk, clock, database and broker',
    load: async () => (await import('./doctor.ts')).doctor,
  },
  pin: {
    about: 'choose, change or remove the PIN that changes are made with',
    load: async () => (await import('./pin.ts')).pin,
  },
  forecast: {
    about: 'send a weather forecast for outdoors from a CSV file to a running daemon',
    load: async () => (await import('./forecast.ts')).forecast,
  },
};

const usage = [
  'Usage: boardcure [command] [options]',
  ...Object.entries(commands).map(([name, { about }]) => `  ${name.padEnd(8)} ${about}`),
  'Options of serve: --data <folder>  --http [host:]port  --mqtt [host:]port | mqtt://host:port',
  '  --site <name>  --config <file>',
  'The other commands tell theirs with --help.',
].join('\n');

/**
 * Runs one command and ends the process with its exit code.
 *
 * @param args - what stood after the program’s name
 */
export async function run(args: string[]): Promise<void> {
  // Clear away early rather than fill the memory there is; threads begun later do so too.
  setFlagsFromString('--optimize-for-size');
  const stop = new AbortController();
  for (const signal of ['SIGINT', 'SIGTERM'] as const) {
    process.once(signal, () => stop.abort());
  }
  // At a terminal it says that the terminal is gone; a service is asked to read its settings anew.
  const atTerminal = process.stdin.isTTY || process.stdout.isTTY;
  if (atTerminal) process.once('SIGHUP', () => stop.abort());
  const io: CommandIo = {
    stdout: (line) => process.stdout.write(`${line}\n`),
    stderr: (line) => process.stderr.write(`${line}\n`),
    env: process.env,
    cwd: process.cwd(),
    stop: stop.signal,
    ...(atTerminal ? {} : { onReload: (act) => void process.on('SIGHUP', act) }),
  };
  const [first, ...rest] = args;
  const asked = first === 'serve' ? rest[0] : first;
  if (asked === '--help' || asked === '-h' || asked === 'help') {
    io.stdout(usage);
    return;
  }
  const isNamed = first !== undefined && !first.startsWith('-');
  const command = commands[isNamed ? first : 'serve'];
  if (!command) {
    io.stderr(`There is no command "${first}".\n${usage}`);
    process.exitCode = 2;
    return;
  }
  try {
    const act = await command.load();
    process.exitCode = await act(isNamed ? rest : args, io);
  } catch (cause) {
    io.stderr(cause instanceof Error ? (cause.stack ?? cause.message) : String(cause));
    process.exitCode = 1;
  }
  // Nothing may keep the process alive once its command is done.
  process.exit();
}
