import { isJsonObject, type JsonObject, member } from './json.ts';
import { type Refused, refuse, shown } from './refusal.ts';
import { type Base, baseNumber, baseText, mustUnderstand, takeBaseFields } from './senml-base.ts';
import { asDecimal } from './senml-unit.ts';
import { refusedVersion } from './senml-version.ts';

/** A record with the base fields worked in; `seconds` may still be relative to now. */
export type PackRecord = {
  readonly kind: 'record';
  /** 1 for the first record of the pack. */
  readonly position: number;
  readonly name: string;
  readonly unit: string | null;
  /** Base time plus time, in seconds; null when neither is given. */
  readonly seconds: number | null;
  /** Base value plus value; null when the record holds a text, a boolean, data or only a sum. */
  readonly value: number | null;
};
export type Pack = {
  readonly kind: 'pack';
  readonly records: readonly (PackRecord | Refused)[];
};

/** More records than this in one pack are refused together. */
export const mostRecords = 1000;

const valueLabels = ['v', 'vs', 'vb', 'vd'] as const;
const recordLabels = ['n', 'u', 't', 's', 'ut', ...valueLabels] as const;

/**
 * Applies the base fields of a SenML pack to its records, keeping their order.
 * A record that is wrong is refused alone; a wrong base field refuses the records it covers.
 * @param pack the parsed JSON array
 * @returns the records, or one refusal for the whole pack (its version, or its size)
 *
 * **Source:** RFC 8428 (2018), section 4.
 */
export function resolvedPack(pack: readonly unknown[]): Pack | Refused {
  if (pack.length === 0) {
    return refuse({
      code: 'payload-shape',
      detail: 'The SenML pack is an empty array; send at least one record.',
    });
  }
  if (pack.length > mostRecords) {
    return refuse({
      code: 'payload-too-large',
      detail: `The SenML pack has ${pack.length} records; send at most ${mostRecords} in one message.`,
    });
  }
  const versionRefusal = refusedVersion(pack);
  if (versionRefusal !== null) return refuse(versionRefusal);
  const base: Base = { fields: new Map(), broken: new Map() };
  const records: (PackRecord | Refused)[] = [];
  pack.forEach((json, index) => {
    const record = resolvedRecord(json, index + 1, base);
    if (record !== null) records.push(record);
  });
  return { kind: 'pack', records };
}

function resolvedRecord(json: unknown, position: number, base: Base): PackRecord | Refused | null {
  const where = `record ${position} of the SenML pack`;
  if (!isJsonObject(json)) {
    return refuse({
      code: 'payload-shape',
      detail: `${capital(where)} is ${shown(json)}; each record is an object such as {"n":"air-temperature","u":"Cel","v":21.5}.`,
    });
  }
  takeBaseFields(json, where, base);
  const strange = Object.keys(json).find((label) => label.endsWith('_'));
  if (strange !== undefined) return refuse(mustUnderstand(strange, where));
  // Base fields alone only set the stage for the records after them.
  if (recordLabels.every((label) => member(json, label) === undefined)) {
    const [refusal] = Object.keys(json).some((label) => base.broken.has(label))
      ? base.broken.values()
      : [];
    return refusal === undefined ? null : refuse(refusal);
  }
  const [inherited] = base.broken.values();
  if (inherited !== undefined) return refuse(inherited);
  return ownFields(json, position, where, base);
}

function ownFields(
  json: JsonObject,
  position: number,
  where: string,
  base: Base,
): PackRecord | Refused {
  const name = member(json, 'n') ?? '';
  const unit = member(json, 'u') ?? baseText(base, 'bu') ?? null;
  const time = member(json, 't');
  if (typeof name !== 'string') {
    return refuse({
      code: 'senml-name',
      detail: `The name n in ${where} is ${shown(name)}; it has to be text.`,
    });
  }
  if (unit !== null && typeof unit !== 'string') {
    return refuse({
      code: 'unit-does-not-fit',
      detail: `The unit u in ${where} is ${shown(unit)}; it has to be text such as "Cel".`,
    });
  }
  if (time !== undefined && typeof time !== 'number') {
    return refuse({
      code: 'time-not-understood',
      detail: `The time t in ${where} is ${shown(time)}; in SenML a time is a number of seconds.`,
    });
  }
  const present = valueLabels.filter((label) => member(json, label) !== undefined);
  const value = member(json, 'v');
  if (present.length > 1) {
    return refuse({
      code: 'payload-shape',
      detail: `${capital(where)} has ${present.join(' and ')}; one record holds one value.`,
    });
  }
  if (present.length === 0 && member(json, 's') === undefined) {
    return refuse({
      code: 'senml-no-value',
      detail: `${capital(where)} has no value; give the number as v, or leave the record out.`,
    });
  }
  if (value !== undefined && typeof value !== 'number') {
    return refuse({
      code: 'payload-not-a-number',
      detail: `The value v in ${where} is ${shown(value)}; send the number itself, without quotation marks.`,
    });
  }
  const baseTime = baseNumber(base, 'bt');
  const baseValue = baseNumber(base, 'bv');
  return {
    kind: 'record',
    position,
    name: (baseText(base, 'bn') ?? '') + name,
    unit,
    // Sections 4.5.3 and 4.5.4: a missing part of a sum counts as zero.
    seconds: time === undefined ? (baseTime ?? null) : (baseTime ?? 0) + time,
    value: value === undefined ? null : baseValue ? asDecimal(baseValue + value) : value,
  };
}

function capital(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}
