import {
  cpSync,
  mkdirSync,
  renameSync,
  rmSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { OpenMessage } from '../../daemon/rules/facts.ts';
import { fileIdentity } from '../../daemon/store/file-identity.ts';
import { migrations } from '../../daemon/store/migrate.ts';
import { databaseFile, openForReading, openForWriting } from '../../daemon/store/open.ts';
import { storeReader, storeWriter } from '../../daemon/store/store.ts';
import { day1 } from './site-of-facts.ts';
import { temporaryFolder, timeUnknown } from './store-sides.ts';

let folder: string;
let remove: () => void;
beforeEach(() => {
  ({ folder, remove } = temporaryFolder());
});
afterEach(() => remove());

const seven: OpenMessage = { client: 'node 1', messageId: 7, content: 'seven' };

function opened(data: string): void {
  const write = storeWriter(openForWriting(databaseFile(data)), timeUnknown);
  write.commitReadings({ readings: [], refused: [], opened: [seven], arrivedAt: day1 });
  write.close();
}

/** As the next start reads them. */
function openIn(data: string) {
  openForWriting(databaseFile(data)).close();
  const read = storeReader(openForReading(databaseFile(data)));
  const messages = read.openMessages();
  read.close();
  return messages;
}

describe('an open number is bound to the file it was written to', () => {
  // The faults injected: the folder is copied by hand, with its times; then with the original gone.
  it('and is foreign in a copy, also one that takes the original’s place', () => {
    const [data, copy] = [join(folder, 'data'), join(folder, 'copy')];
    opened(data);
    cpSync(data, copy, { recursive: true, preserveTimestamps: true });
    expect(openIn(copy)).toEqual([{ ...seven, openedAt: day1, isOwn: false }]);
    expect(openIn(data)).toEqual([{ ...seven, openedAt: day1, isOwn: true }]);
    rmSync(data, { recursive: true });
    renameSync(copy, data);
    expect(openIn(data)).toMatchObject([{ isOwn: false }]);
  });

  it('and is its own after restarts, in a moved folder, and with its times set', () => {
    const [data, moved] = [join(folder, 'data'), join(folder, 'moved')];
    opened(data);
    for (let start = 0; start < 3; start++) expect(openIn(data)).toMatchObject([{ isOwn: true }]);
    renameSync(data, moved);
    utimesSync(databaseFile(moved), 1, 1);
    expect(openIn(moved)).toMatchObject([{ isOwn: true }]);
  });

  it('and is taken for its own and for new where a program wrote it that did not bind it', () => {
    const data = join(folder, 'data');
    const before = openForWriting(databaseFile(data), migrations.slice(0, 11));
    before
      .prepare('insert into open_message (client, message_id, content) values (?, ?, ?)')
      .run(seven.client, seven.messageId, seven.content);
    before.close();
    const from = Date.now();
    const [message] = openIn(data);
    expect(message).toMatchObject({ ...seven, isOwn: true });
    expect(message?.openedAt).toBeGreaterThanOrEqual(from);
    expect(message?.openedAt).toBeLessThanOrEqual(Date.now());
  });

  it('and belongs to the copy once the copy’s own senders open it', () => {
    const [data, copy] = [join(folder, 'data'), join(folder, 'copy')];
    opened(data);
    cpSync(data, copy, { recursive: true });
    opened(copy);
    expect(openIn(copy)).toMatchObject([{ isOwn: true }]);
  });
});

describe('a file’s name', () => {
  let file: string;
  beforeEach(() => {
    file = join(folder, 'file');
    writeFileSync(file, '');
  });

  /** The kernel’s folder, with the disk of our file as a partition of a card. */
  function disk(name: string, numbers: Record<string, string>): string {
    const kernel = join(folder, name);
    const part = join(kernel, 'mmcblk0', 'mmcblk0p2');
    mkdirSync(part, { recursive: true });
    mkdirSync(join(kernel, 'mmcblk0', 'device'));
    writeFileSync(join(part, 'partition'), '2\n');
    for (const [path, number] of Object.entries(numbers)) {
      writeFileSync(join(kernel, 'mmcblk0', path), `${number}\n`);
    }
    symlinkSync(part, join(kernel, deviceName()));
    return kernel;
  }
  /** **Source:** Linux, include/linux/kdev_t.h: minor’s low 8 bits, major’s 12, minor’s high 12. */
  const deviceName = () => {
    const { dev } = statSync(file);
    const major = Math.floor(dev / 256) % 4096;
    return `${major}:${(dev % 256) + 256 * Math.floor(dev / 2 ** 20)}`;
  };

  it('is another one on another card, as when an image of the first was written to it', () => {
    const first = disk('first', { 'device/cid': '1b534d30' });
    expect(fileIdentity(file, first)).toBe(fileIdentity(file, first));
    expect(fileIdentity(file, first)).not.toBe(
      fileIdentity(file, disk('other', { 'device/cid': '1b534d31' })),
    );
  });

  it('does without the disk where that has no number, or is none', () => {
    const nameless = fileIdentity(file, disk('nameless', {}));
    expect(nameless).toBe(fileIdentity(file, join(folder, 'nowhere')));
    expect(nameless).toMatch(/^(inode )?\d+$/);
  });
});
