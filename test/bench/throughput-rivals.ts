import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { startMosquitto } from '../ingest/mosquitto.ts';
import { startDaemon } from '../journey/running-daemon.ts';
import type { Load, LoadResult, Shape } from './throughput-load.ts';

/** Processor time of who took readings in, ms: of all threads, and of the first alone. */
interface Spent {
  cpuMs?: number;
  firstThreadMs?: number;
}

/** Something that takes readings in, in a process of its own, at the full pace. */
export interface Rival {
  run(load: Load, shape: Shape, total: number): Promise<LoadResult & Spent>;
  close(): Promise<void>;
}

const build = new URL('../../.build/', import.meta.url).href;

function script(name: string, ...args: string[]): ChildProcess {
  const file = fileURLToPath(new URL(`./${name}.mjs`, import.meta.url));
  return spawn(process.execPath, [file, ...args], { stdio: ['ignore', 'pipe', 'inherit'] });
}

/** The lines that a child says, one after the other. */
function lines(child: ChildProcess, hear: (line: string) => void): void {
  let rest = '';
  child.stdout?.on('data', (bytes: Buffer) => {
    const all = (rest + bytes.toString()).split('\n');
    rest = all.pop() ?? '';
    for (const line of all) hear(line);
  });
}

const firstLine = (child: ChildProcess) =>
  new Promise<string>((resolve, reject) => {
    lines(child, resolve);
    child.once('exit', (code) => reject(new Error(`${child.spawnargs[1]} ended with ${code}`)));
  });

async function end(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null) return;
  const ended = once(child, 'exit');
  child.kill();
  await ended;
}

export const temporaryFolder = () => mkdtempSync(join(tmpdir(), 'boardcure-bench-'));

/** The daemon with its store and all, commits not spaced. */
export async function daemonRival(): Promise<Rival & { mqtt: number; http: number }> {
  const folder = temporaryFolder();
  const config = join(folder, 'settings.toml');
  writeFileSync(config, '[commit]\nspacingMs = 0\n');
  const daemon = await startDaemon(join(folder, 'data'), { config });
  const mqtt = daemon.mqtt ?? 0;
  const pid = daemon.process.pid ?? 0;
  return {
    ...{ mqtt, http: daemon.http },
    async run(load, shape, total) {
      const before = threadsMsOf(pid);
      const result = await load(mqtt, shape, total);
      const after = threadsMsOf(pid);
      return {
        ...result,
        cpuMs: after.all - before.all,
        firstThreadMs: after.first - before.first,
      };
    },
    async close() {
      await daemon.stop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/**
 * Processor time that a process has used so far with all its threads, ms.
 *
 * **Source:** proc(5), /proc/pid/stat: fields 14 and 15 (utime, stime) in clock ticks of 10 ms.
 */
function cpuMsOf(child: ChildProcess): number {
  const stat = readFileSync(`/proc/${child.pid}/stat`, 'utf8');
  const fields = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
  return (Number(fields[11]) + Number(fields[12])) * 10;
}

/**
 * The same to the microsecond, and apart for the first thread: the broker’s.
 *
 * **Source:** Documentation/scheduler/sched-stats.rst of Linux 6: /proc/pid/task/tid/schedstat, first
 * field, ns on the processor.
 */
function threadsMsOf(pid: number): { all: number; first: number } {
  const times = new Map(
    readdirSync(`/proc/${pid}/task`).map((thread) => {
      const stat = readFileSync(`/proc/${pid}/task/${thread}/schedstat`, 'utf8');
      return [Number(thread), Number(stat.split(' ')[0]) / 1e6] as const;
    }),
  );
  const all = [...times.values()].reduce((sum, ms) => sum + ms, 0);
  return { all, first: times.get(pid) ?? Number.NaN };
}

/** (a) The same broker with nothing behind it. */
export async function bareBroker(): Promise<Rival> {
  const child = script('throughput-bare-broker', build);
  const { port } = JSON.parse(await firstLine(child)) as { port: number };
  return {
    async run(load, shape, total) {
      const before = cpuMsOf(child);
      const result = await load(port, shape, total);
      return { ...result, cpuMs: cpuMsOf(child) - before };
    },
    close: () => end(child),
  };
}

/** (b) mosquitto and a minimal subscriber; a reading counts when the subscriber has it on disk. */
export async function mosquittoRival(groupSize: number): Promise<Rival> {
  const folder = temporaryFolder();
  const mosquitto = await startMosquitto();
  const file = join(folder, 'readings.sqlite');
  const child = script(
    'throughput-minimal-subscriber',
    ...[String(mosquitto.port), file, String(groupSize)],
  );
  let stored = -1;
  const waiting = new Set<() => void>();
  lines(child, (line) => {
    stored = Number(line);
    for (const look of waiting) look();
  });
  const reached = (count: number) =>
    new Promise<void>((resolve) => {
      const look = () => {
        if (stored < count) return;
        waiting.delete(look);
        resolve();
      };
      waiting.add(look);
      look();
    });
  await reached(0);
  return {
    async run(load, shape, total) {
      const before = stored;
      const began = performance.now();
      const { waitsMs } = await load(mosquitto.port, shape, total);
      await reached(before + total);
      return { elapsedMs: performance.now() - began, waitsMs };
    },
    async close() {
      await end(child);
      await mosquitto.remove();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** (c) The database alone, in groups of as many as are under way, a full group at most. */
export function rawInserts(groupSize: number): Rival {
  return {
    async run(_, { connections, inFlight }, total) {
      const folder = temporaryFolder();
      const size = Math.min(groupSize, connections * inFlight);
      const child = script(
        'throughput-raw-inserts',
        ...[join(folder, 'readings.sqlite'), String(size), String(total)],
      );
      const [elapsedMs = Number.NaN, cpuMs] = (await firstLine(child)).split(' ').map(Number);
      await end(child);
      rmSync(folder, { recursive: true, force: true });
      return { elapsedMs, waitsMs: [], ...(cpuMs === undefined ? {} : { cpuMs }) };
    },
    close: async () => {},
  };
}
