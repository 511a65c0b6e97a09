import { describe, expect, it } from 'vitest';
import { type BuiltSite, build, hourMs, moment, startAt } from './built-site.ts';

const minute = 60_000;

async function heardFor(site: BuiltSite, count: number, value: (i: number) => number) {
  await site.hear(
    'n1',
    'air-temperature',
    Array.from({ length: count }, (_, i) => [startAt - (count - i) * minute, value(i)]),
  );
}

const series = (site: BuiltSite, query: object = {}) =>
  site.call('series', { query: { sensor: 'n1', quantity: 'air-temperature', ...query } });

const ascending = (at: number[]) => at.every((one, i) => i === 0 || one > (at[i - 1] ?? one));

describe('a series', () => {
  it('is every reading, in seconds', async () => {
    const site = await build();
    await heardFor(site, 3, (i) => 18 + i);
    expect(await series(site)).toEqual({
      sensor: 'n1',
      quantity: 'air-temperature',
      at: [3, 2, 1].map((i) => (startAt - i * minute) / 1000),
      value: [18, 19, 20],
      raw: [18, 19, 20],
    });
  });

  it('keeps to its span, both ends included', async () => {
    const site = await build();
    await heardFor(site, 10, (i) => i);
    const from = moment(startAt - 5 * minute);
    const to = moment(startAt - 3 * minute);
    expect((await series(site, { from, to })).value).toEqual([5, 6, 7]);
    const none = await series(site, { from: moment(startAt), to: moment(startAt) });
    expect(none.at).toEqual([]);
  });

  it('thinned out keeps its lowest and highest points, and its order', async () => {
    const site = await build();
    const spikes = new Map([
      [777, 35],
      [1234, -4],
    ]);
    await heardFor(site, 2000, (i) => spikes.get(i) ?? 18 + Math.sin(i / 100));
    const thin = await series(site, { points: '100' });
    expect(thin.at.length).toBeLessThanOrEqual(101);
    expect(thin.value).toContain(35);
    expect(thin.value).toContain(-4);
    expect(ascending(thin.at)).toBe(true);
    expect(thin.value).not.toContain(null);
  });

  it('thinned out over more than one look-up keeps them too', async () => {
    const site = await build();
    const spikes = new Map([
      [19_999, 35],
      [20_000, -4],
      [44_000, 36],
    ]);
    await heardFor(site, 45_000, (i) => spikes.get(i) ?? 18);
    const thin = await series(site, { points: '50' });
    expect(thin.at.length).toBeLessThanOrEqual(51);
    for (const spike of spikes.values()) expect(thin.value).toContain(spike);
    expect(ascending(thin.at)).toBe(true);
    expect((await series(site)).at).toHaveLength(45_000);
  });

  it('shows a gap as null, thinned out or not', async () => {
    const site = await build();
    const before = Array.from({ length: 50 }, (_, i): [number, number] => [
      startAt - 10 * hourMs + i * minute,
      18,
    ]);
    const after = Array.from({ length: 50 }, (_, i): [number, number] => [
      startAt - hourMs + i * minute,
      19,
    ]);
    await site.hear('n1', 'air-temperature', [...before, ...after]);
    for (const query of [{}, { points: '6' }]) {
      const { at, value, raw } = await series(site, query);
      expect(value.filter((one) => one === null)).toHaveLength(1);
      expect(raw.indexOf(null)).toBe(value.indexOf(null));
      expect(value[value.indexOf(null) - 1]).toBe(18);
      expect(value[value.indexOf(null) + 1]).toBe(19);
      expect(ascending(at)).toBe(true);
    }
  });

  it('of a season is not sent whole: it asks for points or a shorter time', async () => {
    // More readings than one reply holds, without keeping them all.
    const reading = { sensorKey: 1, quantity: 'air-temperature' as const, raw: 18, flags: 0 };
    const site = await build({
      readings: {
        readingsBetween: (_key, _quantity, from, to, limit) =>
          Array.from({ length: limit }, (_, i) => ({
            ...reading,
            at: Math.max(from, 0) + i * 60_000,
          })).filter(({ at }) => at <= Math.min(to, 200_000 * 60_000)),
        newestReading: () => null,
        corrected: ({ raw }) => raw,
        refused: () => [],
      },
    });
    await site.hear('n1', 'air-temperature', [[startAt, 18]]);
    const query = { sensor: 'n1', quantity: 'air-temperature' };
    expect(await site.refused('series', { query })).toMatchObject({
      status: 400,
      pointer: '/points',
    });
    expect((await series(site, { points: '10' })).at.length).toBeLessThanOrEqual(11);
  });

  it('is refused when it makes no sense', async () => {
    const site = await build();
    await heardFor(site, 3, (i) => i);
    const ask = (query: object) =>
      site.refused('series', { query: { sensor: 'n1', quantity: 'air-temperature', ...query } });
    expect(await ask({ sensor: 'n2' })).toMatchObject({ code: 'BC_THING_UNKNOWN' });
    expect(await ask({ quantity: 'warmth' })).toMatchObject({ pointer: '/quantity' });
    expect(await ask({ points: '1' })).toMatchObject({ pointer: '/points' });
    expect(await ask({ from: 'yesterday' })).toMatchObject({ pointer: '/from' });
    expect(await ask({ from: moment(startAt), to: moment(startAt - 1) })).toMatchObject({
      pointer: '/to',
    });
  });
});
