import { utimesSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Clock } from '../../daemon/clock.ts';
import { type RepeatedActs, type Schedule, startSchedule } from '../../daemon/schedule/cron.ts';
import { siteBackups } from '../../daemon/site-backups.ts';
import { nightBackupsIn } from '../../daemon/store/backup-nightly.ts';
import { databaseFile } from '../../daemon/store/open.ts';
import { fillSite, isWhole } from '../command/backup-site.ts';
import { temporaryFolder } from '../store/store-sides.ts';

/* The clock is turned by the test; the program that tells the hours is the real one. */
const minuteMs = 60_000;
const hourMs = 60 * minuteMs;
/** Local time, as the setting is. */
const evening = () => new Date(2026, 4, 4, 22, 30, 30);

let closers: (() => void)[];
beforeEach(() => {
  closers = [];
  vi.useFakeTimers({ now: evening(), toFake: ['Date', 'setTimeout', 'clearTimeout'] });
});
afterEach(() => {
  for (const close of closers.reverse()) close();
  vi.useRealTimers();
});

const idle = async () => {};

function started(acts: Partial<RepeatedActs>): Schedule {
  const schedule = startSchedule({
    ...{ everyMinute: idle, pack: idle, nightly: idle, backup: null, digest: null },
    ...{ failed: () => {}, speed: () => 1, ...acts },
  });
  closers.push(() => void schedule.close());
  return schedule;
}

/** What a day brings, as local times. */
async function aDay(acts: (note: (what: string) => () => Promise<void>) => Partial<RepeatedActs>) {
  const noted: string[] = [];
  const note = (what: string) => async () => {
    const now = new Date();
    const two = (value: number) => String(value).padStart(2, '0');
    noted.push(`${what} ${two(now.getHours())}:${two(now.getMinutes())}`);
  };
  started(acts(note));
  await vi.advanceTimersByTimeAsync(24 * hourMs);
  return noted;
}

describe('what is repeated by the clock', () => {
  it('the morning is summed up once a day by the clock of the site’s own time zone', async () => {
    const timeZone = 'Pacific/Kiritimati';
    const told: string[] = [];
    started({
      digest: {
        ...{ at: '06:30', timeZone },
        async tell() {
          told.push(new Date().toLocaleTimeString('en-GB', { timeZone, timeStyle: 'short' }));
        },
      },
    });
    await vi.advanceTimersByTimeAsync(24 * hourMs);
    expect(told).toEqual(['06:30']);
  });

  it('a backup is asked for in the hour of the setting, and each hour in case that was missed', async () => {
    const noted = await aDay((note) => ({
      backup: {
        at: '02:10',
        whenDue: (isItsHour) => note(isItsHour ? 'its hour' : 'any hour')(),
      },
    }));
    expect(noted.filter((what) => what.startsWith('its hour'))).toEqual(['its hour 02:10']);
    const hours = Array.from({ length: 24 }, (_, i) => String((23 + i) % 24).padStart(2, '0'));
    expect(noted.filter((what) => what.startsWith('any hour'))).toEqual(
      hours.map((hour) => `any hour ${hour}:10`),
    );
  });

  it('one that fails is told of, and asked for again the next hour', async () => {
    const failures: unknown[] = [];
    let asked = 0;
    const backup = {
      at: '02:10',
      async whenDue() {
        asked++;
        throw new Error('no room');
      },
    };
    started({ backup, failed: (cause) => failures.push(cause) });
    await vi.advanceTimersByTimeAsync(3 * hourMs);
    expect(asked).toBe(3);
    expect(failures.map(String)).toEqual(Array(3).fill('Error: no room'));
  });

  it('the log is put back once a night, packing and looking go on each minute', async () => {
    const noted = await aDay((note) => ({
      ...{ nightly: note('night'), pack: note('pack'), everyMinute: note('minute') },
    }));
    expect(noted.filter((what) => what.startsWith('night'))).toEqual(['night 03:15']);
    for (const each of ['pack', 'minute']) {
      const times = noted.filter((what) => what.startsWith(each));
      expect(times).toHaveLength(1440);
      expect(new Set(times).size).toBe(1440);
    }
  });
});

describe('a schedule that is closed', () => {
  it('waits for the minute’s act, so that it finds the database open to its end', async () => {
    const noted: string[] = [];
    let letGo = () => {};
    const looked = new Promise<void>((done) => {
      letGo = done;
    });
    const schedule = started({
      async everyMinute() {
        noted.push('begun');
        await looked;
        noted.push('ended');
      },
    });
    await vi.advanceTimersByTimeAsync(minuteMs);
    const closing = schedule.close().then(() => noted.push('closed'));
    await vi.advanceTimersByTimeAsync(2 * minuteMs);
    expect(noted).toEqual(['begun']);
    letGo();
    await closing;
    expect(noted).toEqual(['begun', 'ended', 'closed']);
  });

  it('waits for no long act, which is cut off elsewhere and then tells of no failure', async () => {
    const failures: unknown[] = [];
    let fail = (_cause: Error) => {};
    const packed = new Promise<void>((_, failed) => {
      fail = failed;
    });
    const schedule = started({
      pack: () => packed,
      failed: (cause) => failures.push(cause),
    });
    await vi.advanceTimersByTimeAsync(minuteMs);
    await schedule.close();
    fail(new Error('The database connection is not open'));
    await vi.advanceTimersByTimeAsync(minuteMs);
    expect(failures).toEqual([]);
  });
});

describe('the backup of a night', () => {
  it('is made at its hour by the site’s clock, whole, once, and not of a simulated shed', async () => {
    const { folder, remove } = temporaryFolder();
    closers.push(remove);
    fillSite(folder);
    const site = { speed: 1 };
    const clock = {
      now: () => Date.now(),
      get speed() {
        return site.speed;
      },
    } as Clock;
    const backups = siteBackups({
      ...{ clock, log: { info() {}, warn() {}, error() {} }, file: databaseFile(folder) },
      settings: {
        data: folder,
        backup: { at: '02:10', keep: 3, folder: null },
        storage: { lowSpaceMiB: 0 },
      } as never,
      processUrl: new URL('../../.build/daemon/store/backup-process.js', import.meta.url),
      atClose: (close) => closers.push(close as () => void),
    });
    const { schedule } = backups;
    if (!schedule) throw new Error('Backups are turned off.');
    const made: Promise<void>[] = [];
    const nights = () => nightBackupsIn(`${folder}/backups`);
    started({
      backup: {
        at: schedule.at,
        whenDue(isItsHour) {
          made.push(schedule.whenDue(isItsHour));
          return Promise.all(made).then(() => {});
        },
      },
    });
    site.speed = 50;
    await vi.advanceTimersByTimeAsync(hourMs);
    await Promise.all(made);
    expect(nights()).toEqual([]);
    site.speed = 1;
    // There is none yet, so that the next hour is as good as any.
    await vi.advanceTimersByTimeAsync(hourMs);
    await Promise.all(made);
    expect(nights()).toHaveLength(1);
    const { file = '' } = nights()[0] ?? {};
    expect(isWhole(file)).toBe(true);
    // Files are dated by the computer, whose clock the test does not turn.
    utimesSync(file, new Date(), new Date());
    await vi.advanceTimersByTimeAsync(hourMs);
    await Promise.all(made);
    expect(nights()).toHaveLength(1);
  });
});
