import { because, type Refused, refuse } from './refusal.ts';

export type ParsedJson = { readonly kind: 'json'; readonly json: unknown } | Refused;

export type JsonObject = { readonly [label: string]: unknown };

/**
 * Parses JSON text without throwing.
 * @param text any text
 */
export function parsedJson(text: string): ParsedJson {
  try {
    return { kind: 'json', json: JSON.parse(text) };
  } catch {
    const isNotFinite = /[:,[]\s*[+-]?(?:nan|inf|infinity)\b/i.test(text);
    return refuse({
      code: 'payload-not-json',
      ...(isNotFinite
        ? because('json-broken/not-finite', { options: ['NaN', 'Infinity'] })
        : because('json-broken/not-whole', {})),
    });
  }
}

/** Tells whether a parsed value is an object with members, not an array and not null. */
export function isJsonObject(json: unknown): json is JsonObject {
  return typeof json === 'object' && json !== null && !Array.isArray(json);
}

/**
 * A member of a parsed object; what the object merely inherits does not count.
 * @returns undefined when the member is absent or null
 */
export function member(object: JsonObject, label: string): unknown {
  return Object.hasOwn(object, label) ? (object[label] ?? undefined) : undefined;
}
