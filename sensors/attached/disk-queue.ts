import {
  closeSync,
  fsyncSync,
  ftruncateSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { join } from 'node:path';
import { readSegment, recordLine, type SegmentRecord } from './queue-record.ts';

/** A first-in, first-out queue in a folder. A text leaves it only when it is let go. */
export interface DiskQueue {
  /** Adds texts without newlines; on disk when it returns. @throws when the disk does not take them */
  append(bodies: readonly string[]): void;
  /** The oldest texts, at most so many, in their order; they stay. */
  oldest(most: number): readonly Waiting[];
  /** Lets this text and all older ones go, for good. */
  letGo(through: Waiting): void;
  counts(): QueueCounts;
  close(): void;
}

export interface Waiting {
  /** counts up from text to text while the queue is open */
  readonly sequence: number;
  readonly body: string;
}

export interface QueueCounts {
  readonly waiting: number;
  readonly bytes: number;
  /** let go unsent because the bound was reached, since the queue was made */
  readonly dropped: number;
  /** found damaged on disk since it was opened */
  readonly damaged: number;
}

interface Segment {
  readonly number: number;
  bytes: number;
  /** up to which it was let go, bytes */
  from: number;
  /** sequence of its first text that waits */
  first: number;
  waiting: number;
  /** the texts that wait, where they were needed; all others stay on disk alone */
  loaded: SegmentRecord[] | null;
}

interface Position {
  readonly segment: number;
  /** up to which the oldest segment was let go */
  readonly bytes: number;
  readonly dropped: number;
}

const NAME = /^(\d{10})\.queue$/;
const POSITION = 'position.json';
/** Only whole files are dropped, so one is small against the bound. */
const SEGMENTS_AT_LEAST = 8;
const SEGMENT_BYTES = 262_144;
export const SMALLEST_BOUND_BYTES = 65_536;

/**
 * Opens the queue in a folder, made where it is missing.
 *
 * Texts lie in numbered files that are only ever added to; a file goes when all of it was let go, or
 * as the oldest when the bound is reached. How far the oldest was let go is noted beside them without
 * a sync: after a power cut some of it is handed out again, never too little.
 *
 * @param folder - of this queue alone
 * @param maxBytes - bound on all files, {@link SMALLEST_BOUND_BYTES} or more
 * @throws RangeError on a smaller bound; Error of the file system when the folder cannot be used
 */
export function openDiskQueue(folder: string, maxBytes: number): DiskQueue {
  if (!(maxBytes >= SMALLEST_BOUND_BYTES)) {
    throw new RangeError(`maxBytes is ${maxBytes}; allowed: ${SMALLEST_BOUND_BYTES} or more`);
  }
  mkdirSync(folder, { recursive: true });
  const segmentBytes = Math.min(SEGMENT_BYTES, Math.floor(maxBytes / SEGMENTS_AT_LEAST));
  const fileOf = (number: number) => join(folder, `${String(number).padStart(10, '0')}.queue`);
  const positionFile = join(folder, POSITION);
  const noted = readPosition(positionFile);
  let { dropped } = noted;
  let damaged = 0;
  let sequence = 0;

  const segments: Segment[] = [];
  for (const name of readdirSync(folder).sort()) {
    const number = Number(NAME.exec(name)?.[1] ?? Number.NaN);
    if (Number.isNaN(number)) continue;
    const { records, wholeBytes, damaged: passedOver } = readSegment(readFileSync(fileOf(number)));
    damaged += passedOver;
    const from = number === noted.segment ? noted.bytes : 0;
    const waiting = records.filter(({ endsAt }) => endsAt > from).length;
    segments.push({ number, bytes: wholeBytes, from, first: sequence, waiting, loaded: null });
    sequence += waiting;
  }
  if (segments.length === 0) addSegment(noted.segment + 1);
  let handle = openSync(fileOf(newest().number), 'a');
  // a torn end goes, so that what is added next begins on a line of its own
  ftruncateSync(handle, newest().bytes);
  syncFolder(folder);

  function newest(): Segment {
    return segments.at(-1) as Segment;
  }

  function addSegment(number: number): void {
    segments.push({ number, bytes: 0, from: 0, first: sequence, waiting: 0, loaded: null });
  }

  function beginSegment(): void {
    closeSync(handle);
    // a long queue is not held in memory
    newest().loaded = null;
    addSegment(newest().number + 1);
    handle = openSync(fileOf(newest().number), 'a');
    syncFolder(folder);
  }

  function removeOldest(): void {
    const [oldest] = segments.splice(0, 1);
    if (oldest !== undefined) rmSync(fileOf(oldest.number), { force: true });
  }

  function load(segment: Segment): SegmentRecord[] {
    segment.loaded ??= readSegment(readFileSync(fileOf(segment.number))).records.filter(
      ({ endsAt }) => endsAt > segment.from,
    );
    return segment.loaded;
  }

  function note(): void {
    const oldest = segments[0] as Segment;
    const position: Position = { segment: oldest.number, bytes: oldest.from, dropped };
    writeFileSync(`${positionFile}.new`, JSON.stringify(position));
    renameSync(`${positionFile}.new`, positionFile);
  }

  const total = () => segments.reduce((sum, { bytes }) => sum + bytes, 0);

  return {
    append(bodies) {
      if (newest().bytes >= segmentBytes) beginSegment();
      const segment = newest();
      const bytes = Buffer.from(bodies.map(recordLine).join(''));
      try {
        if (writeSync(handle, bytes) < bytes.length) throw new Error('The disk is full.');
        fsyncSync(handle);
      } catch (cause) {
        // part of it may stand there: what counts is what was whole before
        ftruncateSync(handle, segment.bytes);
        throw cause;
      }
      for (const body of bodies) {
        segment.bytes += lineBytes(body);
        segment.loaded?.push({ body, endsAt: segment.bytes });
      }
      segment.waiting += bodies.length;
      sequence += bodies.length;
      let lost = 0;
      while (total() > maxBytes && segments.length > 1) {
        lost += segments[0]?.waiting ?? 0;
        removeOldest();
      }
      if (lost === 0) return;
      dropped += lost;
      note();
    },
    oldest(most) {
      const found: Waiting[] = [];
      for (const segment of segments) {
        if (found.length >= most) break;
        if (segment.waiting === 0) continue;
        const texts = load(segment).slice(0, most - found.length);
        found.push(...texts.map(({ body }, index) => ({ sequence: segment.first + index, body })));
      }
      return found;
    },
    letGo(through) {
      for (const segment of [...segments]) {
        const count = Math.min(segment.waiting, through.sequence + 1 - segment.first);
        if (count <= 0) continue;
        segment.from = load(segment).splice(0, count).at(-1)?.endsAt ?? segment.from;
        segment.first += count;
        segment.waiting -= count;
        if (segment.waiting > 0) break;
        if (segments.length > 1) removeOldest();
        else if (segment.bytes >= segmentBytes) {
          beginSegment();
          removeOldest();
        }
      }
      note();
    },
    counts: () => ({
      waiting: segments.reduce((sum, { waiting }) => sum + waiting, 0),
      bytes: total(),
      dropped,
      damaged,
    }),
    close: () => closeSync(handle),
  };
}

const lineBytes = (body: string) => Buffer.byteLength(recordLine(body));

function readPosition(file: string): Position {
  try {
    const { segment, bytes, dropped } = JSON.parse(readFileSync(file, 'utf8'));
    if ([segment, bytes, dropped].every(Number.isSafeInteger)) return { segment, bytes, dropped };
  } catch {
    // none yet, or torn: everything is handed out again, which own times make harmless
  }
  return { segment: 0, bytes: 0, dropped: 0 };
}

/** A new name in a folder is on disk only when the folder is. */
function syncFolder(folder: string): void {
  const handle = openSync(folder, 'r');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}
