import { mkdtemp, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { pino } from 'pino';
import { connectPublisher, type Publisher } from '../../sensors/publish/publisher.ts';
import { CART_SHED } from '../../sensors/shed/cart-shed.ts';
import { drawnFaults } from '../../sensors/shed/drawn-shed.ts';
import { seededRandom } from '../../sensors/shed/physics/random.ts';
import { createShed } from '../../sensors/shed/shed.ts';
import { type FastClock, fastClock } from '../clock.ts';
import { startDaemon } from '../main.ts';
import { loadSettings } from '../settings/load.ts';
import type { CommandIo } from './command-io.ts';
import { apiAt } from './demo-api.ts';
import { DEMO_BEGINS, layOutHistory, RECORDED_MS, sendUntil } from './demo-history.ts';
import { demoLoad } from './demo-load.ts';
import { DEMO_USAGE, type DemoOptions, demoOptions } from './demo-options.ts';

const TICK_MS = 250;
/** Faults that are asked for begin within so many days. */
const FAULTY_DAYS = 30;

/**
 * `boardcure demo`: the same daemon with a simulated shed whose time runs fast.
 *
 * @param args - what follows the word `demo`
 * @param io - where lines go, and when to stop
 * @returns exit code: 0 when it ran until it was asked to stop, 1 when it could not
 */
export async function demo(args: string[], io: CommandIo): Promise<number> {
  const command = demoOptions(args, io.cwd);
  if (command.kind === 'load') return demoLoad(command.options, io);
  if (command.kind !== 'run') {
    io.stderr(command.kind === 'help' ? DEMO_USAGE : command.because);
    return command.kind === 'help' ? 0 : 1;
  }
  const { options } = command;
  if (options.data !== null && !(await isEmpty(options.data))) {
    io.stderr(
      `${options.data} already holds something, and the demo starts from nothing. Give --data an empty folder, or leave it out.`,
    );
    return 1;
  }
  const data = options.data ?? (await mkdtemp(join(tmpdir(), 'boardcure-demo-')));
  try {
    return await runIn(data, options, io);
  } finally {
    if (options.data === null) await rm(data, { recursive: true, force: true });
  }
}

async function isEmpty(folder: string): Promise<boolean> {
  try {
    return (await readdir(folder)).length === 0;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return true;
    throw error;
  }
}

async function runIn(data: string, options: DemoOptions, io: CommandIo): Promise<number> {
  // the recorded past is laid out while time stands almost still
  const clock = fastClock(DEMO_BEGINS, 1);
  const log = pino(
    { level: io.env.BOARDCURE_LOG ?? 'warn' },
    pino.destination({ dest: 2, sync: true }),
  );
  let settings: ReturnType<typeof loadSettings>;
  let daemon: Awaited<ReturnType<typeof startDaemon>>;
  try {
    settings = loadSettings({
      args: ['--data', data, '--http', options.http, '--mqtt', options.mqtt],
      // the demo must not take on the settings of a real shed on the same computer
      env: {},
      cwd: data,
    });
    daemon = await startDaemon({ settings, clock, log });
  } catch (error) {
    io.stderr(error instanceof Error ? error.message : String(error));
    if (portIsTaken(error)) {
      io.stderr('For example: npm start -- demo --http 8090 --mqtt 1893 (0 picks a free port).');
    }
    return 1;
  }
  let publisher: Publisher | null = null;
  try {
    const { ready } = daemon;
    publisher = await connectPublisher({
      url: `mqtt://127.0.0.1:${ready.mqtt}`,
      site: settings.site,
      name: 'boardcure-demo',
      stop: io.stop,
    });
    const lost = daemon.failed.then((error) => Promise.reject(error));
    await Promise.race([live(publisher, clock, options, ready, io), lost]);
  } catch (error) {
    if (!io.stop.aborted) throw error;
  } finally {
    await publisher?.close();
    await daemon.close();
  }
  return 0;
}

async function live(
  publisher: Publisher,
  clock: FastClock,
  options: DemoOptions,
  ready: { readonly http: number },
  io: CommandIo,
): Promise<void> {
  io.stderr('Laying out four days of a simulated shed …');
  const faults = drawnFaults(seededRandom(options.seed, 11), CART_SHED.sensors, {
    ...{ startAt: DEMO_BEGINS, days: FAULTY_DAYS, faults: options.faults },
  });
  const shed = createShed({
    seed: options.seed,
    startAt: DEMO_BEGINS - RECORDED_MS,
    plan: { ...CART_SHED, faults },
  });
  const api = apiAt(`http://127.0.0.1:${ready.http}`);
  const operator = await layOutHistory(shed, publisher, api);
  clock.setSpeed(options.speed);
  io.stdout(JSON.stringify(ready));
  io.stderr(
    `This is a simulation: invented boards, sensors and weather, ${options.speed} times faster than life.`,
  );
  io.stderr(`Look at it on http://localhost:${ready.http} and stop it with Ctrl+C.`);
  while (!io.stop.aborted) {
    await sendUntil(shed, publisher, clock.now());
    await operator.lookAround();
    await pause(TICK_MS, undefined, { signal: io.stop });
  }
}

/** Whether an address in use is what lies beneath an error. */
function portIsTaken(error: unknown): boolean {
  for (let each = error; each instanceof Error; each = each.cause) {
    if ((each as NodeJS.ErrnoException).code === 'EADDRINUSE') return true;
  }
  return false;
}
