import fc from 'fast-check';
import type { InjectOptions } from 'fastify';
import { expect } from 'vitest';
import { problems } from '../../daemon/contract/problem.ts';
import type { Route } from '../../daemon/contract/route.ts';
import { type RouteName, routes } from '../../daemon/contract/routes.ts';
import { openAccess } from '../access/open-access.ts';
import { type BuiltSite, build, fromHere, withCoat } from '../http/built-site.ts';
import { arbitraryOf, junk, spoiled } from './schema-arbitrary.ts';

/** Those that would change who may ask the next question are only ever asked wrongly. */
const onlySpoiled: readonly RouteName[] = ['setPin', 'logIn', 'pairTablet'];
/** The disk is never full here: an answer that blames the daemon is a fault of the daemon. */
const firstOwnFault = 500;
const longestLatin1 = /[^\u0020-\u007e]/g;

const json = { 'content-type': 'application/json' };

/** Requests of every kind at every route: mostly right, with one thing wrong, and anything. */
export function anyRequest(ids: readonly string[]): fc.Arbitrary<InjectOptions> {
  const perRoute = (Object.keys(routes) as RouteName[]).map((name) => requestOf(name, ids));
  return fc.oneof(
    { weight: 20, arbitrary: fc.oneof(...perRoute) },
    {
      weight: 1,
      arbitrary: fc.record({
        method: fc.constantFrom(
          'GET',
          'POST',
          'PUT',
          'PATCH',
          'DELETE',
          'OPTIONS',
          'HEAD' as const,
        ),
        url: fc
          .array(fc.oneof(fc.webPath(), fc.string({ maxLength: 20 })), { maxLength: 4 })
          .map((parts) => `/${parts.map(encoded).join('/')}`),
        payload: fc.string({ unit: 'binary', maxLength: 200 }),
        headers: fc.constantFrom(json, { 'content-type': 'text/plain' }, {}),
      }),
    },
  );
}

function requestOf(name: RouteName, ids: readonly string[]): fc.Arbitrary<InjectOptions> {
  const route: Route = routes[name];
  const body = route.body ? arbitraryOf(route.body, ids) : fc.constant(undefined);
  const bodies = onlySpoiled.includes(name)
    ? junk
    : fc.oneof({ weight: 2, arbitrary: body }, { weight: 3, arbitrary: spoiled(body) });
  const query = route.query ? arbitraryOf(route.query, ids) : fc.constant({});
  const queries = fc.oneof({ weight: 2, arbitrary: query }, spoiled(query));
  const part = fc.oneof(
    { weight: 5, arbitrary: fc.constantFrom(...ids, 'n1', 'operate') },
    { weight: 1, arbitrary: fc.string({ unit: 'binary', minLength: 1, maxLength: 30 }) },
  );
  return fc
    .record({
      bodies,
      queries,
      first: part,
      second: part,
      cut: fc.nat({ max: 400 }),
      odd: fc.nat(20),
    })
    .map(({ bodies: sent, queries: asked, first, second, cut, odd }) => {
      const path = route.path
        .replace(/:id|:role/, encoded(first))
        .replace(':part', encoded(second));
      const text = sent === undefined ? undefined : JSON.stringify(sent);
      return {
        method: route.method,
        url: path + search(asked),
        ...(route.body && text !== undefined
          ? { headers: json, payload: odd === 0 ? text.slice(0, cut) : text }
          : {}),
      };
    });
}

function search(asked: unknown): string {
  if (typeof asked !== 'object' || asked === null) return `?${encoded(String(asked))}`;
  const pairs = Object.entries(asked).map(
    ([key, value]) =>
      `${encoded(key)}=${encoded(typeof value === 'string' ? value : (JSON.stringify(value) ?? ''))}`,
  );
  return pairs.length === 0 ? '' : `?${pairs.join('&')}`;
}

/** Lone surrogates have no UTF-8, so no client can send them. */
const encoded = (text: string): string => encodeURIComponent(text.replace(/\p{Surrogate}/gu, '?'));

/** A site with something of everything, and the ids of it. */
export async function fuzzedSite(): Promise<{ site: BuiltSite; ids: string[] }> {
  const opened = openAccess();
  const site = await build({ access: opened.access, mqttAccess: opened.mqttAccess });
  const { room, batch, coat } = await withCoat(site);
  const [plan] = await site.call('listPlans');
  return { site, ids: [room.id, batch.id, coat.id, plan?.id ?? room.id] };
}

/** Asks so many things of a site, and holds each answer to what must hold for all of them. */
export async function askAnything(runs: number): Promise<void> {
  const { site, ids } = await fuzzedSite();
  const keys = Reflect.ownKeys(Object.prototype).length;
  let asked = 0;
  await fc.assert(
    fc.asyncProperty(anyRequest(ids), async (request) => {
      const reply = await site.app.inject({
        ...fromHere,
        ...request,
        headers: { ...fromHere.headers, ...request.headers },
      });
      const told = `${request.method} ${request.url} ${String(request.payload).slice(0, 300)} → ${reply.body.slice(0, 300)} ${JSON.stringify(site.errors.slice(0, 1))}`;
      expect(reply.statusCode, told.replace(longestLatin1, '·')).toBeLessThan(firstOwnFault);
      if (reply.statusCode >= 400 && request.method !== 'HEAD') {
        expect(Object.keys(problems), told).toContain(reply.json<{ code: string }>().code);
      }
      expect(Reflect.ownKeys(Object.prototype)).toHaveLength(keys);
      if (++asked % 100 === 0) await hearGoodReading(site, asked);
    }),
    { numRuns: runs, endOnFailure: true },
  );
  expect(site.errors).toEqual([]);
}

async function hearGoodReading(site: BuiltSite, count: number): Promise<void> {
  const at = site.now + count;
  await site.hear('steady', 'air-temperature', [[at, 20 + (count % 7)]]);
  const { latest } = await site.call('readSensor', { id: 'steady' });
  expect(latest[0]).toMatchObject({ value: 20 + (count % 7) });
}
