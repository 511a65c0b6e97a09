import { describe, expect, it } from 'vitest';
import { bootTimes, pendingPlacer, placed } from '../../daemon/ingest/place-pending.ts';
import type { KeptPendingReading, PendingReading } from '../../daemon/rules/facts.ts';
import { readingFlagBits } from '../../sensors/correct/reading-time.ts';
import { openSite } from '../monitor/site.ts';

const now = Date.UTC(2026, 4, 4, 12);
const minute = 60_000;
const hour = 60 * minute;
const moment = { now, upMs: 2 * hour, boot: 'this' };

const waiting = (given: Partial<KeptPendingReading> = {}): KeptPendingReading => ({
  ...{ rank: 1, boot: 'this', monotonicMs: hour, ownAt: null, sensor: 'n1' },
  ...{ quantity: 'air-temperature', raw: 20, flags: 0 },
  ...given,
});
const of = (boot: string, firstMs: number, lastMs: number) => ({ boot, firstMs, lastMs, count: 2 });

describe('when each running of the computer began', () => {
  it('is known of this one', () => {
    expect(bootTimes([of('this', minute, hour)], moment).get('this')).toBe(now - 2 * hour);
  });

  it('was before the next one of those whose clock was never set, in their order', () => {
    const boots = [of('first', minute, 3 * hour), of('second', minute, hour), of('this', 1, 2)];
    const began = bootTimes(boots, moment);
    const [first = 0, second = 0] = [began.get('first'), began.get('second')];
    expect(second + hour).toBeLessThan(now - 2 * hour);
    expect(first + 3 * hour).toBeLessThan(second + minute);
  });
});

describe('a reading that waited for the clock', () => {
  const began = bootTimes([of('this', minute, hour)], moment);
  const place = (given: Partial<KeptPendingReading>) => placed([waiting(given)], began, 'this')[0];
  const late = readingFlagBits['clock-untrusted'];

  it('is of the moment at which it came', () => {
    expect(place({})).toMatchObject({ at: now - hour, flags: late });
  });

  it('is of its own time where that can be believed by now', () => {
    expect(place({ ownAt: now - hour + 5 * minute })?.at).toBe(now - hour + 5 * minute);
    expect(place({ ownAt: now - 30 * 24 * hour })?.at).toBe(now - 30 * 24 * hour);
    expect(place({ ownAt: now })).toMatchObject({
      at: now - hour,
      flags: late | readingFlagBits['time-replaced'],
    });
  });

  it('from a backlog that does not date itself has an unknown time still', () => {
    const unknown = readingFlagBits['time-unknown'];
    expect(place({ flags: unknown })).toMatchObject({ at: now - hour, flags: late | unknown });
  });
});

describe('placing', () => {
  const pending = (monotonicMs: number): PendingReading => ({
    ...{ boot: 'this', monotonicMs, ownAt: null, sensor: 'n1' },
    ...{ quantity: 'air-temperature' as const, raw: 20, flags: 0 },
  });

  it('and waiting no longer are one transaction: what fails waits on, whole', async () => {
    const site = openSite();
    const count = () => site.reader.pendingBoots().reduce((sum, one) => sum + one.count, 0);
    try {
      const group = { readings: [], refused: [], arrivedAt: 0 };
      site.writer.commitReadings({ ...group, pending: [pending(minute), pending(2 * minute)] });
      let fails = true;
      const placeAll = pendingPlacer({
        oldest: site.reader.pendingReadings,
        boots: site.reader.pendingBoots,
        place: async (all, ranks) => {
          // The second one cannot be written.
          const nobody = null as unknown as string;
          const readings = all.readings.map((one, index) =>
            fails && index === 1 ? { ...one, sensor: nobody } : one,
          );
          return site.writer.placePending({ ...all, readings }, ranks);
        },
        committed: (result) => site.monitor.committed(result),
        moment: () => moment,
      });
      await expect(placeAll()).rejects.toThrow();
      expect(count()).toBe(2);
      expect(site.reader.sensors()).toEqual([]);
      fails = false;
      expect(await placeAll()).toBe(2);
      expect(count()).toBe(0);
      const at = now - 2 * hour;
      expect(
        site.reader.readingsBetween(1, 'air-temperature', 0, now).map((one) => one.at),
      ).toEqual([at + minute, at + 2 * minute]);
      expect(await placeAll()).toBe(0);
    } finally {
      site.close();
    }
  });

  it('waits as long as the clock is not trusted', async () => {
    const placeAll = pendingPlacer<null>({
      oldest: () => [waiting()],
      boots: () => [],
      place: async () => {
        throw new Error('nothing may be placed');
      },
      committed() {},
      moment: () => null,
    });
    expect(await placeAll()).toBe(0);
  });
});
