import type { Words } from '../words/words.ts';

type TypeWords = Pick<Words['apiPage'], 'either' | 'inThe' | 'listOf' | 'listOfAnything'>;

/** One field of what a route takes or answers. */
export interface ListedField {
  readonly name: string;
  readonly type: string;
  readonly must: boolean;
  readonly about: string;
}

/** One route, ready to be read. */
export interface ListedRoute {
  readonly method: string;
  readonly path: string;
  readonly summary: string;
  readonly takes: readonly ListedField[];
}

type Json = Readonly<Record<string, unknown>>;

/**
 * The routes of an OpenAPI 3 document, in its own order.
 *
 * @param document - the parsed document; what does not fit is left out
 * @param words - in which types are told
 */
export function listRoutes(document: unknown, words: TypeWords): ListedRoute[] {
  const root = objectOf(document);
  return Object.entries(objectOf(root.paths)).flatMap(([path, methods]) =>
    Object.entries(objectOf(methods)).flatMap(([method, described]) => {
      const route = objectOf(described);
      if (!('responses' in route)) return [];
      return [
        {
          method: method.toUpperCase(),
          path,
          summary: textOf(route.summary),
          takes: [...parametersOf(root, route, words), ...bodyOf(root, route, words)],
        },
      ];
    }),
  );
}

function parametersOf(root: Json, route: Json, words: TypeWords): ListedField[] {
  const parameters = Array.isArray(route.parameters) ? route.parameters : [];
  return parameters.map((entry) => {
    const parameter = resolved(root, entry);
    const schema = resolved(root, parameter.schema);
    return {
      name: words.inThe(textOf(parameter.name), textOf(parameter.in)),
      type: typeOf(root, schema, words),
      must: parameter.required === true,
      about: textOf(parameter.description) || textOf(schema.description),
    };
  });
}

function bodyOf(root: Json, route: Json, words: TypeWords): ListedField[] {
  const body = resolved(root, route.requestBody);
  const schema = resolved(root, objectOf(objectOf(body.content)['application/json']).schema);
  const must = Array.isArray(schema.required) ? schema.required : [];
  return Object.entries(objectOf(schema.properties)).map(([name, property]) => {
    const field = resolved(root, property);
    const unit = textOf(field.unit);
    return {
      name,
      type: typeOf(root, field, words) + (unit === '' ? '' : `, ${unit}`),
      must: must.includes(name),
      about: textOf(field.description),
    };
  });
}

function typeOf(root: Json, schema: Json, words: TypeWords): string {
  const choices = schema.anyOf ?? schema.oneOf;
  if (Array.isArray(choices)) {
    const types = choices.map((choice) => typeOf(root, resolved(root, choice), words));
    return words.either([...new Set(types)]);
  }
  if (Array.isArray(schema.enum)) return schema.enum.map(String).join(' | ');
  if ('const' in schema) return String(schema.const);
  if (schema.type === 'array') {
    const items = typeOf(root, resolved(root, schema.items), words);
    return items === '' ? words.listOfAnything : words.listOf(items);
  }
  if (schema.type === 'object') {
    const names = Object.keys(objectOf(schema.properties));
    return names.length === 0 ? 'object' : `{ ${names.join(', ')} }`;
  }
  const type = Array.isArray(schema.type)
    ? words.either(schema.type.map(String))
    : textOf(schema.type);
  const format = textOf(schema.format);
  return format === '' ? type : `${type} (${format})`;
}

function resolved(root: Json, schema: unknown): Json {
  const given = objectOf(schema);
  const reference = given.$ref;
  if (typeof reference !== 'string' || !reference.startsWith('#/')) return given;
  const found = reference
    .slice(2)
    .split('/')
    .reduce<unknown>((at, key) => objectOf(at)[key], root);
  return objectOf(found);
}

function objectOf(value: unknown): Json {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
    ? (value as Json)
    : {};
}

function textOf(value: unknown): string {
  return typeof value === 'string' ? value : '';
}
