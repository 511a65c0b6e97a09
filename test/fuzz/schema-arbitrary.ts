import fc from 'fast-check';
import { z } from 'zod';

/** The parts of JSON Schema that the contract’s schemas are written in. */
interface Schema {
  type?: string | string[];
  enum?: unknown[];
  const?: unknown;
  anyOf?: Schema[];
  oneOf?: Schema[];
  allOf?: Schema[];
  properties?: Record<string, Schema>;
  required?: string[];
  additionalProperties?: boolean | Schema;
  items?: Schema;
  prefixItems?: Schema[];
  minItems?: number;
  maxItems?: number;
  minLength?: number;
  maxLength?: number;
  minimum?: number;
  maximum?: number;
  exclusiveMinimum?: number;
  exclusiveMaximum?: number;
  format?: string;
  pattern?: string;
}

const hostileTexts = [
  '',
  ' ',
  '\u0000',
  '\ud800',
  '\u202e',
  '__proto__',
  'constructor',
  "'; drop table place; --",
  '<script>alert(1)</script>',
  '=cmd|"/C calc"!A0',
  '../../etc/passwd',
  '%00',
  '{{7*7}}',
  'NaN',
  '-0',
  '1e999',
  '9'.repeat(400),
];

/** Anything at all that JSON can say, and some of what has done harm before. */
export const junk: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom<unknown>(...hostileTexts),
  fc.string({ unit: 'binary', maxLength: 40 }),
  fc.double(),
  fc.integer(),
  fc.constantFrom<unknown>(null, true, [], {}, -1, 0, 2 ** 53, 1e308, -1e308, [[[[]]]]),
  fc.jsonValue(),
);

const moments = fc.oneof(
  fc
    .integer({ min: Date.UTC(2026, 0, 1), max: Date.UTC(2026, 11, 31) })
    .map((at) => new Date(at).toISOString()),
  fc.constantFrom('0001-01-01T00:00:00Z', '9999-12-31T23:59:59+14:00', '2026-02-29T00:00:00Z'),
);

/**
 * Values that a schema would mostly take.
 *
 * @param schema - a schema of the contract
 * @param ids - of things that exist
 */
export function arbitraryOf(schema: z.ZodType, ids: readonly string[]): fc.Arbitrary<unknown> {
  return of(z.toJSONSchema(schema, { io: 'input' }) as Schema, ids);
}

function of(schema: Schema, ids: readonly string[]): fc.Arbitrary<unknown> {
  if (schema.const !== undefined) return fc.constant(schema.const);
  if (schema.enum) return fc.constantFrom(...schema.enum);
  const either = schema.anyOf ?? schema.oneOf;
  if (either) return fc.oneof(...either.map((one) => of(one, ids)));
  if (schema.allOf) return of(Object.assign({}, ...schema.allOf) as Schema, ids);
  const types = [schema.type].flat();
  if (types.length > 1)
    return fc.oneof(...types.map((type) => of({ ...schema, type: type ?? 'null' }, ids)));
  switch (types[0]) {
    case 'object':
      return objectOf(schema, ids);
    case 'array':
      return fc.array(of(schema.items ?? {}, ids), {
        minLength: schema.minItems ?? 0,
        maxLength: Math.min(schema.maxItems ?? 6, (schema.minItems ?? 0) + 6),
      });
    case 'string':
      return textOf(schema, ids);
    case 'integer':
    case 'number':
      return numberOf(schema);
    case 'boolean':
      return fc.boolean();
    case 'null':
      return fc.constant(null);
    default:
      return junk;
  }
}

function objectOf(schema: Schema, ids: readonly string[]): fc.Arbitrary<unknown> {
  const model = Object.fromEntries(
    Object.entries(schema.properties ?? {}).map(([key, part]) => [key, of(part, ids)]),
  );
  return fc.record(model, { requiredKeys: schema.required ?? [] });
}

function textOf(
  { format, pattern, minLength = 0, maxLength = 60 }: Schema,
  ids: readonly string[],
) {
  if (format === 'uuid') return fc.oneof(fc.constantFrom(...ids), fc.uuid());
  if (format === 'date-time') return moments;
  if (pattern) {
    try {
      return fc.stringMatching(new RegExp(pattern));
    } catch {
      // A pattern that cannot be generated from: any text stands in.
    }
  }
  const longest = Math.max(minLength, Math.min(maxLength, 60));
  return fc.string({ unit: 'grapheme', minLength, maxLength: longest });
}

function numberOf(schema: Schema): fc.Arbitrary<number> {
  const low = schema.minimum ?? schema.exclusiveMinimum ?? -1e6;
  const high = schema.maximum ?? schema.exclusiveMaximum ?? Math.max(low, 1e6);
  const edges = fc.constantFrom(low, high);
  return schema.type === 'integer'
    ? fc.oneof(edges, fc.integer({ min: Math.max(low, -(2 ** 31)), max: Math.min(high, 2 ** 31) }))
    : fc.oneof(edges, fc.double({ min: low, max: high, noNaN: true }));
}

/** A value with one of its parts replaced, added or taken away. */
export function spoiled(values: fc.Arbitrary<unknown>): fc.Arbitrary<unknown> {
  return fc
    .tuple(values, junk, fc.nat(), fc.constantFrom('replace', 'add', 'drop', 'whole'))
    .map(([value, bad, place, how]) => {
      if (how === 'whole' || typeof value !== 'object' || value === null) return bad;
      const keys = Object.keys(value);
      const key = keys[place % Math.max(1, keys.length)] ?? 'x';
      const copy: Record<string, unknown> = { ...value };
      if (how === 'drop') delete copy[key];
      else copy[how === 'add' ? `${key}x` : key] = bad;
      return copy;
    });
}
