import { isJsonObject, type JsonObject, member } from './json.ts';
import { because, type Refused, refuse, sent } from './refusal.ts';
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
    return refuse({ code: 'payload-shape', ...because('pack-empty', {}) });
  }
  if (pack.length > mostRecords) {
    return refuse({
      code: 'payload-too-large',
      ...because('pack-large', { records: pack.length, mostRecords }),
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

function resolvedRecord(json: unknown, record: number, base: Base): PackRecord | Refused | null {
  if (!isJsonObject(json)) {
    return refuse({
      code: 'payload-shape',
      ...because('record-not-object', { record, sent: sent(json) }),
    });
  }
  takeBaseFields(json, record, base);
  const strange = Object.keys(json).find((label) => label.endsWith('_'));
  if (strange !== undefined) return refuse(mustUnderstand(strange, record));
  // Base fields alone only set the stage for the records after them.
  if (recordLabels.every((label) => member(json, label) === undefined)) {
    const [refusal] = Object.keys(json).some((label) => base.broken.has(label))
      ? base.broken.values()
      : [];
    return refusal === undefined ? null : refuse(refusal);
  }
  const [inherited] = base.broken.values();
  if (inherited !== undefined) return refuse(inherited);
  return ownFields(json, record, base);
}

function ownFields(json: JsonObject, record: number, base: Base): PackRecord | Refused {
  const name = member(json, 'n') ?? '';
  const unit = member(json, 'u') ?? baseText(base, 'bu') ?? null;
  const time = member(json, 't');
  if (typeof name !== 'string') {
    return refuse({ code: 'senml-name', ...because('record-name', { record, sent: sent(name) }) });
  }
  if (unit !== null && typeof unit !== 'string') {
    return refuse({
      code: 'unit-does-not-fit',
      ...because('record-unit', { record, sent: sent(unit) }),
    });
  }
  if (time !== undefined && typeof time !== 'number') {
    return refuse({
      code: 'time-not-understood',
      ...because('record-time', { record, sent: sent(time) }),
    });
  }
  const present = valueLabels.filter((label) => member(json, label) !== undefined);
  const value = member(json, 'v');
  if (present.length > 1) {
    return refuse({
      code: 'payload-shape',
      ...because('record-values', { record, fields: present }),
    });
  }
  if (present.length === 0 && member(json, 's') === undefined) {
    return refuse({ code: 'senml-no-value', ...because('record-without-value', { record }) });
  }
  if (value !== undefined && typeof value !== 'number') {
    return refuse({
      code: 'payload-not-a-number',
      ...because('record-value', { record, sent: sent(value) }),
    });
  }
  const baseTime = baseNumber(base, 'bt');
  const baseValue = baseNumber(base, 'bv');
  return {
    kind: 'record',
    position: record,
    name: (baseText(base, 'bn') ?? '') + name,
    unit,
    // Sections 4.5.3 and 4.5.4: a missing part of a sum counts as zero.
    seconds: time === undefined ? (baseTime ?? null) : (baseTime ?? 0) + time,
    value: value === undefined ? null : baseValue ? asDecimal(baseValue + value) : value,
  };
}
