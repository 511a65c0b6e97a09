import { describe, expect, it } from 'vitest';
import type { BatchCurves } from '../../daemon/contract/curves.ts';
import { gates } from '../../daemon/contract/gate.ts';
import { dewPoint } from '../../daemon/science/air.ts';
import { type BuiltSite, build, hourMs, moment, withCoat } from './built-site.ts';

const minute = 60_000;

/** A rack with days of swinging air, a batch and its first coat. */
async function swinging(site: BuiltSite, days: number, coatHours: number) {
  const place = await site.call('createPlace', { body: { name: 'Rack', kind: 'rack' } });
  const at = Array.from(
    { length: days * 144 + 1 },
    (_, i) => site.now - (days * 144 - i) * 10 * minute,
  );
  const swing = (moment: number) => 16 - 5 * Math.cos((2 * Math.PI * moment) / (24 * hourMs));
  await site.hear(
    'n1',
    'air-temperature',
    at.map((moment) => [moment, swing(moment)]),
  );
  await site.hear(
    'n1',
    'relative-humidity',
    at.map((moment) => [moment, 120 - 3 * swing(moment)]),
  );
  await site.call('changeSensor', { id: 'n1', body: { placeId: place.id } });
  const batch = await site.call('createBatch', {
    body: {
      ...{ name: 'B', placeId: place.id, species: 'larch', surface: 'sawn' },
      boards: { count: 10, lengthMm: 4000, widthMm: 145, thicknessMm: 22 },
    },
  });
  const finishedAt = moment(site.now - coatHours * hourMs);
  const coat = await site.call('createCoat', { id: batch.id, body: { coat: 0, finishedAt } });
  return { place, batch, coat };
}

describe('curves of a place', () => {
  it('hold the lowest and highest of the very readings of each stretch', async () => {
    const site = await build();
    const { place } = await swinging(site, 3, 24);
    const from = moment(site.now - 48 * hourMs);
    const to = moment(site.now);
    const curves = await site.call('placeCurves', {
      id: place.id,
      query: { from, to, points: '50' },
    });
    const series = await site.call('series', {
      query: { sensor: 'n1', quantity: 'air-temperature', from, to },
    });
    expect(curves.stepS).toBe(3600);
    curves.at.slice(0, -1).forEach((at, i) => {
      const within = series.value.filter((_, j) => {
        const time = series.at[j] ?? 0;
        return time >= at - 1800 && time < at + 1800;
      }) as number[];
      expect(curves.tempC?.low[i]).toBeCloseTo(Math.min(...within), 5);
      expect(curves.tempC?.high[i]).toBeCloseTo(Math.max(...within), 5);
    });
  });

  it('by the hour and by each reading tell the same extremes', async () => {
    const site = await build();
    const { place } = await swinging(site, 6, 24);
    const span = { from: moment(site.now - 120 * hourMs), to: moment(site.now - 1) };
    const by = async (points: number) =>
      site.call('placeCurves', { id: place.id, query: { ...span, points: String(points) } });
    const [coarse, fine] = [await by(20), await by(700)];
    expect(coarse).toMatchObject({ byHour: true, stepS: 6 * 3600 });
    expect(fine).toMatchObject({ byHour: false, stepS: 900 });
    coarse.at.forEach((at, i) => {
      const inside = fine.at.flatMap((time, j) =>
        Math.abs(time - at) < 3 * 3600 && fine.tempC?.low[j] != null ? [j] : [],
      );
      const lows = inside.map((j) => fine.tempC?.low[j] ?? 0);
      if (lows.length > 0) expect(coarse.tempC?.low[i]).toBeCloseTo(Math.min(...lows), 5);
    });
  });

  it('show a silence as a gap, and dew points that are those of the air', async () => {
    const site = await build();
    const { room } = await withCoat(site);
    site.now += 9 * hourMs;
    await site.hear('n1', 'air-temperature', [[site.now, 18]]);
    const curves = await site.call('placeCurves', {
      id: room.id,
      query: { from: moment(site.now - 12 * hourMs), points: '100' },
    });
    const known = curves.tempC?.mean.map((value) => value !== null) ?? [];
    expect(known[0]).toBe(true);
    expect(known.slice(30, -2)).not.toContain(true);
    expect(known.at(-1)).toBe(true);
    // The dew point is held to tables in test/science: here it is to be that of this air.
    expect(curves.dewPointC?.[0]).toBeCloseTo(dewPoint(20, 60, { over: 'water' }), 5);
    expect(curves.carbonDioxidePpm).toBeNull();
  });

  it('tell what was done and felt there, and to which batch', async () => {
    const site = await build();
    const { room, batch } = await withCoat(site);
    const at = moment(site.now - hourMs);
    await site.call('createTest', { id: batch.id, body: { at, gate: 'turn', passed: false } });
    await site.call('createRemark', { id: batch.id, body: { at, kind: 'runs' } });
    const other = await site.call('createPlace', { body: { name: 'Loft', kind: 'rack' } });
    await site.call('createMove', {
      id: batch.id,
      body: { at: moment(site.now), placeId: other.id },
    });
    const { marks } = await site.call('placeCurves', { id: room.id });
    expect(marks.map(({ kind }) => kind)).toEqual(['coat', 'test', 'remark', 'move']);
    expect(marks[1]).toMatchObject({ batchName: 'South gable', gate: 'turn', passed: false });
    const there = await site.call('placeCurves', { id: other.id });
    expect(there.marks).toMatchObject([{ kind: 'move', placeName: 'Loft' }]);
  });

  it('have what was measured by hand, board by board, with the batch or the place it is of', async () => {
    const site = await build();
    const { room, batch } = await withCoat(site);
    const loft = await site.call('createPlace', { body: { name: 'Loft', kind: 'rack' } });
    const measure = (hours: number, of: object, values: number[], quantity = 'wood-moisture') =>
      site.call('createReading', {
        body: { ...of, quantity, values, at: moment(site.now - hours * hourMs) },
      });
    await measure(1, { batchId: batch.id }, [14.2, 13]);
    await measure(2, { placeId: room.id }, [15.5]);
    await measure(1, { placeId: loft.id }, [19]);
    await measure(1, { batchId: batch.id }, [18.4], 'surface-temperature');
    await site.call('createMove', {
      id: batch.id,
      body: { at: moment(site.now), placeId: loft.id },
    });
    const ofRoom = { placeId: room.id, batchId: null, batchName: null, percent: [15.5] };
    const ofBatch = {
      batchId: batch.id,
      batchName: batch.name,
      placeId: null,
      percent: [14.2, 13],
    };
    const here = await site.call('placeCurves', { id: room.id });
    expect(here.handMoisture).toMatchObject([ofRoom, ofBatch]);
    expect(here.handMoisture?.[1]?.at).toBe(moment(site.now - hourMs));
    // The loft had its own figure an hour ago, when the batch did not lie there yet.
    const there = await site.call('placeCurves', { id: loft.id });
    expect(there.handMoisture).toMatchObject([{ placeName: 'Loft', percent: [19] }]);
    const along = await site.call('batchCurves', { id: batch.id });
    expect(along.handMoisture).toMatchObject([ofRoom, ofBatch]);
    const before = { to: moment(site.now - 1.5 * hourMs) };
    const early = await site.call('placeCurves', { id: room.id, query: before });
    expect(early.handMoisture).toMatchObject([ofRoom]);
    expect((await site.call('sensorCurves', { id: 'n1' })).handMoisture).toBeUndefined();
  });

  it('that end before they begin are refused', async () => {
    const site = await build();
    const { room } = await withCoat(site);
    const query = { from: moment(site.now), to: moment(site.now - 1) };
    expect(await site.refused('placeCurves', { id: room.id, query })).toMatchObject({
      code: 'BC_REQUEST_INVALID',
    });
  });
});

describe('the sum of a coat', () => {
  it('as a curve is the one that the coat itself is told with', async () => {
    const site = await build();
    const { batch } = await swinging(site, 6, 100);
    const degreeHours = (await site.call('readBatch', { id: batch.id })).coats[0]?.degreeHours ?? 0;
    for (const points of ['30', '600', '2000']) {
      const curves = await site.call('batchCurves', { id: batch.id, query: { points } });
      const sums = curves.degreeHours.filter((sum) => sum !== null);
      expect(sums.every((sum, i) => i === 0 || sum >= (sums[i - 1] ?? 0))).toBe(true);
      // At most a stretch of the curve is missing at its end, and 21 °C gain 16 °C·h an hour.
      expect(sums.at(-1)).toBeLessThanOrEqual(degreeHours + 0.001);
      expect(sums.at(-1)).toBeGreaterThan(degreeHours - (16 * curves.stepS) / 3600);
      expect(curves.ahead?.likely[0]).toBeCloseTo(degreeHours, 2);
    }
  });
});

/** When a rising curve reaches a figure, epoch s; straight between its points. */
function reaches(ahead: { at: number[] }, sums: number[], needed: number): number {
  const i = sums.findIndex((sum) => sum >= needed);
  if (i === -1) return Number.POSITIVE_INFINITY;
  if (i === 0) return ahead.at[0] ?? 0;
  const [a, b] = [sums[i - 1] ?? 0, sums[i] ?? 0];
  const [from, to] = [ahead.at[i - 1] ?? 0, ahead.at[i] ?? 0];
  return from + ((needed - a) / (b - a)) * (to - from);
}

describe('the sum that is to come', () => {
  it.each([4, 20, 60])(
    'agrees with the verdicts of a coat %d hours old: with likely exactly, with early and late within what the weather leaves open',
    async (hours) => {
      const site = await build();
      const { batch } = await swinging(site, 6, hours);
      const { ahead } = await site.call('batchCurves', { id: batch.id });
      const coat = (await site.call('readBatch', { id: batch.id })).coats[0];
      if (!ahead || !coat) throw new Error('nothing to come');
      let told = 0;
      for (const gate of gates) {
        const { early, likely, late, requiredDegreeHours: need } = coat.gates[gate];
        if (likely !== null) {
          told++;
          const at = Date.parse(likely) / 1000;
          // Both lie on one path; the curve is told by the hour, and straight in between.
          expect(Math.abs(reaches(ahead, ahead.likely, need.likely) - at), gate).toBeLessThan(1800);
        }
        // A coat is there when the weather and the need allow it. Were the need certain to be its
        // early figure, the warm tenth of futures would get there before early; were it certain to be
        // the likely one, after. So the verdict lies between, and likewise for late.
        const step = 3600;
        if (early !== null && Date.parse(early) / 1000 > (ahead.at[0] ?? 0)) {
          const at = Date.parse(early) / 1000;
          expect(reaches(ahead, ahead.early, need.early), gate).toBeLessThanOrEqual(at + step);
          expect(reaches(ahead, ahead.early, need.likely), gate).toBeGreaterThanOrEqual(at - step);
        }
        if (late !== null) {
          const at = Date.parse(late) / 1000;
          expect(reaches(ahead, ahead.late, need.late), gate).toBeGreaterThanOrEqual(at - step);
          expect(reaches(ahead, ahead.late, need.likely), gate).toBeLessThanOrEqual(at + step);
        }
      }
      expect(told).toBeGreaterThan(0);
    },
  );

  it('opens like a fan: early above likely above late, and never falls', async () => {
    const site = await build();
    const { batch } = await swinging(site, 6, 20);
    const { ahead } = await site.call('batchCurves', { id: batch.id });
    if (!ahead) throw new Error('nothing to come');
    const width = (i: number) => (ahead.early[i] ?? 0) - (ahead.late[i] ?? 0);
    ahead.at.forEach((_, i) => {
      expect(ahead.early[i]).toBeGreaterThanOrEqual(ahead.likely[i] ?? 0);
      expect(ahead.likely[i]).toBeGreaterThanOrEqual(ahead.late[i] ?? 0);
      if (i > 0) expect(ahead.late[i]).toBeGreaterThanOrEqual(ahead.late[i - 1] ?? 0);
    });
    expect(width(ahead.at.length - 1)).toBeGreaterThan(width(0));
  });

  it('is none once the next coat is on', async () => {
    const site = await build();
    const { batch, coat } = await swinging(site, 6, 60);
    const finishedAt = moment(site.now - hourMs);
    await site.call('createCoat', { id: batch.id, body: { coat: 1, finishedAt } });
    const first = await site.call('batchCurves', { id: batch.id, query: { coatId: coat.id } });
    expect(first.ahead).toBeNull();
    expect(Date.parse(first.to)).toBe(Date.parse(finishedAt));
    const last: BatchCurves = await site.call('batchCurves', { id: batch.id });
    expect(last.ahead).not.toBeNull();
  });
});

describe('air changes over time', () => {
  it('are estimates at whole hours, a gap where it cannot be told, and none outside a room', async () => {
    const site = await build();
    const { room } = await withCoat(site);
    const told = await site.call('airChanges', {
      id: room.id,
      query: { from: moment(site.now - 24 * hourMs) },
    });
    expect(told.roomId).toBe(room.id);
    expect(told.at.length).toBeGreaterThan(20);
    expect(told.at.every((at) => at % 3600 === 0)).toBe(true);
    // Steady air says nothing of its changes.
    expect(told.perHour.every((value) => value === null)).toBe(true);
    const rack = await site.call('createPlace', { body: { name: 'Yard', kind: 'outdoors' } });
    expect(await site.call('airChanges', { id: rack.id })).toMatchObject({ roomId: null, at: [] });
  });

  it('are never more than one request may cost', async () => {
    const site = await build();
    const { room } = await withCoat(site);
    for (const days of [1, 7, 40, 400, 4000]) {
      const query = { from: moment(site.now - days * 24 * hourMs) };
      const told = await site.call('airChanges', { id: room.id, query });
      expect(told.at.length).toBeLessThanOrEqual(40);
    }
  });
});
