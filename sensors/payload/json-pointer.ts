import type { Said } from '../../daemon/contract/sentence.ts';
import { sentence } from '../../daemon/wording/english.ts';
import { isJsonObject } from './json.ts';

export type JsonPointer = readonly string[];
export type PointerSlip = 'start' | 'tilde' | 'deep';

/** Deeper than any sensor nests. Assumption. */
const mostTokens = 32;
const arrayIndex = /^(?:0|[1-9]\d{0,8})$/;

/**
 * Takes a JSON Pointer apart.
 *
 * @param text for example `/data/0/temp`; empty for the whole document
 * @returns its reference tokens, unescaped; or what is wrong with it
 *
 * **Source:** RFC 6901 (2013), sections 3 and 4.
 */
export function parsedPointer(text: string): JsonPointer | PointerSlip {
  if (text === '') return [];
  if (!text.startsWith('/')) return 'start';
  if (/~(?![01])/.test(text)) return 'tilde';
  const tokens = text.slice(1).split('/');
  if (tokens.length > mostTokens) return 'deep';
  // Section 4: first ~1, then ~0, so that ~01 becomes ~1.
  return tokens.map((token) => token.replaceAll('~1', '/').replaceAll('~0', '~'));
}

/** What is wrong with a pointer, as a sentence. @param pointer as it is to be shown */
export function pointerFault(slip: PointerSlip, pointer: string): Said {
  return slip === 'deep'
    ? sentence('pointer-fault/deep', { pointer, levels: mostTokens })
    : sentence(`pointer-fault/${slip}`, { pointer });
}

/**
 * What a pointer points at. Only what the document itself holds is found, never what objects
 * inherit, so that `/__proto__` and `/length` are names like others.
 *
 * @param json a parsed document
 * @returns undefined where there is nothing
 */
export function atPointer(json: unknown, pointer: JsonPointer): unknown {
  let here = json;
  for (const token of pointer) {
    if (Array.isArray(here)) here = arrayIndex.test(token) ? here[Number(token)] : undefined;
    else if (isJsonObject(here)) here = Object.hasOwn(here, token) ? here[token] : undefined;
    else return undefined;
  }
  return here;
}

/** A pointer as text. **Source:** RFC 6901, section 3. */
export function pointerText(tokens: JsonPointer): string {
  return tokens.map((token) => `/${token.replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');
}
