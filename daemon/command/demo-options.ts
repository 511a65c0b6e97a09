import { isAbsolute, join } from 'node:path';
import { parseArgs } from 'node:util';
import type { LoadOptions } from './demo-load.ts';

export interface DemoOptions {
  /** null: a temporary folder, removed at the end */
  readonly data: string | null;
  readonly http: string;
  readonly mqtt: string;
  /** how many times faster than the wall the shed's time runs */
  readonly speed: number;
  readonly seed: number;
  /** how many sensors fail in the first month */
  readonly faults: number;
}

export type DemoCommand =
  | { readonly kind: 'run'; readonly options: DemoOptions }
  | { readonly kind: 'load'; readonly options: LoadOptions }
  | { readonly kind: 'help' }
  | { readonly kind: 'refused'; readonly because: string };

export const DEMO_USAGE = `boardcure demo [options]: the daemon with a simulated shed, its time running fast

  --http <[host:]port>   of the page (8080; 0 picks a free port)
  --mqtt <[host:]port>   of the broker (1883; 0 picks a free port)
  --speed <factor>       1 to 10000 (900: a day in 96 seconds, a coat in a few minutes)
  --seed <number>        another number, another shed (1)
  --faults <count>       so many sensors fail in the first month (0)
  --data <folder>        keep the data in this empty folder (a temporary one, removed at the end)

boardcure demo --load <sensors> [--rate <readings a second>] [--to <mqtt://host:port>]: no shed, only
the readings of many sensors (60 a second to mqtt://localhost:1883), for a daemon that runs already`;

const FASTEST = 10_000;
const MOST_FAULTS = 50;
const MOST_SENSORS = 100_000;
const FASTEST_RATE = 100_000;

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
  const faults = Number(values.faults);
  if (!(Number.isInteger(faults) && faults >= 0 && faults <= MOST_FAULTS)) {
    const because = `--faults ${values.faults} is not a whole number from 0 to ${MOST_FAULTS}.`;
    return { kind: 'refused', because };
  }
  if (values.load !== undefined) return loadCommand(values, seed);
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
      ...{ speed, seed, faults },
    },
  };
}

function loadCommand(
  values: { load?: string | undefined; rate: string; to: string },
  seed: number,
): DemoCommand {
  const [sensors, rate] = [Number(values.load), Number(values.rate)];
  if (!(Number.isInteger(sensors) && sensors >= 1 && sensors <= MOST_SENSORS)) {
    const because = `--load ${values.load} is not a whole number from 1 to ${MOST_SENSORS}.`;
    return { kind: 'refused', because };
  }
  if (!(rate > 0 && rate <= FASTEST_RATE)) {
    const because = `--rate ${values.rate} is not a number above 0 up to ${FASTEST_RATE}.`;
    return { kind: 'refused', because };
  }
  if (!/^mqtts?:\/\/./.test(values.to)) {
    return { kind: 'refused', because: `--to ${values.to} is not mqtt://host:port.` };
  }
  return { kind: 'load', options: { to: values.to, sensors, rate, seed } };
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
      faults: { type: 'string', default: '0' },
      load: { type: 'string' },
      rate: { type: 'string', default: '60' },
      to: { type: 'string', default: 'mqtt://localhost:1883' },
    },
  }).values;
}
