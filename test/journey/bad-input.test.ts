import { connectAsync } from 'mqtt';
import { describe, expect, it } from 'vitest';
import { freshSite } from './fresh-site.ts';
import { siteApi } from './site-api.ts';

const site = freshSite();

describe('bad input', () => {
  it('over MQTT is refused or flagged, counted, and good readings still flow', async () => {
    const daemon = await site.daemon();
    const api = siteApi(daemon.http);
    const client = await connectAsync(`mqtt://127.0.0.1:${daemon.mqtt}`);
    site.atEnd(() => client.endAsync(true));
    const send = (sensor: string, payload: string | Buffer, quantity = '/air-temperature') =>
      client.publishAsync(`boardcure/shed/sensor/${sensor}${quantity}`, payload, { qos: 1 });
    await send('rack-1', 'warm');
    await send('rack-1', 'NaN');
    await send('rack-1', '1e9');
    await send('rack-1', '[{"n":"air-temperature","u":"%RH","v":20}]', '');
    await send('rack-1', Buffer.alloc(1_048_576, '2'));
    const before = Date.now();
    await send('lost-clock', '{"value":20,"time":"1970-01-01T00:00:30Z"}');
    await send('future', '{"value":20,"time":4102444800}');
    await send('good', '19.5');
    const { intake } = await api.health();
    expect(intake).toMatchObject({ accepted: 3, refused: 5, flagged: 2, dropped: 0 });
    const refused = await api.refused();
    expect(refused.map(({ code }) => code).reverse()).toEqual([
      'payload-not-a-number',
      'value-not-finite',
      'value-out-of-range',
      'unit-does-not-fit',
      'payload-too-large',
    ]);
    for (const { detail } of refused) expect(detail).toMatch(/; |send|check/);
    const sensors = await api.sensors();
    expect(sensors.map(({ id }) => id).sort()).toEqual(['future', 'good', 'lost-clock']);
    for (const { latest } of sensors) {
      // The arrival stands in for a time that cannot be right.
      expect(Date.parse(latest[0]?.at ?? '')).toBeGreaterThanOrEqual(before - 1000);
      expect(Date.parse(latest[0]?.at ?? '')).toBeLessThanOrEqual(Date.now() + 1000);
    }
  });

  it('over HTTP is answered with what is wrong, where, and what to do', async () => {
    const daemon = await site.daemon();
    const api = siteApi(daemon.http);
    const unknown = '01890000-0000-7000-8000-000000000000';
    const { id: placeId } = await api.createRoom('Paint room');
    const boards = { count: 1, lengthMm: 1000, widthMm: 100, thicknessMm: 20 };
    const batch = { name: 'B', placeId, species: 'scots-pine', surface: 'sawn', boards };
    const now = new Date().toISOString();
    const hand = { placeId, quantity: 'air-temperature', at: now };
    const cases: [string, string, unknown, number, string][] = [
      ['POST', '/places', { name: 'A', kind: 'room', colour: 'red' }, 400, 'BC_REQUEST_INVALID'],
      ['POST', '/places', { name: 'A', kind: 'cave' }, 400, 'BC_REQUEST_INVALID'],
      ['POST', '/places', 'not JSON', 400, 'BC_REQUEST_UNREADABLE'],
      [
        'POST',
        '/places',
        { name: 'x'.repeat(1_100_000), kind: 'room' },
        413,
        'BC_REQUEST_TOO_LARGE',
      ],
      [
        'POST',
        '/batches',
        { ...batch, boards: { ...boards, count: 'ten' } },
        400,
        'BC_REQUEST_INVALID',
      ],
      ['POST', '/batches', { ...batch, placeId: unknown }, 422, 'BC_REFERENCE_UNKNOWN'],
      ['GET', `/batches/${unknown}`, undefined, 404, 'BC_THING_UNKNOWN'],
      ['POST', `/batches/${unknown}/coats`, { coat: 0, finishedAt: now }, 404, 'BC_THING_UNKNOWN'],
      ['PATCH', '/sensors/never-heard', { placeId }, 404, 'BC_THING_UNKNOWN'],
      ['POST', '/readings', { ...hand, values: [1e9] }, 400, 'BC_REQUEST_INVALID'],
      [
        'POST',
        '/readings',
        { ...hand, values: [20], at: '2100-01-01T00:00:00Z' },
        400,
        'BC_REQUEST_INVALID',
      ],
      ['GET', '/nothing-here', undefined, 404, 'BC_ROUTE_UNKNOWN'],
    ];
    for (const [method, path, body, status, code] of cases) {
      const answer = await api.askProblem(method, `/api/v1${path}`, body);
      const what = `${method} ${path} ${JSON.stringify(body)?.slice(0, 80)}`;
      expect({ status: answer.status, code: answer.body.code }, what).toEqual({ status, code });
      expect(answer.type, what).toContain('application/problem+json');
      expect(answer.body.detail, what).not.toBe('');
      expect(answer.body.doThis, what).not.toBe('');
      if (status === 400 && code === 'BC_REQUEST_INVALID')
        expect(answer.body.pointer, what).toMatch(/^\//);
    }
    expect((await api.ask('POST', '/api/v1/batches', batch)).status).toBe(201);
  });
});
