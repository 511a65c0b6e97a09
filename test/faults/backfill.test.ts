import { afterEach, describe, expect, it } from 'vitest';
import { runOf } from '../../daemon/rules/reading-run.ts';
import { plainDegreeHours } from '../monitor/independent-sum.ts';
import { openSite, type TestSite } from '../monitor/site.ts';

/*
 * The fault injected: a node is out of reach for 24 hours, in the middle of a long history, and then
 * sends all of it with its own times, as one heap.
 */
const hour = 3_600_000;
const start = Date.UTC(2026, 3, 1);
const everyMs = 5 * 60_000;
const awayHours = 24;

let site: TestSite | null = null;
afterEach(() => {
  site?.close();
  site = null;
});

const valueAt = (at: number) => Math.round(100 * (11 + 9 * Math.sin(at / (5 * hour)))) / 100;

/** What a backfill costs in a history of so many days, and how far the sum is then from a plain one. */
function backfilled(days: number) {
  const looked = { readings: 0, lookUps: 0 };
  const opened: { site?: TestSite } = {};
  const counted = <A extends unknown[], R>(act: (...args: A) => R) => {
    return (...args: A): R => {
      const found = act(...args);
      looked.lookUps++;
      looked.readings +=
        found !== null && typeof found === 'object' && 'length' in found ? Number(found.length) : 1;
      return found;
    };
  };
  site = openSite(
    {},
    {
      readings: {
        readingsBetween: counted((...args) => opened.site?.reader.readingsBetween(...args) ?? []),
        readingRun: counted((...args) => opened.site?.reader.readingRun(...args) ?? runOf([])),
        readingBefore: counted((...args) => opened.site?.reader.readingBefore(...args) ?? null),
        readingAfter: counted((...args) => opened.site?.reader.readingAfter(...args) ?? null),
      },
    },
  );
  opened.site = site;
  const rack = site.place('Rack', 'rack');
  const all = Array.from({ length: (days * 24 * hour) / everyMs }, (_, i) => {
    const at = start + i * everyMs;
    return { sensor: 'a', at, value: valueAt(at) };
  });
  const awayFrom = start + (days - 2) * 24 * hour;
  const finishedAt = awayFrom - 20 * hour;
  const isAway = (at: number) => at >= awayFrom && at < awayFrom + awayHours * hour;
  site.send(all.slice(0, 1));
  site.put('a', rack);
  const batch = site.batch(rack);
  site.coat(batch, 0, finishedAt);
  const inTime = all.filter(({ at }) => !isAway(at));
  for (let i = 0; i < inTime.length; i += 400) site.send(inTime.slice(i, i + 400));
  const end = all.at(-1)?.at ?? start;
  site.pack(end);
  site.coatsAt(batch, end);
  const saved: number[] = [];
  const { saveHours } = site.writer;
  site.writer.saveHours = (blocks, ranks) => {
    for (const { fromHour, toHour } of blocks) saved.push(toHour - fromHour + 1);
    saveHours(blocks, ranks);
  };
  Object.assign(looked, { readings: 0, lookUps: 0 });
  site.send(all.filter(({ at }) => isAway(at)));
  const cost = { ...looked, mostHours: Math.max(...saved) };
  const [coat] = site.coatsAt(batch, end);
  const wanted = plainDegreeHours(
    all.filter(({ at }) => at > finishedAt - hour),
    [{ sensor: 'a', level: 0, fromAt: 0 }],
    finishedAt,
    end,
    { datumC: 5, maxGapHours: 3 },
  );
  return {
    cost,
    gapHours: coat?.gapHours,
    sum: coat?.degreeHours ?? Number.NaN,
    wanted: wanted.low,
  };
}

describe('a day that a node sends afterwards', () => {
  it('is in the sums as if it had come in time, and costs that day however long the history is', () => {
    const short = backfilled(10);
    site?.close();
    const long = backfilled(40);
    for (const { sum, wanted, gapHours } of [short, long]) {
      expect(Math.abs(sum - wanted)).toBeLessThanOrEqual(1e-9 * wanted);
      expect(gapHours).toBeCloseTo(0, 9);
    }
    expect(long.cost).toEqual(short.cost);
    // The hours of that day, and those that it begins and ends in.
    expect(long.cost.mostHours).toBeLessThanOrEqual(awayHours + 2);
    process.stderr.write(`a backfill of 24 h: ${JSON.stringify(long.cost)}\n`);
  });
});
