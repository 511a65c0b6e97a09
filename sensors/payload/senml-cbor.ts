import { decode, type TagDecoder } from 'cborg';
import { because, type Refused, refuse } from './refusal.ts';

/** Integer labels of SenML in CBOR. **Source:** RFC 8428 (2018), section 6, table 4. */
const labels: ReadonlyMap<number, string> = new Map([
  [-1, 'bver'],
  [-2, 'bn'],
  [-3, 'bt'],
  [-4, 'bu'],
  [-5, 'bv'],
  [-6, 'bs'],
  [0, 'n'],
  [1, 'u'],
  [2, 'v'],
  [3, 'vs'],
  [4, 'vb'],
  [5, 's'],
  [6, 't'],
  [7, 'ut'],
  [8, 'vd'],
]);

/** A pack is an array of maps of plain values: three levels, and two more for tagged numbers. */
const deepest = 8;

/**
 * Whether a payload is an array in CBOR. Such bytes cannot begin UTF-8 text, so that nothing else
 * is mistaken for it.
 *
 * **Source:** RFC 8949 (2020), sections 3.1 (major type 4) and 3.4.6 (self-described CBOR).
 */
export function looksLikeCbor(bytes: Uint8Array): boolean {
  const first = bytes[0] ?? 0;
  return (
    (first >= 0x80 && first <= 0x9f) || (first === 0xd9 && bytes[1] === 0xd9 && bytes[2] === 0xf7)
  );
}

/** What is wrong with CBOR that its decoder alone would take. */
class CborFault extends Error {
  readonly kind: 'too-deep' | 'fraction';
  constructor(kind: 'too-deep' | 'fraction') {
    super(kind);
    this.kind = kind;
  }
}

export type CborPack = { readonly kind: 'pack'; readonly pack: readonly unknown[] } | Refused;

/**
 * Reads a SenML pack in CBOR into the same records as one in JSON. Never throws.
 *
 * **Source:** RFC 8428 (2018), section 6: integer labels, and decimal fractions (tag 4) as numbers.
 */
export function senmlCborPack(bytes: Uint8Array): CborPack {
  let decoded: unknown;
  try {
    if (nestsTooDeep(bytes)) throw new CborFault('too-deep');
    decoded = decode(bytes, { useMaps: true, rejectDuplicateMapKeys: true, tags });
  } catch (cause) {
    if (cause instanceof CborFault) {
      return refuse({ code: 'payload-not-cbor', ...because(`cbor-broken/${cause.kind}`, {}) });
    }
    const why = (cause instanceof Error ? cause.message : String(cause))
      .replace(/^CBOR decode error: /, '')
      .replaceAll(/[^\x20-\x7e]/g, '?')
      .slice(0, 120);
    return refuse({ code: 'payload-not-cbor', ...because('cbor-broken', { because: why }) });
  }
  if (!Array.isArray(decoded)) {
    return refuse({
      code: 'payload-shape',
      ...because('cbor-not-array', {}),
    });
  }
  return { kind: 'pack', pack: decoded.map(record) };
}

function record(item: unknown): unknown {
  if (!(item instanceof Map)) return item instanceof Uint8Array ? 'bytes' : plain(item);
  // Without a prototype, so that a label such as __proto__ is a label like others.
  const object: Record<string, unknown> = Object.create(null);
  for (const [key, value] of item) {
    const label = typeof key === 'number' ? (labels.get(key) ?? String(key)) : String(key);
    object[label] = plain(value);
  }
  return object;
}

/** What JSON could hold: other things only need to be told apart from numbers and text. */
function plain(value: unknown): unknown {
  if (typeof value === 'bigint') return Number(value);
  if (value instanceof Map) return {};
  if (value instanceof Uint8Array) return '';
  return value;
}

/** Mantissa times a power of ten. **Source:** RFC 8949 (2020), section 3.4.4. */
const decimalFraction: TagDecoder = (content) => {
  const pair = content();
  const [exponent, mantissa] = Array.isArray(pair) && pair.length === 2 ? pair.map(Number) : [];
  if (!Number.isInteger(exponent) || !Number.isInteger(mantissa)) {
    throw new CborFault('fraction');
  }
  return Number(`${mantissa}e${exponent}`);
};

const tags: { [tag: number]: TagDecoder } = {
  4: decimalFraction,
  55799: (content) => content(),
};

/**
 * Whether arrays, maps and tags lie in each other deeper than a pack can be. Goes through the heads
 * alone, once, before anything is built, so that no nesting can exhaust the stack.
 *
 * **Source:** RFC 8949 (2020), section 3.
 */
function nestsTooDeep(bytes: Uint8Array): boolean {
  /** Items that each open array or map still awaits; infinite until its break. */
  const awaited: number[] = [];
  let at = 0;
  while (at < bytes.length) {
    const head = bytes[at] ?? 0;
    const major = head >> 5;
    const info = head & 31;
    const size = info < 24 || info > 27 ? 0 : 2 ** (info - 24);
    let argument = info < 24 ? info : 0;
    for (let i = 1; i <= size; i++) argument = argument * 256 + (bytes[at + i] ?? 0);
    at += 1 + size;
    if (head === 0xff) {
      awaited.pop();
    } else {
      if ((major === 2 || major === 3) && info !== 31) at += argument;
      const indefinite = info === 31 && major >= 2 && major <= 5;
      const inside = indefinite
        ? Number.POSITIVE_INFINITY
        : major === 4
          ? argument
          : major === 5
            ? argument * 2
            : major === 6
              ? 1
              : 0;
      if (inside > 0) {
        awaited.push(inside);
        if (awaited.length > deepest) return true;
        continue;
      }
    }
    // An item is whole; what it completes is whole as well.
    while (awaited.length > 0) {
      const left = (awaited.pop() ?? 1) - 1;
      if (left > 0) {
        awaited.push(left);
        break;
      }
    }
  }
  return false;
}
