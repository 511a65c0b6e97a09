import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import type { Route } from '../../daemon/contract/route.ts';
import { type RouteName, routes } from '../../daemon/contract/routes.ts';

const all = (Object.keys(routes) as RouteName[]).map((name) => {
  const route: Route = routes[name];
  return { name, ...route };
});

/** Sent with a body, but nothing is made by them. */
const makesNothing: readonly RouteName[] = ['tryTopicRule', 'listenForTopics'];

const fieldsOf = (schema: z.ZodType | undefined) =>
  schema instanceof z.ZodObject ? Object.keys(schema.shape) : [];

describe('the routes of the contract', () => {
  it('answer each method and address once', () => {
    const addresses = all.map(({ method, path }) => `${method} ${path.replace(/:\w+/g, ':')}`);
    expect(new Set(addresses).size).toBe(addresses.length);
  });

  it.each(all)('$name declares the parameters that stand in its path', ({ path, params }) => {
    const inPath = [...path.matchAll(/:(\w+)/g)].map((match) => match[1]);
    expect(fieldsOf(params)).toEqual(inPath);
  });

  it.each(all)('$name takes a body only where something is changed', (route) => {
    const { name, method, body, status } = route;
    if (method === 'GET' || method === 'DELETE') expect(body).toBeUndefined();
    else expect(body).toBeDefined();
    expect(status).toBe(method === 'POST' && !makesNothing.includes(name) ? 201 : 200);
  });

  it.each(all)('$name refuses fields that it does not know', ({ params, query, body }) => {
    for (const schema of [params, query, body]) {
      if (!schema) continue;
      const outcome = schema.safeParse({ unknownField: 1 });
      expect(outcome.error?.issues.map((issue) => issue.code)).toContain('unrecognized_keys');
    }
  });

  it.each(all)(
    '$name can be written as JSON Schema, in and out',
    ({ params, query, body, reply }) => {
      for (const schema of [params, query, body]) {
        if (schema) expect(() => z.toJSONSchema(schema, { io: 'input' })).not.toThrow();
      }
      expect(() => z.toJSONSchema(reply)).not.toThrow();
    },
  );

  it('have camelCase fields', () => {
    const schemas = all.flatMap(({ query, body, reply }) => [query, body, reply]);
    for (const field of schemas.flatMap(fieldsOf)) {
      expect(field).toMatch(/^[a-z][A-Za-z0-9]*$/);
    }
  });
});
