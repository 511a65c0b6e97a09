import { setTimeout as pause } from 'node:timers/promises';
import { connectPublisher, type Publisher } from '../../sensors/publish/publisher.ts';
import type { CommandIo } from './command-io.ts';
import { openCsv } from './replay-csv.ts';
import { REPLAY_USAGE, type ReplayOptions, replayOptions } from './replay-options.ts';
import { type Progress, replayProgress } from './replay-progress.ts';
import { ReplayRefusal } from './replay-refusal.ts';
import { rowReader } from './replay-rows.ts';

/** Faulty rows named one by one; the rest is only counted. */
const FAULTS_NAMED = 5;
/** Readings that may be unacknowledged at once. */
const WINDOW = 200;

interface Tally {
  rows: number;
  skipped: number;
  missing: number;
}

/**
 * `boardcure replay`: sends a recording to a running daemon through a real MQTT connection.
 *
 * @param args - what follows the word `replay`
 * @param io - where lines go, and when to stop
 * @returns exit code: 0 when the recording was sent, though faulty rows may have been skipped; 1
 *   when nothing could be sent or it was stopped
 */
export async function replay(args: string[], io: CommandIo): Promise<number> {
  try {
    const options = replayOptions(args, io.cwd);
    if (options === null) {
      io.stderr(REPLAY_USAGE);
      return 0;
    }
    return await send(options, io);
  } catch (error) {
    if (!(error instanceof ReplayRefusal)) throw error;
    io.stderr(error.message);
    return 1;
  }
}

async function send(options: ReplayOptions, io: CommandIo): Promise<number> {
  const started = performance.now();
  const file = await openCsv(options.file, options.delimiter);
  const progress = replayProgress(process.stderr.isTTY ? process.stderr : null, io.stderr);
  const tally: Tally = { rows: 0, skipped: 0, missing: 0 };
  let publisher: Publisher | null = null;
  let stopped = false;
  try {
    publisher = await connect(options, io, progress);
    await feed(file, options, publisher, tally, progress, io.stop);
    await publisher.drained();
    progress.show(1, publisher.counts().acknowledged);
  } catch (error) {
    if (!io.stop.aborted) throw error;
    stopped = true;
  } finally {
    progress.close();
    await publisher?.close();
  }
  const { published, acknowledged } = publisher?.counts() ?? { published: 0, acknowledged: 0 };
  const seconds = Number(((performance.now() - started) / 1000).toFixed(3));
  io.stdout(JSON.stringify({ event: 'replayed', ...tally, published, acknowledged, seconds }));
  if (tally.skipped > FAULTS_NAMED) {
    io.stderr(`${tally.skipped - FAULTS_NAMED} more faulty rows were counted, not named.`);
  }
  if (stopped) io.stderr('Stopped before the end; replay it again, readings are not doubled.');
  else if (acknowledged === 0)
    io.stderr('Nothing was sent: the file has no row that could be used.');
  return stopped || acknowledged === 0 ? 1 : 0;
}

async function connect(
  options: ReplayOptions,
  io: CommandIo,
  progress: Progress,
): Promise<Publisher> {
  try {
    return await connectPublisher({
      url: options.url,
      site: options.site,
      name: 'boardcure-replay',
      window: WINDOW,
      stop: io.stop,
      onLink: (state) =>
        progress.say(
          state === 'lost'
            ? 'The connection was lost; trying again until it is back.'
            : 'Connected again; sending what was not acknowledged.',
        ),
    });
  } catch (cause) {
    const shown = new URL(options.url);
    shown.username = '';
    shown.password = '';
    throw new ReplayRefusal(
      `No broker at ${shown.href} (${reasonOf(cause)}). Start the daemon with npm start, or give its broker with --mqtt host:port.`,
      { cause },
    );
  }
}

/** Some network errors carry only a code and an empty message. */
function reasonOf(error: unknown): string {
  const { message, code } = error as NodeJS.ErrnoException;
  return message || code || 'no answer';
}

async function feed(
  file: Awaited<ReturnType<typeof openCsv>>,
  options: ReplayOptions,
  publisher: Publisher,
  tally: Tally,
  progress: Progress,
  stop: AbortSignal,
): Promise<void> {
  let readRow: ReturnType<typeof rowReader> | null = null;
  const wait = pacer(options.speed, stop);
  const skip = (line: number, faults: readonly string[]) => {
    tally.skipped += 1;
    if (tally.skipped <= FAULTS_NAMED) progress.say(`Line ${line}: ${faults.join('; ')}.`);
  };
  for await (const record of file.records()) {
    if (record.kind === 'cells' && readRow === null) {
      readRow = rowReader(record.cells, options, file.delimiter);
      continue;
    }
    tally.rows += 1;
    if (record.kind === 'broken') {
      skip(record.line, [record.because]);
      continue;
    }
    const row = readRow?.(record.cells);
    if (row === undefined) continue;
    if (row.faults.length > 0) skip(record.line, row.faults);
    tally.missing += row.missing;
    for (const reading of row.readings) {
      await wait(reading.at);
      await publisher.publish(reading);
    }
    progress.show(record.bytes / file.bytes, publisher.counts().acknowledged);
  }
}

/** Holds readings back so that time passes as recorded, a factor faster. */
function pacer(speed: number | null, stop: AbortSignal): (at: number) => Promise<void> {
  if (speed === null) return async () => {};
  let start: { at: number; real: number } | null = null;
  return async (at) => {
    start ??= { at, real: performance.now() };
    const due = start.real + (at - start.at) / speed;
    const waitMs = due - performance.now();
    if (waitMs > 1) await pause(waitMs, undefined, { signal: stop });
  };
}
