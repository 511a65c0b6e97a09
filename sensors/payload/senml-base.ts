import { type JsonObject, member } from './json.ts';
import { because, type Refusal, sent, shown } from './refusal.ts';

const baseLabels = { bn: 'string', bt: 'number', bu: 'string', bv: 'number' } as const;

/** The base fields in force at a record: those given last, each until it is given anew. */
export type Base = {
  readonly fields: Map<string, unknown>;
  /** Base labels that could not be used, each with the refusal of every record it covers. */
  readonly broken: Map<string, Refusal>;
};

/** A base name or base unit; undefined when none is in force. */
export function baseText(base: Base, label: 'bn' | 'bu'): string | undefined {
  const text = base.fields.get(label);
  return typeof text === 'string' ? text : undefined;
}

/** A base time (s) or base value; undefined when none is in force. */
export function baseNumber(base: Base, label: 'bt' | 'bv'): number | undefined {
  const number = base.fields.get(label);
  return typeof number === 'number' ? number : undefined;
}

/**
 * Takes the base fields of a record into force, in place.
 * @param json the record
 * @param record its place in the pack, counted from 1
 *
 * **Source:** RFC 8428 (2018), sections 4 and 4.4. A base sum is not taken: sums are no readings.
 */
export function takeBaseFields(json: JsonObject, record: number, base: Base): void {
  for (const [label, type] of Object.entries(baseLabels)) {
    const value = member(json, label);
    if (value === undefined) continue;
    base.broken.delete(label);
    if (typeof value === type) {
      base.fields.set(label, value);
    } else {
      base.broken.set(label, {
        code: label === 'bt' ? 'time-not-understood' : 'payload-shape',
        ...because('base-field', { record, field: label, fieldType: type, sent: sent(value) }),
      });
    }
  }
  for (const label of Object.keys(json)) {
    // Section 4.4; labels of base fields begin with b and cover the records after them too.
    if (label.startsWith('b') && label.endsWith('_')) {
      base.broken.set(label, mustUnderstand(label, record));
    }
  }
}

/** The refusal of a field whose label ends in `_` (section 4.4). */
export function mustUnderstand(label: string, record: number): Refusal {
  return {
    code: 'senml-must-understand',
    ...because('must-understand', { record, field: shown(label) }),
  };
}
