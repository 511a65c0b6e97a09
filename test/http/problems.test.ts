import { describe, expect, it } from 'vitest';
import { boards, build, hourMs, moment, problemOf, withCoat } from './built-site.ts';

const unknownId = '019a0000-0000-7000-8000-000000000000';
const json = { 'content-type': 'application/json' };

describe('a request that cannot be served', () => {
  it.each([
    {
      what: 'names a field that does not exist',
      body: { name: 'Shed', kind: 'room', colour: 'red' },
      pointer: '/colour',
    },
    { what: 'leaves out what is needed', body: { kind: 'room' }, pointer: '/name' },
    {
      what: 'gives text for a number',
      body: { name: 'A', kind: 'room', volumeM3: 'big' },
      pointer: '/volumeM3',
    },
    {
      what: 'gives a word that is not one of the kinds',
      body: { name: 'A', kind: 'cave' },
      pointer: '/kind',
    },
    { what: 'gives a blank name', body: { name: '  ', kind: 'room' }, pointer: '/name' },
    { what: 'is a list', body: ['room'], pointer: '' },
  ])('because it $what is told which field', async ({ body, pointer }) => {
    const { refused } = await build();
    const problem = await refused('createPlace', { body });
    expect(problem).toMatchObject({ status: 400, code: 'BC_REQUEST_INVALID', pointer });
    expect(problem.errors?.[0]).toMatchObject({ pointer, detail: expect.stringMatching(/\w/) });
  });

  it('is told of every fault at once, deep ones too', async () => {
    const { refused } = await build();
    const body = {
      name: '',
      placeId: 'the shed',
      species: 'oak',
      surface: 'sawn',
      boards: { ...boards, count: 1.5, lengthCm: 420 },
    };
    const pointers = (await refused('createBatch', { body })).errors?.map(({ pointer }) => pointer);
    expect(pointers?.sort()).toEqual(
      ['/name', '/placeId', '/species', '/boards/count', '/boards/lengthCm'].sort(),
    );
  });

  it.each([
    {
      what: 'not JSON',
      headers: json,
      payload: '{"name":',
      status: 400,
      code: 'BC_REQUEST_UNREADABLE',
    },
    { what: 'empty', headers: json, payload: '', status: 400, code: 'BC_REQUEST_UNREADABLE' },
    {
      what: 'of another type',
      headers: { 'content-type': 'application/xml' },
      payload: '<place/>',
      status: 400,
      code: 'BC_REQUEST_UNREADABLE',
    },
    {
      what: 'a form of another page',
      headers: { 'content-type': 'text/plain' },
      payload: '{"name":"Shed","kind":"room"}',
      status: 400,
      code: 'BC_REQUEST_INVALID',
    },
    {
      what: 'larger than 1 MB',
      headers: json,
      payload: JSON.stringify({ name: 'x'.repeat(1_100_000), kind: 'room' }),
      status: 413,
      code: 'BC_REQUEST_TOO_LARGE',
    },
    {
      what: 'meant to reach the prototype of every object',
      headers: json,
      payload: '{"name":"Shed","kind":"room","__proto__":{"mayWrite":true}}',
      status: 400,
      code: 'BC_REQUEST_UNREADABLE',
    },
    {
      what: 'meant to reach it by another way',
      headers: json,
      payload: '{"name":"Shed","kind":"room","constructor":{"prototype":{"mayWrite":true}}}',
      status: 400,
      code: 'BC_REQUEST_UNREADABLE',
    },
  ])('because its body is $what is told so', async ({ headers, payload, status, code }) => {
    const { ask, call } = await build();
    const reply = await ask({ method: 'POST', url: '/api/v1/places', headers, payload });
    expect(problemOf(reply)).toMatchObject({ status, code, doThis: expect.stringMatching(/\.$/) });
    expect(await call('listPlaces')).toEqual([]);
    expect('mayWrite' in {}).toBe(false);
  });

  it.each(['/api/v1/nothing', '/', '/api/v1/batches/'])(
    'because %s is nothing here',
    async (url) => {
      const { ask } = await build();
      const { status, code } = problemOf(await ask({ url }));
      expect(status).toBeGreaterThanOrEqual(400);
      expect(status).toBeLessThan(500);
      expect(code).toMatch(/^BC_/);
    },
  );

  it.each([
    { what: 'is broken', url: '/api/v1/batches/%zz' },
    { what: 'is endless', url: `/api/v1/batches/${'a'.repeat(500)}` },
  ])('because its address $what gets a problem like any other', async ({ url }) => {
    const { ask } = await build();
    expect(problemOf(await ask({ url }))).toMatchObject({ status: 404, code: 'BC_ROUTE_UNKNOWN' });
  });

  it('tells nothing of the inside when the daemon itself fails', async () => {
    const site = await build({
      newId: () => {
        throw new Error('secret of the house');
      },
    });
    const reply = await site.ask({
      method: 'POST',
      url: '/api/v1/places',
      payload: { name: 'Shed', kind: 'room' },
    });
    expect(problemOf(reply)).toMatchObject({ status: 500, code: 'BC_INTERNAL' });
    expect(reply.body).not.toContain('secret');
    expect(JSON.stringify(site.errors)).toContain('secret of the house');
  });

  it('because nothing can be mixed like that is told so, and not that the daemon failed', async () => {
    const { refused } = await build();
    for (const query of [
      { areaM2: '10', spreadingM2PerL: '8', lossPercent: '100' },
      { areaM2: '1000000', spreadingM2PerL: '0.00001', potDiameterMm: '200' },
      { areaM2: 'large', spreadingM2PerL: '8' },
      { areaM2: '10' },
    ]) {
      expect(await refused('mixture', { query })).toMatchObject({
        status: 400,
        code: 'BC_REQUEST_INVALID',
      });
    }
  });
});

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
