import {
  appendFileSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type DiskQueue, openDiskQueue } from '../../sensors/attached/disk-queue.ts';

let folder: string;
let queue: DiskQueue;
const bound = 1_000_000;

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'boardcure-queue-'));
  queue = openDiskQueue(folder, bound);
});
afterEach(() => {
  queue.close();
  rmSync(folder, { recursive: true, force: true });
});

const texts = (from: number, count: number) =>
  Array.from({ length: count }, (_, index) => `reading ${from + index}`);
const bodies = (most = 100_000) => queue.oldest(most).map(({ body }) => body);
const letGo = (count: number) => {
  const last = queue.oldest(count).at(-1);
  if (last !== undefined) queue.letGo(last);
};
/** As after a kill: nothing is closed in order. */
const again = (maxBytes = bound) => {
  queue.close();
  queue = openDiskQueue(folder, maxBytes);
};
const files = () =>
  readdirSync(folder)
    .filter((name) => name.endsWith('.queue'))
    .sort();

describe('the queue on disk', () => {
  it('hands out what came in, in its order, until it is let go', () => {
    queue.append(texts(0, 3));
    queue.append(texts(3, 2));
    expect(bodies(4)).toEqual(texts(0, 4));
    expect(bodies()).toEqual(texts(0, 5));
    letGo(2);
    expect(bodies()).toEqual(texts(2, 3));
    letGo(3);
    expect(bodies()).toEqual([]);
    queue.append(texts(5, 1));
    expect(bodies()).toEqual(texts(5, 1));
  });

  it('goes on where it was, after any restart', () => {
    for (let round = 0; round < 30; round++) {
      queue.append(texts(round * 10, 10));
      letGo(7);
      again();
    }
    expect(bodies()).toEqual(texts(210, 90));
    expect(queue.counts()).toMatchObject({ waiting: 90, dropped: 0, damaged: 0 });
  });

  it('loses nothing but the record whose writing was cut short', () => {
    queue.append(texts(0, 5));
    const file = join(folder, files()[0] ?? '');
    const whole = readFileSync(file);
    for (let cut = 1; cut < 40; cut++) {
      queue.close();
      writeFileSync(file, whole.subarray(0, whole.length - cut));
      queue = openDiskQueue(folder, bound);
      expect(bodies()).toEqual(texts(0, cut <= whole.length / 5 ? 4 : 3));
      queue.append(['the next']);
      again();
      expect(bodies().at(-1)).toBe('the next');
      expect(queue.counts().damaged).toBe(0);
    }
  });

  it('passes over what was damaged in the middle, and counts it', () => {
    queue.append(texts(0, 5));
    const file = join(folder, files()[0] ?? '');
    const bytes = readFileSync(file);
    const place = bytes.indexOf('reading 2');
    bytes[place + 3] = (bytes[place + 3] ?? 0) ^ 1;
    queue.close();
    writeFileSync(file, bytes);
    queue = openDiskQueue(folder, bound);
    expect(bodies()).toEqual([0, 1, 3, 4].map((number) => `reading ${number}`));
    expect(queue.counts().damaged).toBe(1);
  });

  it('hands everything out again when the note of how far it was is lost', () => {
    queue.append(texts(0, 6));
    letGo(4);
    queue.close();
    writeFileSync(join(folder, 'position.json'), '{"segm');
    queue = openDiskQueue(folder, bound);
    expect(bodies()).toEqual(texts(0, 6));
  });

  it('drops the oldest at its bound and counts them, also over a restart', () => {
    again(65_536);
    const long = 'x'.repeat(1000);
    for (let number = 0; number < 200; number++) queue.append([`${number} ${long}`]);
    const numbers = bodies().map((body) => Number(body.split(' ')[0]));
    expect(queue.counts().bytes).toBeLessThanOrEqual(65_536);
    expect(queue.counts().dropped).toBe(200 - numbers.length);
    // the newest are there without a hole, and the files hold no more than what is told
    expect(numbers).toEqual(
      Array.from({ length: numbers.length }, (_, i) => 200 - numbers.length + i),
    );
    expect(numbers.length).toBeGreaterThan(40);
    const onDisk = files().reduce((sum, name) => sum + readFileSync(join(folder, name)).length, 0);
    expect(onDisk).toBe(queue.counts().bytes);
    again(65_536);
    expect(queue.counts().dropped).toBe(200 - numbers.length);
  });

  it('lets go only what was handed out, though the oldest of it was dropped meanwhile', () => {
    again(65_536);
    const long = 'x'.repeat(1000);
    for (let number = 0; number < 10; number++) queue.append([`${number} ${long}`]);
    const handedOut = queue.oldest(10).at(-1);
    for (let number = 10; number < 200; number++) queue.append([`${number} ${long}`]);
    const before = bodies();
    if (handedOut !== undefined) queue.letGo(handedOut);
    expect(bodies()).toEqual(before);
  });

  it('does not keep on disk what was let go, but for one small file', () => {
    for (let round = 0; round < 400; round++) {
      queue.append(texts(round, 100));
      letGo(100);
    }
    expect(files().length).toBeLessThanOrEqual(2);
    expect(queue.counts().bytes).toBeLessThan(bound / 4);
  });

  it('leaves other files in its folder alone', () => {
    appendFileSync(join(folder, 'note.txt'), 'mine');
    queue.append(texts(0, 2));
    again();
    expect(bodies()).toEqual(texts(0, 2));
    expect(readFileSync(join(folder, 'note.txt'), 'utf8')).toBe('mine');
  });

  it('refuses a bound too small to be of use', () => {
    expect(() => openDiskQueue(folder, 1000)).toThrow(RangeError);
  });
});
