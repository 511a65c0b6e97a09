import { describe, expect, it } from 'vitest';
import { type BuiltSite, build, hourMs, moment, startAt, withCoat } from './built-site.ts';

const minute = 60_000;

const degreeHours = async (site: BuiltSite, batchId: string) =>
  (await site.call('readBatch', { id: batchId })).coats[0]?.degreeHours ?? Number.NaN;
const newest = async (site: BuiltSite, quantity = 'air-temperature') =>
  (await site.call('readSensor', { id: 'n1' })).latest.find((one) => one.quantity === quantity);
const calibrate = (site: BuiltSite, body: object, id = 'n1') =>
  site.call('createCalibration', { id, body });

describe('a calibration', () => {
  it('holds from its moment on; raw readings stay, and sums, air and curves follow', async () => {
    const site = await build();
    const { room, batch } = await withCoat(site);
    // 24 h at 20 °C over 5 °C.
    expect(await degreeHours(site, batch.id)).toBeCloseTo(360, 9);
    const from = moment(startAt - 6 * hourMs);
    await calibrate(site, {
      quantity: 'air-temperature',
      how: { kind: 'offset', add: 2 },
      from,
    });
    // The line climbs over the hour before the first corrected reading, which gives half of it.
    expect(await degreeHours(site, batch.id)).toBeCloseTo(360 + 6 * 2 + 1, 9);
    expect(await newest(site)).toMatchObject({ raw: 20, value: 22 });
    expect((await site.call('readPlace', { id: room.id })).air.tempC).toBe(22);
    const { at, value, raw } = await site.call('series', {
      query: { sensor: 'n1', quantity: 'air-temperature' },
    });
    expect(new Set(raw)).toEqual(new Set([20]));
    expect(value[at.indexOf((startAt - 7 * hourMs) / 1000)]).toBe(20);
    expect(value[at.indexOf((startAt - 6 * hourMs) / 1000)]).toBe(22);
  });

  it('can be corrected later, which keeps what it was, and withdrawn', async () => {
    const site = await build();
    const { batch } = await withCoat(site);
    const first = await calibrate(site, {
      quantity: 'air-temperature',
      how: { kind: 'offset', add: 2 },
      from: null,
    });
    expect(await degreeHours(site, batch.id)).toBeCloseTo(360 + 48, 9);
    site.now += minute;
    const changed = await site.call('changeCalibration', {
      id: first.id,
      body: { how: { kind: 'offset', add: -1 } },
    });
    expect(changed).toMatchObject({ id: first.id, add: -1, inForce: true, replacedAt: null });
    expect(await degreeHours(site, batch.id)).toBeCloseTo(360 - 24, 9);
    const all = await site.call('listCalibrations', { id: 'n1' });
    expect(all.map(({ add, replacedAt }) => [add, replacedAt])).toEqual([
      [2, moment(site.now)],
      [-1, null],
    ]);
    await site.call('withdrawCalibration', { id: first.id });
    expect(await degreeHours(site, batch.id)).toBeCloseTo(360, 9);
    expect(await site.refused('changeCalibration', { id: first.id, body: {} })).toMatchObject({
      code: 'BC_STATE_CONFLICT',
    });
  });

  it('is taken once, however often it is sent', async () => {
    const site = await build();
    await withCoat(site);
    const body = {
      id: '019a0000-0000-7000-8000-00000000000a',
      quantity: 'air-temperature',
      how: { kind: 'offset', add: 2 },
      from: null,
    };
    await calibrate(site, body);
    await calibrate(site, body);
    expect(await site.call('listCalibrations', { id: 'n1' })).toHaveLength(1);
    const other = { ...body, how: { kind: 'offset', add: 1 } };
    expect(await site.refused('createCalibration', { id: 'n1', body: other })).toMatchObject({
      code: 'BC_ID_TAKEN',
    });
  });

  it('by a hand meter takes what the sensor sent beside it', async () => {
    const site = await build();
    await withCoat(site);
    const made = await calibrate(site, {
      quantity: 'relative-humidity',
      how: { kind: 'hand-meter', actual: 57.5, measuredAt: moment(startAt - 5 * minute) },
    });
    expect(made.how).toMatchObject({ shown: 60, actual: 57.5 });
    expect(made.add).toBeCloseTo(-2.5, 9);
    site.now += minute;
    await site.hear('n1', 'relative-humidity', [[site.now, 62]]);
    expect(await newest(site, 'relative-humidity')).toMatchObject({ raw: 62, value: 59.5 });
    const longAgo = moment(startAt - 1000 * hourMs);
    expect(
      await site.refused('createCalibration', {
        id: 'n1',
        body: {
          quantity: 'relative-humidity',
          how: { kind: 'hand-meter', actual: 57, measuredAt: longAgo },
        },
      }),
    ).toMatchObject({ code: 'BC_STATE_CONFLICT', pointer: '/how/shown' });
  });

  it('that cannot be is refused with what is wrong', async () => {
    const site = await build();
    await withCoat(site);
    const how = { kind: 'salts', points: [{ salt: 'sodium-chloride', tempC: 20, shown: 74 }] };
    const body = { quantity: 'air-temperature', how };
    expect(await site.refused('createCalibration', { id: 'n1', body })).toMatchObject({
      status: 400,
      pointer: '/how/kind',
    });
  });
});

/** A comparison as it is asked for. */
const asked = (body: { sensors: string[]; from: string; to: string }) => ({
  ...body,
  sensors: body.sensors.join(','),
});

/** A night of four sensors in a box; the last stands apart in temperature and humidity. */
async function aNight(site: BuiltSite) {
  const sensors = ['b1', 'b2', 'b3', 'b4'];
  for (const [i, sensor] of sensors.entries()) {
    const [warmer, damper] = [
      [0.1, 0.5],
      [-0.1, -0.5],
      [0, 0],
      [2.4, -9],
    ][i] as [number, number];
    const times = Array.from({ length: 97 }, (_, n) => startAt - (96 - n) * 5 * minute);
    const wave = (at: number) => 0.03 * Math.sin(at / 700_000 + i);
    await site.hear(
      sensor,
      'air-temperature',
      times.map((at) => [at, 16 + warmer + wave(at)]),
    );
    await site.hear(
      sensor,
      'relative-humidity',
      times.map((at) => [at, 55 + damper + wave(at)]),
    );
  }
  return { sensors, from: moment(startAt - 8 * hourMs), to: moment(startAt) };
}

describe('sensors compared in one closed box', () => {
  it('name the odd one out and bring all to the others with one press', async () => {
    const site = await build();
    const body = await aNight(site);
    const { quantities, offers } = await site.call('compareSensors', { query: asked(body) });
    expect(quantities.map(({ quantity, refused }) => [quantity, refused])).toEqual([
      ['air-temperature', null],
      ['relative-humidity', null],
    ]);
    for (const { sensors } of quantities) {
      expect(sensors.filter(({ isOdd }) => isOdd).map(({ sensor }) => sensor)).toEqual(['b4']);
    }
    expect(offers.find((one) => one.sensor === 'b4')?.change).toBeCloseTo(-2.4, 1);
    expect(await site.call('listCalibrations', { id: 'b4' })).toEqual([]);

    const taken = await site.call('acceptComparison', { body: { ...body, holdsFrom: null } });
    expect(taken).toHaveLength(offers.length);
    const after = await site.call('compareSensors', { query: asked(body) });
    // What was within the uncertainty was not offered, and stays.
    const left = { 'air-temperature': 0.15, 'relative-humidity': 0.6 };
    for (const { quantity, sensors } of after.quantities) {
      for (const { difference, isOdd } of sensors) {
        expect(isOdd).toBe(false);
        expect(Math.abs(difference)).toBeLessThan(left[quantity as keyof typeof left]);
      }
    }
  });

  it('leave alone whom they are told to, and hold from the end of the night if nothing is said', async () => {
    const site = await build();
    const body = await aNight(site);
    const taken = await site.call('acceptComparison', {
      body: { ...body, leaveOut: ['b1', 'b2'] },
    });
    expect(new Set(taken.map(({ sensor }) => sensor))).not.toContain('b1');
    expect(new Set(taken.map(({ from }) => from))).toEqual(new Set([body.to]));
  });

  it('offer nothing of two, and say why', async () => {
    const site = await build();
    const body = { ...(await aNight(site)), sensors: ['b3', 'b4'] };
    const { quantities, offers } = await site.call('compareSensors', { query: asked(body) });
    expect(quantities.map(({ refused }) => refused)).toEqual(['only-two', 'only-two']);
    expect(offers).toEqual([]);
    expect(await site.refused('acceptComparison', { body })).toMatchObject({
      code: 'BC_STATE_CONFLICT',
    });
  });

  it('are asked for by names that exist, over a time that is not too long', async () => {
    const site = await build();
    const body = await aNight(site);
    expect(
      await site.refused('compareSensors', {
        query: asked({ ...body, sensors: ['b1', 'nobody'] }),
      }),
    ).toMatchObject({ code: 'BC_REFERENCE_UNKNOWN', pointer: '/sensors/1' });
    expect(
      await site.refused('compareSensors', {
        query: asked({ ...body, from: moment(startAt - 200 * hourMs) }),
      }),
    ).toMatchObject({ status: 400, pointer: '/from' });
  });
});
