import { afterEach, describe, expect, it } from 'vitest';
import { decodeMessage } from '../../sensors/payload/decode-message.ts';
import { build } from '../http/built-site.ts';

const keys = [...Reflect.ownKeys(Object.prototype)];
afterEach(() => {
  expect([...Reflect.ownKeys(Object.prototype)]).toEqual(keys);
  expect('polluted' in {}).toBe(false);
});

const poisons = [
  '"__proto__":{"polluted":1}',
  '"constructor":{"prototype":{"polluted":1}}',
  '"\\u005f_proto__":{"polluted":1}',
];

describe('a key that reaches for what all objects have', () => {
  it.each(poisons)('is refused in a body: %s', async (poison) => {
    const site = await build();
    for (const payload of [
      `{"name":"Shed","kind":"room",${poison}}`,
      `{"name":"A","placeId":"x","species":"larch","surface":"sawn","boards":{${poison}}}`,
    ]) {
      const url = payload.includes('species') ? '/api/v1/batches' : '/api/v1/places';
      const headers = { 'content-type': 'application/json' };
      const reply = await site.ask({ method: 'POST', url, headers, payload });
      expect(reply.statusCode).toBe(400);
    }
    expect(await site.call('listPlaces')).toEqual([]);
  });

  it.each(['__proto__[polluted]=1', '__proto__.polluted=1', 'constructor[prototype][polluted]=1'])(
    'does nothing in a query: %s',
    async (query) => {
      const site = await build();
      const url = `/api/v1/series?sensor=n1&quantity=air-temperature&${query}`;
      expect((await site.ask({ url })).statusCode).toBe(400);
    },
  );

  it.each(poisons)('does nothing in a message: %s', (poison) => {
    for (const text of [`{"value":20,${poison}}`, `[{"n":"air-temperature","v":20,${poison}}]`]) {
      const message = { topic: 'boardcure/shed/sensor/n1', text, byteLength: text.length };
      decodeMessage(message, { site: 'shed' }, { now: 0 });
      const single = { ...message, topic: `${message.topic}/air-temperature` };
      decodeMessage(single, { site: 'shed' }, { now: 0 });
    }
  });

  it.each(['__proto__', 'constructor', 'toString', 'hasOwnProperty'])(
    'is a name like any other: a sensor %s',
    async (id) => {
      const site = await build();
      await site.hear(id, 'air-temperature', [[site.now, 20]]);
      expect(await site.call('readSensor', { id })).toMatchObject({ id, latest: [{ value: 20 }] });
      expect(site.errors).toEqual([]);
    },
  );
});
