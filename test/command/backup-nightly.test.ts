import { existsSync, mkdirSync, readdirSync, utimesSync, writeFileSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { backupDue, nightBackupsIn, nightlyBackups } from '../../daemon/store/backup-nightly.ts';
import { databaseFile } from '../../daemon/store/open.ts';
import { fillSite, isWhole } from './backup-site.ts';

const processUrl = new URL('../../.build/daemon/store/backup-process.js', import.meta.url);
const hourMs = 3_600_000;
const night = Date.UTC(2026, 4, 4, 2);

let folder: string;
let backups: string;
let data: string;

beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'boardcure-nightly-'));
  data = join(folder, 'data');
  backups = join(data, 'backups');
});
afterEach(() => rm(folder, { recursive: true, force: true }));

const nightly = (keep: number) =>
  nightlyBackups({ file: databaseFile(data), folder: backups, keep, processUrl });

describe('nightly backups', () => {
  it('keep as many as the setting says, the oldest going first, whatever the clock says', async () => {
    fillSite(data);
    const made = nightly(3);
    const nights = [night, 0, night + 24 * hourMs, 0, night + 48 * hourMs];
    for (const now of nights) expect(isWhole((await made.make(now)).file)).toBe(true);
    expect(readdirSync(backups).sort()).toEqual([
      'night-00003-2026-05-05.sqlite',
      'night-00004-1970-01-01.sqlite',
      'night-00005-2026-05-06.sqlite',
    ]);
  });

  it('touch nothing in their folder that they did not make', async () => {
    fillSite(data);
    const made = nightly(1);
    await made.make(night);
    for (const name of ['before-the-move.sqlite', 'night-1-2020-01-01.sqlite', 'notes.txt']) {
      writeFileSync(join(backups, name), 'mine');
    }
    await made.make(night);
    expect(readdirSync(backups).sort()).toEqual([
      'before-the-move.sqlite',
      'night-00002-2026-05-04.sqlite',
      'night-1-2020-01-01.sqlite',
      'notes.txt',
    ]);
  });

  it('one that fails leaves the older ones, and says why', async () => {
    fillSite(data);
    const made = nightly(1);
    await made.make(night);
    const broken = nightlyBackups({
      ...{ file: join(folder, 'nothing.sqlite'), folder: backups, keep: 1, processUrl },
    });
    await expect(broken.make(night)).rejects.toThrow('nothing.sqlite');
    expect(nightBackupsIn(backups)).toHaveLength(1);
  });

  it('a disk that is not plugged in is not stood in for by a folder of that name', async () => {
    fillSite(data);
    const away = join(folder, 'usb-disk');
    const made = nightlyBackups({
      ...{ file: databaseFile(data), folder: join(away, 'boardcure'), keep: 3, processUrl },
    });
    await expect(made.whenDue(night, true)).rejects.toThrow('plugged in');
    expect(existsSync(away)).toBe(false);
    // The page says so until one is made again.
    expect(made.doubts()[0]?.text).toContain('plugged in');
    mkdirSync(away);
    expect(await made.whenDue(night, true)).not.toBeNull();
    expect(made.doubts()).toEqual([]);
  });

  it('one that is cut off leaves a half file that the next one removes', async () => {
    fillSite(data, { readings: 100_000 });
    const made = nightly(2);
    const cut = made.make(night);
    const settled = cut.then(
      () => 'made',
      () => 'cut off',
    );
    const part = join(backups, 'night-00001-2026-05-04.sqlite.part');
    while (!existsSync(part)) await pause(2);
    made.close();
    expect(await settled).toBe('cut off');
    expect(readdirSync(backups).some((name) => name.includes('.part'))).toBe(true);
    await made.make(night);
    expect(readdirSync(backups)).toEqual(['night-00001-2026-05-04.sqlite']);
  });

  it('a second one does not begin while one is being made', async () => {
    fillSite(data);
    const made = nightly(2);
    const [first, second] = await Promise.all([
      made.whenDue(night, true),
      made.whenDue(night, true),
    ]);
    expect(first).not.toBeNull();
    expect(second).toBeNull();
  });
});

describe('when a backup is due', () => {
  const cases = [
    { says: 'there is none yet', age: null, itsHour: false, due: true },
    { says: 'its hour has come', age: 24, itsHour: true, due: true },
    { says: 'its hour comes twice, when clocks go back', age: 1, itsHour: true, due: false },
    { says: 'last night has one', age: 20, itsHour: false, due: false },
    { says: 'last night was missed', age: 31, itsHour: false, due: true },
    { says: 'the newest is from the future', age: -9, itsHour: false, due: true },
  ];
  for (const { says, age, itsHour, due } of cases) {
    it(`${due ? 'it is' : 'it is not'} when ${says}`, () => {
      const newestAt = age === null ? null : night - age * hourMs;
      expect(backupDue(newestAt, night, itsHour)).toBe(due);
    });
  }

  it('the age goes by the newest file of a night', async () => {
    fillSite(data);
    const made = nightly(5);
    const { file } = await made.make(night);
    const old = new Date(night - 40 * hourMs);
    utimesSync(file, old, old);
    expect(await made.whenDue(night, false)).not.toBeNull();
  });
});
