import { readdirSync, statSync } from 'node:fs';
import { monitorEventLoopDelay } from 'node:perf_hooks';
import type { Clock } from './clock.ts';
import type { HttpParts } from './http/ports.ts';
import type { Readings } from './metrics.ts';
import { ownVersion } from './own-version.ts';
import { freeSpace } from './store/free-space.ts';

interface FigureParts {
  health: HttpParts['health'];
  facts: HttpParts['view']['facts'];
  notices: HttpParts['view']['notices'];
  clock: Clock;
  /** The database. */
  file: string;
  /** The data folder. */
  folder: string;
  /** Readings that wait to be written. */
  waiting(): number;
  isSettling(): boolean;
  /** When readings were last written; null before. */
  lastCommitAt(): number | null;
}

const nanosecondsPerSecond = 1e9;
/** How often the main loop is looked at. */
const loopLookMs = 20;

/** Where each figure of `GET /metrics` comes from; those that count as things happen are not here. */
export function siteFigures(parts: FigureParts) {
  const { health, facts, clock, file, folder } = parts;
  let pages = 0;
  const loop = monitorEventLoopDelay({ resolution: loopLookMs });
  loop.enable();
  const intake = () => health().intake;
  const traffic = () => health().clients;
  const look: Readings = {
    build: () => ({ [`${ownVersion()}\n${process.versions.node}`]: 1 }),
    readings: () => intake().accepted,
    repeated: () => intake().duplicates,
    flagged: () => intake().flagged,
    dropped: () => intake().dropped,
    waiting: parts.waiting,
    lastCommit: () => (parts.lastCommitAt() ?? 0) / 1000,
    diskFull: () => Number(intake().refusing),
    connected: () => {
      const { broker, connected } = health();
      return { [broker]: Number(connected) };
    },
    connections: () => traffic()?.connections ?? null,
    bestEffort: () => traffic()?.bestEffort ?? null,
    cutOff: () => traffic()?.cutOff ?? null,
    settling: () => Number(parts.isSettling()),
    doubts: () => health().reasons.length,
    clockTrusted: () => Number(clock.trusted()),
    sensors: () => facts().sensors.size,
    batchesOpen: () => [...facts().batches.values()].filter((one) => one.closedAt === null).length,
    noticesOpen: () =>
      parts.notices().filter((one) => one.clearedAt === null && one.seenAt === null).length,
    pages: () => pages,
    databaseBytes: () => databaseBytes(file),
    freeBytes: () => roomLeft(folder),
    loopDelay: () => {
      // What is measured is the whole time between two looks.
      const late = (nanoseconds: number) =>
        Math.max(0, nanoseconds / nanosecondsPerSecond - loopLookMs / 1000);
      const figures = {
        0.5: late(loop.percentile(50)),
        0.99: late(loop.percentile(99)),
        1: late(loop.max),
      };
      loop.reset();
      return figures;
    },
    startTime: () => (performance.timeOrigin || 0) / 1000,
    cpuSeconds: () => {
      const { user, system } = process.cpuUsage();
      return (user + system) / 1e6;
    },
    residentBytes: () => process.memoryUsage.rss(),
    heapBytes: () => process.memoryUsage().heapUsed,
    openFiles: () => openFiles(),
  };
  return {
    look,
    pagesListen(count: number): void {
      pages = count;
    },
    close: () => void loop.disable(),
  };
}

/** Null while the file is out of sight: a database of nothing would be another thing. */
function databaseBytes(file: string): { file: number; log: number } | null {
  const size = sizeOf(file);
  return size === null ? null : { file: size, log: sizeOf(`${file}-wal`) ?? 0 };
}

function sizeOf(file: string): number | null {
  return statSync(file, { throwIfNoEntry: false })?.size ?? null;
}

/** Null while the folder is gone: moved away or unmounted beneath the daemon. */
function roomLeft(folder: string): number | null {
  try {
    return freeSpace(folder).freeBytes;
  } catch {
    return null;
  }
}

/** Null where the system does not tell. */
function openFiles(): number | null {
  try {
    return readdirSync('/proc/self/fd').length;
  } catch {
    return null;
  }
}
