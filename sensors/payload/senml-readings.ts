import { type Quantity, quantities, quantityFacts } from '../../daemon/contract/quantity.ts';
import { type DecodedPayload, type Measured, type Measurement, measured } from './measurement.ts';
import { epochSeconds } from './own-time.ts';
import { because, inRecord, type Refusal, type Refused, refuse, shown } from './refusal.ts';
import { type PackRecord, resolvedPack } from './senml-pack.ts';
import { canonicalValue } from './senml-unit.ts';
import { type Address, isQuantity } from './topic.ts';

/** What a record is of, told by its name; or why it is of nothing. */
export type Identified =
  | { readonly kind: 'of'; readonly sensor: string; readonly quantity: Quantity }
  | Refused;
/** @param record its place in the pack, counted from 1 */
export type Identify = (name: string, record: number) => Identified;

/** Section 4.5.3: a time below this many seconds counts from now, any other from 1970. */
const relativeBelow = 2 ** 28;
// Section 4.5.1.
const allowedName = /^[A-Za-z0-9][A-Za-z0-9\-:./_]*$/;

/**
 * Reads a SenML pack.
 * @param pack the parsed array of records
 * @param identify tells sensor and quantity of a record by its resolved name
 * @param now arrival, epoch ms, for relative times
 * @returns good and refused records apart, each in the order of the pack
 *
 * **Source:** RFC 8428 (2018), section 4.
 */
export function senmlReadings(
  pack: readonly unknown[],
  identify: Identify,
  now: number,
): DecodedPayload {
  const resolved = resolvedPack(pack);
  if (resolved.kind === 'refused') return resolved;
  if (resolved.records.length === 0) {
    return refuse({ code: 'senml-no-value', ...because('pack-without-value', {}) });
  }
  const readings: Measurement[] = [];
  const refused: Refusal[] = [];
  for (const record of resolved.records) {
    const result = record.kind === 'refused' ? record : reading(record, identify, now);
    if (result.kind === 'measurement') readings.push(result.measurement);
    else refused.push(result.refusal);
  }
  return { kind: 'readings', readings, refused };
}

function reading(record: PackRecord, identify: Identify, now: number): Measured {
  const { position } = record;
  const named = identify(record.name, position);
  if (named.kind === 'refused') return named;
  const { sensor, quantity } = named;
  if (record.value === null) {
    return refuse({
      code: 'senml-no-value',
      ...because('record-without-number', {
        ...{ record: position, name: shown(record.name), quantity },
      }),
      quantity,
    });
  }
  const value = canonicalValue(quantity, record.value, record.unit);
  if (value === null) {
    return refuse({
      code: 'unit-does-not-fit',
      ...because('record-unit-unfit', {
        ...{ record: position, unit: shown(record.unit), quantity },
        options: [...quantityFacts[quantity].senmlUnits],
        keptUnit: quantityFacts[quantity].unit,
      }),
      quantity,
    });
  }
  const { seconds } = record;
  const where = inRecord(position);
  if (seconds === null || seconds === 0) {
    return measured({ sensor, quantity, value, ownAt: null }, where);
  }
  const relative = seconds < relativeBelow;
  const time = epochSeconds(relative ? now / 1000 + seconds : seconds, where);
  if (time.kind === 'refused') return refuse({ ...time.refusal, quantity });
  const dated = { sensor, quantity, value, ownAt: time.at };
  return measured(relative ? { ...dated, ownAtIsRelative: true } : dated, where);
}

/**
 * Identifies records by the default topic layout: the quantity is the last segment of the resolved
 * name, segments being parted by `/`, `:` and `.`; on a topic that names a quantity, that quantity
 * holds and the name may say anything but another one. The sensor is always the topic's.
 */
export function byTopic(address: Address): Identify {
  const of = (quantity: Quantity): Identified => ({
    kind: 'of',
    sensor: address.sensor,
    quantity,
  });
  return (name, record) => {
    // A quantity in the topic is name enough; the RFC's rule is for names that stand alone.
    const refusal = name === '' && address.quantity !== null ? null : nameFault(name, record);
    if (refusal !== null) return refusal;
    const { segment } = nameParts(name);
    if (address.quantity === null) {
      if (isQuantity(segment)) return of(segment);
      return refuse({
        code: 'quantity-unknown',
        ...because('name-no-quantity', {
          ...{ record, name: shown(name), segment: shown(segment) },
          options: [...quantities],
        }),
      });
    }
    if (isQuantity(segment) && segment !== address.quantity) {
      return refuse({
        code: 'senml-name',
        ...because('name-other-quantity', {
          ...{ record, name: shown(name), segment, quantity: address.quantity },
        }),
      });
    }
    return of(address.quantity);
  };
}

/** The refusal of a name that RFC 8428 does not allow; null when it does. */
export function nameFault(name: string, record: number): Refused | null {
  if (allowedName.test(name)) return null;
  return refuse({
    code: 'senml-name',
    ...because('name-not-allowed', { record, name: shown(name) }),
  });
}

/** The last segment of a name, after `/`, `:` or `.`, and what stands before it. */
export function nameParts(name: string): { device: string; segment: string } {
  const mark = Math.max(...['/', ':', '.'].map((one) => name.lastIndexOf(one)));
  return { device: name.slice(0, Math.max(0, mark)), segment: name.slice(mark + 1) };
}
