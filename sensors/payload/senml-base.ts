import { type JsonObject, member } from './json.ts';
import { type Refusal, shown } from './refusal.ts';

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
 * @param where the record's place, for a sentence
 *
 * **Source:** RFC 8428 (2018), sections 4 and 4.4. A base sum is not taken: sums are no readings.
 */
export function takeBaseFields(json: JsonObject, where: string, base: Base): void {
  for (const [label, type] of Object.entries(baseLabels)) {
    const value = member(json, label);
    if (value === undefined) continue;
    base.broken.delete(label);
    if (typeof value === type) {
      base.fields.set(label, value);
    } else {
      base.broken.set(label, {
        code: label === 'bt' ? 'time-not-understood' : 'payload-shape',
        detail: `The base field ${label} in ${where} is ${shown(value)} instead of a ${type}, so neither this record nor those that build on it can be read.`,
      });
    }
  }
  for (const label of Object.keys(json)) {
    // Section 4.4; labels of base fields begin with b and cover the records after them too.
    if (label.startsWith('b') && label.endsWith('_')) {
      base.broken.set(label, mustUnderstand(label, where));
    }
  }
}

/** The refusal of a field whose label ends in `_` (section 4.4). */
export function mustUnderstand(label: string, where: string): Refusal {
  return {
    code: 'senml-must-understand',
    detail: `The field ${shown(label)} in ${where} must be understood by whoever reads it, and is not known here; send the reading without it.`,
  };
}
