import type { Quantity } from '../../daemon/contract/quantity.ts';
import type { Said } from '../../daemon/contract/sentence.ts';
import { sentence } from '../../daemon/wording/english.ts';
import type { Inner } from '../../daemon/wording/phrase.ts';
import { type SentenceCode, type SentenceTable, told } from '../../daemon/wording/sentence.ts';
import type { PayloadSentences } from '../../daemon/wording/subject/payload.ts';

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
  /** The same as a sentence, to be said in other languages. */
  readonly said: Said;
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

/** The detail of a refusal, in English and as a sentence. */
export function because<Code extends keyof PayloadSentences & SentenceCode>(
  code: Code,
  values: SentenceTable[Code],
): Pick<Refusal, 'detail' | 'said'> {
  const said = sentence(code, values);
  return { detail: said.text, said };
}

type Spot = Extract<keyof PayloadSentences, `spot/${string}` | `thing/${string}`>;

/** Where something stood, to go into a sentence. */
export const spot = <Code extends Spot & SentenceCode>(
  code: Code,
  values: SentenceTable[Code],
): Inner => told(code, values) as Inner;

/** What a value was found in: as the subject of a sentence, and as a place. */
export type Source = { readonly what: Inner; readonly spot: Inner };

export const inPayload = spot('spot/payload', {});
export const inObject = spot('spot/object', {});
export const inRecord = (record: number): Inner => spot('spot/record', { record });
export const thePayload: Source = { what: spot('thing/payload', {}), spot: inPayload };

/** The value that a pointer finds. @param pointer empty for the whole payload */
export const theValueAt = (pointer: string): Source =>
  pointer === ''
    ? { what: spot('thing/value-top', {}), spot: spot('spot/value-top', {}) }
    : { what: spot('thing/value-at', { pointer }), spot: spot('spot/value-at', { pointer }) };

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

/** The same, to go into a sentence of any language. */
export function sent(value: unknown): Inner {
  if (value === undefined) return told('sent/nothing', {}) as Inner;
  if (Array.isArray(value)) return told('sent/array', {}) as Inner;
  if (typeof value === 'object' && value !== null) return told('sent/object', {}) as Inner;
  return told('as-written', { text: shown(value) }) as Inner;
}

function escaped(character: string): string {
  return `\\u{${(character.codePointAt(0) ?? 0).toString(16)}}`;
}
