import { createHash } from 'node:crypto';

/** What a segment file holds, and how much of it is whole. */
export interface SegmentContent {
  readonly records: readonly SegmentRecord[];
  /** bytes up to which the file is whole; less than its length when its end is torn */
  readonly wholeBytes: number;
  /** records in the middle that are damaged, and are passed over */
  readonly damaged: number;
}

export interface SegmentRecord {
  readonly body: string;
  /** position after it in the file, bytes */
  readonly endsAt: number;
}

const CHECK_LETTERS = 16;

/** Start of the SHA-256 of a record; enough to tell a torn or damaged one. */
const checkOf = (body: string) =>
  createHash('sha256').update(body).digest('hex').slice(0, CHECK_LETTERS);

/**
 * A record as it stands in a segment file: checksum, space, body, newline.
 *
 * @param body - text without a newline
 */
export function recordLine(body: string): string {
  return `${checkOf(body)} ${body}\n`;
}

/**
 * Reads a segment file, also one whose writing was cut short.
 *
 * @param bytes - the whole file
 */
export function readSegment(bytes: Buffer): SegmentContent {
  const records: SegmentRecord[] = [];
  let wholeBytes = 0;
  let bad = 0;
  let damaged = 0;
  for (let from = 0; from < bytes.length; ) {
    const newline = bytes.indexOf(0x0a, from);
    const endsAt = newline === -1 ? bytes.length : newline + 1;
    const line = bytes.toString('utf8', from, newline === -1 ? bytes.length : newline);
    const body = line.slice(CHECK_LETTERS + 1);
    from = endsAt;
    if (newline === -1 || line[CHECK_LETTERS] !== ' ' || checkOf(body) !== line.slice(0, 16)) {
      bad += 1;
      continue;
    }
    // only what has a whole record after it was damaged; the rest is the torn end
    damaged += bad;
    bad = 0;
    records.push({ body, endsAt });
    wholeBytes = endsAt;
  }
  return { records, wholeBytes, damaged };
}
