import type { Quantity } from '../../daemon/contract/quantity.ts';

/** Why a message, or one record of it, is no reading. A code keeps its meaning for good. */
export const refusalCodes = [
  'topic-not-understood',
  'sensor-id-not-allowed',
  'quantity-unknown',
  'payload-empty',
  'payload-too-large',
  'payload-not-text',
  'payload-not-a-number',
  'payload-not-json',
  'payload-not-cbor',
  'payload-shape',
  'value-not-finite',
  'value-out-of-range',
  'unit-does-not-fit',
  'time-not-understood',
  'senml-version',
  'senml-must-understand',
  'senml-name',
  'senml-no-value',
] as const;
export type RefusalCode = (typeof refusalCodes)[number];

/** One thing that was refused; `detail` says what was wrong, where, and what to do. */
export type Refusal = {
  readonly code: RefusalCode;
  readonly detail: string;
  readonly sensor?: string;
  readonly quantity?: Quantity;
  /** What was sent, in the unit of the quantity, where it can be no reading. */
  readonly value?: number;
};

/** The outcome of whatever could be read but was not. */
export type Refused = { readonly kind: 'refused'; readonly refusal: Refusal };

/** A refusal as an outcome. */
export function refuse(refusal: Refusal): Refused {
  return { kind: 'refused', refusal };
}

const longestShown = 40;

/**
 * A foreign value as it may stand in a sentence: short, on one line, invisible characters escaped.
 * @param value anything that came out of a message
 * @returns at most about 430 characters; objects and arrays are named, not printed
 */
export function shown(value: unknown): string {
  if (typeof value === 'string') {
    const cut = value.length > longestShown;
    const quoted = JSON.stringify(cut ? `${value.slice(0, longestShown)}…` : value);
    return quoted.replace(/[\p{C}\p{Zl}\p{Zp}]/gu, escaped);
  }
  if (Array.isArray(value)) return 'an array';
  if (typeof value === 'object' && value !== null) return 'an object';
  return String(value);
}

function escaped(character: string): string {
  return `\\u{${(character.codePointAt(0) ?? 0).toString(16)}}`;
}
