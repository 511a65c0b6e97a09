import { describe, expect, it } from 'vitest';
import { type BuiltSite, build, hourMs, moment, startAt } from './built-site.ts';

/** Two rooms, and a sensor heard for ten hours before anyone placed it. */
async function twoRooms() {
  const site = await build();
  const room = (name: string) => site.call('createPlace', { body: { name, kind: 'room' } });
  const [here, there] = [await room('Shed'), await room('Barn')];
  const hours = Array.from({ length: 11 }, (_, i) => startAt - (10 - i) * hourMs);
  await site.hear(
    'n1',
    'air-temperature',
    hours.map((at) => [at, 18]),
  );
  return { site, here, there };
}

async function cure(site: BuiltSite, placeId: string, hoursAgo: number): Promise<number> {
  const boards = { count: 1, lengthMm: 1000, widthMm: 100, thicknessMm: 20 };
  const { id } = await site.call('createBatch', {
    body: { name: 'B', placeId, species: 'larch', surface: 'sawn', boards },
  });
  const finishedAt = moment(startAt - hoursAgo * hourMs);
  return (await site.call('createCoat', { id, body: { coat: 0, finishedAt } })).degreeHours;
}

describe('a sensor', () => {
  it('is there from its first reading, without a place', async () => {
    const { site } = await twoRooms();
    expect(await site.call('listSensors')).toEqual([
      {
        id: 'n1',
        name: null,
        placeId: null,
        height: null,
        species: null,
        firstSeenAt: moment(startAt),
        latest: [{ quantity: 'air-temperature', at: moment(startAt), value: 18, raw: 18 }],
        faults: [],
        wood: null,
      },
    ]);
    expect((await site.call('overview')).unplacedSensors).toBe(1);
    expect(await site.refused('readSensor', { id: 'n2' })).toMatchObject({
      code: 'BC_THING_UNKNOWN',
      detail: expect.stringContaining('from its first reading'),
    });
  });

  it('once placed, speaks for that place from ever', async () => {
    const { site, here } = await twoRooms();
    const placed = await site.call('changeSensor', { id: 'n1', body: { placeId: here.id } });
    expect(placed.placeId).toBe(here.id);
    // Ten hours at 18 °C, above the datum of 5 °C.
    expect(await cure(site, here.id, 10)).toBeCloseTo(130, 9);
  });

  it('moved a second time, speaks for the new place from then on', async () => {
    const { site, here, there } = await twoRooms();
    await site.call('changeSensor', { id: 'n1', body: { placeId: here.id } });
    await site.call('changeSensor', { id: 'n1', body: { placeId: there.id } });
    site.now += 2 * hourMs;
    await site.hear('n1', 'air-temperature', [
      [startAt + hourMs, 18],
      [startAt + 2 * hourMs, 18],
    ]);
    expect(await cure(site, here.id, 10)).toBeLessThanOrEqual(130);
    expect(await cure(site, there.id, 10)).toBeCloseTo(13 * 2, 9);
  });

  it('moved in hindsight, is counted where it was', async () => {
    const { site, here, there } = await twoRooms();
    await site.call('changeSensor', { id: 'n1', body: { placeId: here.id } });
    expect(await cure(site, here.id, 10)).toBeCloseTo(130, 9);
    const from = moment(startAt - 4 * hourMs);
    await site.call('changeSensor', { id: 'n1', body: { placeId: there.id, from } });
    expect(await cure(site, there.id, 10)).toBeCloseTo(13 * 4, 9);
    // Its last reading there was five hours ago.
    expect(await cure(site, here.id, 10)).toBeCloseTo(13 * 5, 9);
  });

  it('taken down, speaks for nothing from then on', async () => {
    const { site, here } = await twoRooms();
    await site.call('changeSensor', { id: 'n1', body: { placeId: here.id } });
    const down = await site.call('changeSensor', {
      id: 'n1',
      body: { placeId: null, from: moment(startAt - 4 * hourMs) },
    });
    expect(down.placeId).toBeNull();
    expect(await cure(site, here.id, 10)).toBeCloseTo(13 * 5, 9);
  });

  it('placed where it is already, stays since when it was', async () => {
    const { site, here } = await twoRooms();
    await site.call('changeSensor', { id: 'n1', body: { placeId: here.id } });
    site.now += hourMs;
    await site.call('changeSensor', { id: 'n1', body: { placeId: here.id, name: 'North' } });
    expect(await cure(site, here.id, 10)).toBeCloseTo(130, 9);
  });

  it('is not given a time without a place', async () => {
    const { site } = await twoRooms();
    const from = moment(startAt);
    expect(await site.refused('changeSensor', { id: 'n1', body: { from } })).toMatchObject({
      status: 400,
      pointer: '/from',
    });
  });

  it('may be named, and its name taken away', async () => {
    const { site } = await twoRooms();
    const named = await site.call('changeSensor', { id: 'n1', body: { name: 'Door' } });
    expect(named).toMatchObject({ name: 'Door', placeId: null });
    expect((await site.call('changeSensor', { id: 'n1', body: { name: null } })).name).toBeNull();
  });
});
