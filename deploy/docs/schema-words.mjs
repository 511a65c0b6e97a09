import { code } from './markdown.mjs';

/** Bounds that only say what a whole number can be. */
const NO_BOUND = new Set([Number.MAX_SAFE_INTEGER, Number.MIN_SAFE_INTEGER]);

/**
 * What a JSON Schema lets through, in words.
 *
 * @param {any} schema JSON Schema, draft 2020-12
 * @returns {string}
 */
export function schemaWords(schema) {
  if (schema.const !== undefined) return code(JSON.stringify(schema.const));
  if (schema.enum)
    return schema.enum.map((/** @type {unknown} */ one) => code(String(one))).join(', ');
  const choices = schema.anyOf ?? schema.oneOf;
  if (choices) return [...new Set(choices.map(schemaWords))].join(' or ') + unit(schema);
  if (Array.isArray(schema.type)) {
    const each = schema.type.map((/** @type {string} */ type) => schemaWords({ ...schema, type }));
    return each.join(' or ');
  }
  if (schema.allOf) return schema.allOf.map(schemaWords).join(' and ');
  switch (schema.type) {
    case 'null':
      return 'nothing (`null`)';
    case 'boolean':
      return 'true or false';
    case 'integer':
    case 'number':
      return `${schema.type === 'integer' ? 'whole number' : 'number'}${bounds(schema)}${unit(schema)}`;
    case 'string':
      return `text${textForm(schema)}${unit(schema)}`;
    case 'array':
      return `list of ${schema.items ? schemaWords(schema.items) : 'anything'}`;
    case 'object':
      return schema.additionalProperties && typeof schema.additionalProperties === 'object'
        ? `object by name, each ${schemaWords(schema.additionalProperties)}`
        : 'object';
    default:
      return 'anything';
  }
}

/** @param {any} schema */
function bounds({ minimum, maximum, exclusiveMinimum, exclusiveMaximum }) {
  const low = minimum !== undefined && !NO_BOUND.has(minimum) ? minimum : undefined;
  const high = maximum !== undefined && !NO_BOUND.has(maximum) ? maximum : undefined;
  if (exclusiveMinimum !== undefined) {
    return high === undefined
      ? ` above ${exclusiveMinimum}`
      : ` above ${exclusiveMinimum}, up to ${high}`;
  }
  if (exclusiveMaximum !== undefined) return ` below ${exclusiveMaximum}`;
  if (low !== undefined && high !== undefined) return ` from ${low} to ${high}`;
  if (low !== undefined) return `, at least ${low}`;
  return high === undefined ? '' : `, at most ${high}`;
}

/** @param {any} schema */
const unit = (schema) => (schema.unit ? `, ${schema.unit}` : '');

/** @param {any} schema */
function textForm({ format, minLength, maxLength }) {
  const known = { 'date-time': ', ISO 8601', uuid: ', UUID', uri: ', URL' };
  if (format in known) return known[/** @type {keyof typeof known} */ (format)];
  if (minLength > 1 && maxLength) return `, ${minLength} to ${maxLength} characters`;
  return maxLength ? `, up to ${maxLength} characters` : '';
}

/**
 * Every field of an object and of the objects in it, the outer ones first.
 *
 * @param {any} schema
 * @param {{ within?: string, depth?: number }} [how]
 * @returns {{ name: string, words: string, says: string, isNeeded: boolean }[]}
 */
export function fieldsOf(schema, { within = '', depth = 3 } = {}) {
  const properties = schema?.properties ?? {};
  const needed = new Set(schema?.required ?? []);
  return Object.entries(properties).flatMap(([key, field]) => {
    const name = `${within}${key}`;
    const own = {
      name,
      words: schemaWords(field),
      says: field.description ?? '',
      isNeeded: needed.has(key) && field.default === undefined,
    };
    const inner = depth > 1 ? innerObject(field) : null;
    return inner
      ? [own, ...fieldsOf(inner.schema, { within: `${name}${inner.mark}.`, depth: depth - 1 })]
      : [own];
  });
}

/**
 * @param {any} field
 * @returns {{ schema: any, mark: string } | null}
 */
function innerObject(field) {
  if (field.properties) return { schema: field, mark: '' };
  if (field.type === 'array' && field.items?.properties) return { schema: field.items, mark: '[]' };
  const choices = (field.anyOf ?? []).filter((/** @type {any} */ one) => one.type !== 'null');
  return choices.length === 1 ? innerObject(choices[0]) : null;
}
