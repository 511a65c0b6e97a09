import { describe, expect, it } from 'vitest';
import { boards, build, hourMs, moment, withCoat } from './built-site.ts';

const unknownId = '019a0000-0000-7000-8000-000000000000';

describe('what is recorded must fit what is there', () => {
  it('and points at things that exist', async () => {
    const site = await build();
    const { room, batch } = await withCoat(site);
    const at = moment(site.now);
    const gone = { status: 422, code: 'BC_REFERENCE_UNKNOWN' };
    const newBatch = { name: 'B', species: 'larch', surface: 'sawn', boards };
    const place = { name: 'Rack', kind: 'rack', within: unknownId };
    expect(await site.refused('createPlace', { body: place })).toMatchObject({
      ...gone,
      pointer: '/within',
    });
    expect(
      await site.refused('createBatch', { body: { ...newBatch, placeId: unknownId } }),
    ).toMatchObject({ ...gone, pointer: '/placeId' });
    expect(
      await site.refused('createBatch', {
        body: { ...newBatch, placeId: room.id, planId: unknownId },
      }),
    ).toMatchObject({ ...gone, pointer: '/planId' });
    expect(
      await site.refused('createMove', { id: batch.id, body: { at, placeId: unknownId } }),
    ).toMatchObject({ ...gone, pointer: '/placeId' });
    expect(
      await site.refused('createReading', {
        body: { batchId: unknownId, quantity: 'wood-moisture', values: [14], at },
      }),
    ).toMatchObject({ ...gone, pointer: '/batchId' });
    expect(
      await site.refused('changeSensor', { id: 'n1', body: { name: 'New', placeId: unknownId } }),
    ).toMatchObject({ ...gone, pointer: '/placeId' });
    // What was refused in one part was not done in the other.
    expect((await site.call('readSensor', { id: 'n1' })).name).toBeNull();
  });

  it('and has happened already', async () => {
    const site = await build();
    const { room, batch } = await withCoat(site);
    const later = moment(site.now + hourMs);
    const future = (pointer: string) => ({ status: 400, code: 'BC_REQUEST_INVALID', pointer });
    const { id } = batch;
    expect(
      await site.refused('createCoat', { id, body: { coat: 1, finishedAt: later } }),
    ).toMatchObject(future('/finishedAt'));
    expect(
      await site.refused('createTest', { id, body: { at: later, gate: 'turn', passed: true } }),
    ).toMatchObject(future('/at'));
    expect(
      await site.refused('createMove', { id, body: { at: later, placeId: room.id } }),
    ).toMatchObject(future('/at'));
    expect(
      await site.refused('createRemark', { id, body: { at: later, kind: 'runs' } }),
    ).toMatchObject(future('/at'));
    expect(
      await site.refused('changeSensor', { id: 'n1', body: { placeId: room.id, from: later } }),
    ).toMatchObject(future('/from'));
    // The clocks of a phone and a shed differ by a few minutes.
    const soon = moment(site.now + 2 * 60_000);
    await site.call('createRemark', { id, body: { at: soon, kind: 'runs' } });
  });

  it('and keeps the coats in the order of the plan', async () => {
    const site = await build();
    const { batch } = await withCoat(site);
    const { id } = batch;
    const conflict = (pointer: string) => ({ status: 409, code: 'BC_STATE_CONFLICT', pointer });
    const at = (hoursAgo: number) => moment(site.now - hoursAgo * hourMs);
    const record = (body: object) => site.refused('createCoat', { id, body });
    expect(await record({ coat: 0, finishedAt: at(1) })).toMatchObject(conflict('/coat'));
    expect(await record({ coat: 3, finishedAt: at(1) })).toMatchObject(conflict('/coat'));
    expect(await record({ coat: 1, finishedAt: at(30) })).toMatchObject(conflict('/finishedAt'));
    expect(await record({ coat: 1, begunAt: at(1), finishedAt: at(2) })).toMatchObject({
      status: 400,
      pointer: '/begunAt',
    });
  });

  it('and a test feels a coat that was there by then', async () => {
    const site = await build();
    const { batch, coat } = await withCoat(site);
    const test = (at: number) => ({ at: moment(at), gate: 'turn', passed: true });
    const before = await site.refused('createTest', {
      id: batch.id,
      body: test(site.now - 25 * hourMs),
    });
    expect(before).toMatchObject({ status: 409, code: 'BC_STATE_CONFLICT', pointer: '/at' });
    const felt = await site.call('createTest', {
      id: batch.id,
      body: test(site.now - 23 * hourMs),
    });
    expect(felt).toMatchObject({ coatId: coat.id, on: 'board' });
    // One hour at 20 °C above the datum of 5 °C.
    expect(felt.degreeHours).toBeCloseTo(15, 9);
  });

  it('and hand-meter figures are such as a meter can show', async () => {
    const site = await build();
    const { room, batch } = await withCoat(site);
    const hand = { quantity: 'wood-moisture', at: moment(site.now) };
    const record = (body: object) => site.refused('createReading', { body: { ...hand, ...body } });
    expect(await record({ placeId: room.id, values: [14, 900, 15] })).toMatchObject({
      status: 400,
      pointer: '/values/1',
    });
    expect(await record({ placeId: room.id, values: [] })).toMatchObject({ pointer: '/values' });
    expect(await record({ values: [14] })).toMatchObject({ pointer: '/placeId' });
    expect(await record({ placeId: room.id, batchId: batch.id, values: [14] })).toMatchObject({
      pointer: '/placeId',
    });
  });
});

describe('what was entered without a network arrives once', () => {
  it('under the id the client gave it', async () => {
    const site = await build();
    const { room, batch } = await withCoat(site);
    const id = unknownId;
    const at = moment(site.now);
    const posts = [
      ['createPlace', { body: { id, name: 'Rack', kind: 'rack', within: room.id } }],
      [
        'createBatch',
        { body: { id, name: 'B', placeId: room.id, species: 'larch', surface: 'sawn', boards } },
      ],
      ['createCoat', { id: batch.id, body: { id, coat: 1, finishedAt: at } }],
      ['createMove', { id: batch.id, body: { id, at, placeId: room.id } }],
      ['createRemark', { id: batch.id, body: { id, at, kind: 'runs', text: 'at the ends' } }],
      ['createTest', { id: batch.id, body: { id, at, gate: 'turn', passed: false } }],
      [
        'createReading',
        { body: { id, placeId: room.id, quantity: 'wood-moisture', values: [14], at } },
      ],
    ] as const;
    for (const [name, given] of posts) {
      const first = await site.call(name, given);
      site.now += 60_000;
      const again = await site.call(name, given);
      expect(again, name).toMatchObject({ id });
      expect(Object.keys(again), name).toEqual(Object.keys(first));
    }
    const { coats, moves, remarks, tests } = await site.call('readBatch', { id: batch.id });
    expect([coats, moves, remarks, tests].map((list) => list.length)).toEqual([2, 2, 1, 1]);
    expect(await site.call('listReadings')).toHaveLength(1);
    expect(await site.call('listPlaces')).toHaveLength(2);
    expect(await site.call('listBatches')).toHaveLength(2);
  });

  it('and another thing under that id is refused', async () => {
    const site = await build();
    const body = { id: unknownId, name: 'Shed', kind: 'room' };
    await site.call('createPlace', { body });
    expect(await site.refused('createPlace', { body: { ...body, name: 'Barn' } })).toMatchObject({
      status: 409,
      code: 'BC_ID_TAKEN',
      pointer: '/id',
    });
  });
});
