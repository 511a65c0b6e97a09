import { describe, expect, it } from 'vitest';
import { boards, build, problemOf } from './built-site.ts';

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
