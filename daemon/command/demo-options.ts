import { isAbsolute, join } from 'node:path';
import { parseArgs } from 'node:util';

export interface DemoOptions {
  /** null: a temporary folder, removed at the end */
  readonly data: string | null;
  readonly http: string;
  readonly mqtt: string;
  /** how many times faster than the wall the shed's time runs */
  readonly speed: number;
  readonly seed: number;
}

export type DemoCommand =
  | { readonly kind: 'run'; readonly options: DemoOptions }
  | { readonly kind: 'help' }
  | { readonly kind: 'refused'; readonly because: string };

export const DEMO_USAGE = `boardcure demo [options]: the daemon with a simulated shed, its time running fast

  --http <[host:]port>   of the page (8080; 0 picks a free port)
  --mqtt <[host:]port>   of the broker (1883; 0 picks a free port)
  --speed <factor>       1 to 10000 (900: a day in 96 seconds, a coat in a few minutes)
  --seed <number>        another number, another shed (1)
  --data <folder>        keep the data in this empty folder (a temporary one, removed at the end)`;

const FASTEST = 10_000;

/**
 * Reads the command line of `demo`.
 *
 * @param args - what follows the word `demo`
 * @param cwd - folder that a relative `--data` is taken from
 * @returns the options, a wish for help, or why not
 */
export function demoOptions(args: readonly string[], cwd: string): DemoCommand {
  let values: ReturnType<typeof parsed>;
  try {
    values = parsed(args);
  } catch (error) {
    return { kind: 'refused', because: `${(error as Error).message}\n\n${DEMO_USAGE}` };
  }
  if (values.help === true) return { kind: 'help' };
  const speed = Number(values.speed);
  if (!(speed >= 1 && speed <= FASTEST)) {
    return {
      kind: 'refused',
      because: `--speed ${values.speed} is not a factor from 1 to ${FASTEST}.`,
    };
  }
  const seed = Number(values.seed);
  if (!Number.isSafeInteger(seed)) {
    return { kind: 'refused', because: `--seed ${values.seed} is not a whole number.` };
  }
  for (const [option, text] of [
    ['--http', values.http],
    ['--mqtt', values.mqtt],
  ] as const) {
    if (!/^(?:[^/]+:)?\d{1,5}$/.test(text)) {
      return { kind: 'refused', because: `${option} ${text} is not a port or host:port.` };
    }
  }
  const { data = null } = values;
  return {
    kind: 'run',
    options: {
      data: data === null || isAbsolute(data) ? data : join(cwd, data),
      http: values.http,
      mqtt: values.mqtt,
      speed,
      seed,
    },
  };
}

function parsed(args: readonly string[]) {
  return parseArgs({
    args: [...args],
    options: {
      help: { type: 'boolean', short: 'h' },
      data: { type: 'string' },
      http: { type: 'string', default: '8080' },
      mqtt: { type: 'string', default: '1883' },
      speed: { type: 'string', default: '900' },
      seed: { type: 'string', default: '1' },
    },
  }).values;
}
