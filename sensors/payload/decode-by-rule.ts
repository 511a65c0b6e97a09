import { type Quantity, quantities } from '../../daemon/contract/quantity.ts';
import type { Inner } from '../../daemon/wording/phrase.ts';
import { type Message, readPayload } from './decode-message.ts';
import { parsedJson } from './json.ts';
import { atPointer } from './json-pointer.ts';
import { type DecodedPayload, type Measured, type Measurement, measured } from './measurement.ts';
import { numberInText, type ReadNumber } from './plain-number.ts';
import {
  because,
  inPayload,
  type Refusal,
  type Refused,
  refuse,
  sent,
  shown,
  spot,
  thePayload,
  theValueAt,
} from './refusal.ts';
import { timeByRule } from './rule-time.ts';
import { nameFault, nameParts, senmlReadings } from './senml-readings.ts';
import { asDecimal } from './senml-unit.ts';
import { devicePart, sensorOf } from './sensor-template.ts';
import { isQuantity } from './topic.ts';
import type { TopicParts } from './topic-pattern.ts';
import type { CompiledRule, CompiledValue } from './topic-rule.ts';
import { inUnitOf } from './unit.ts';

/**
 * Turns a message into measurements as a rule says. Never throws.
 *
 * Of JSON, a value that is absent or null is passed over as long as another one is there, since
 * many devices send now this, now that; each value that is there and wrong is refused by itself.
 *
 * @param parts what the named parts of the rule's pattern stand for in the message's topic
 * @param now arrival, epoch ms, for relative times
 */
export function decodeByRule(
  message: Message,
  rule: CompiledRule,
  parts: TopicParts,
  maxBytes: number,
  now: number,
): DecodedPayload {
  const read = readPayload(message, maxBytes);
  if (read.kind === 'refused') return read;
  if (rule.form.payload === 'senml') {
    if (read.kind === 'pack') return senmlByRule(read.pack, rule, parts, now);
    const parsed = parsedJson(read.text);
    if (parsed.kind === 'refused') return parsed;
    if (Array.isArray(parsed.json)) return senmlByRule(parsed.json, rule, parts, now);
    return refuse({
      code: 'payload-shape',
      ...because('payload-not-pack', { sent: sent(parsed.json) }),
    });
  }
  if (read.kind === 'pack') {
    return refuse({
      code: 'payload-not-text',
      ...because(
        rule.form.payload === 'json' ? 'payload-is-cbor/json' : 'payload-is-cbor/text',
        {},
      ),
    });
  }
  if (rule.form.payload === 'text') return textByRule(read.text, rule, parts, now);
  const parsed = parsedJson(read.text);
  return parsed.kind === 'refused' ? parsed : jsonByRule(parsed.json, rule, parts, now);
}

type Dated = Pick<Measurement, 'ownAt'> | Pick<Measurement, 'ownAt' | 'ownAtIsRelative'>;
type DatedRead = { readonly kind: 'dated'; readonly dated: Dated } | Refused;

function dated(json: unknown, rule: CompiledRule, parts: TopicParts, now: number): DatedRead {
  if (rule.time === null) return { kind: 'dated', dated: { ownAt: null } };
  const { part, pointer, format } = rule.time;
  const found = part === null ? atPointer(json, pointer) : parts.get(part);
  const read = timeByRule(found, format, now);
  if (read.kind === 'refused') return read;
  const { ownAt, isRelative } = read.time;
  return { kind: 'dated', dated: isRelative ? { ownAt, ownAtIsRelative: true } : { ownAt } };
}

function textByRule(
  text: string,
  rule: CompiledRule,
  parts: TopicParts,
  now: number,
): DecodedPayload {
  const [value] = rule.values;
  if (value === undefined) throw new Error(`The rule for ${rule.form.pattern} has no value.`);
  const when = dated(null, rule, parts, now);
  if (when.kind === 'refused') return when;
  const one = finished(
    value,
    parts,
    null,
    numberInText(text, value.quantity, thePayload, value),
    when.dated,
    inPayload,
  );
  return one.kind === 'refused'
    ? one
    : { kind: 'readings', readings: [one.measurement], refused: [] };
}

function jsonByRule(
  json: unknown,
  rule: CompiledRule,
  parts: TopicParts,
  now: number,
): DecodedPayload {
  const when = dated(json, rule, parts, now);
  if (when.kind === 'refused') return when;
  const readings: Measurement[] = [];
  const refused: Refusal[] = [];
  for (const value of rule.values) {
    const found = atPointer(json, value.pointer);
    if (found === undefined || found === null) continue;
    const where = whereOf(value);
    const one = finished(value, parts, json, numberFound(found, value, where), when.dated, where);
    if (one.kind === 'refused') refused.push(one.refusal);
    else readings.push(one.measurement);
  }
  if (readings.length + refused.length > 0) return { kind: 'readings', readings, refused };
  return refuse({
    code: 'payload-shape',
    ...because('nothing-at-pointers', {
      pointers: rule.values.slice(0, mostNamed).map(({ pointerText }) => shown(pointerText)),
      more: Math.max(0, rule.values.length - mostNamed),
    }),
  });
}

/** So many pointers are named where nothing stands at any. */
const mostNamed = 4;

const whereOf = ({ pointerText: pointer }: CompiledValue): Inner =>
  pointer === '' ? spot('spot/top', {}) : spot('spot/at', { pointer });

function numberFound(found: unknown, value: CompiledValue, where: Inner): ReadNumber {
  const { quantity, unit, scale } = value;
  if (typeof found === 'number') {
    return inUnitOf(quantity, scale === 1 ? found : asDecimal(found * scale), unit, where);
  }
  // Many devices put every number in quotation marks, some with the unit.
  if (typeof found === 'string') {
    return numberInText(found, quantity, theValueAt(value.pointerText), value);
  }
  return refuse({
    code: 'payload-not-a-number',
    ...because('value-not-number', { spot: where, sent: sent(found) }),
    quantity,
  });
}

function finished(
  value: CompiledValue,
  parts: TopicParts,
  json: unknown,
  number: ReadNumber,
  when: Dated,
  where: Inner,
): Measured {
  const { quantity } = value;
  if (number.kind === 'refused') return number;
  const named = sensorOf(value.sensor, parts, json);
  if (named.kind === 'refused') return named;
  const { sensor } = named;
  return measured({ sensor, quantity, value: number.value, ...when }, where);
}

function senmlByRule(
  pack: readonly unknown[],
  rule: CompiledRule,
  parts: TopicParts,
  now: number,
): DecodedPayload {
  return senmlReadings(
    pack,
    (name, record) => {
      const fault = nameFault(name, record);
      if (fault !== null) return fault;
      const { device, segment } = nameParts(name);
      const value = rule.values.find((one) => one.name === segment);
      const quantity = value?.quantity ?? ownWord(segment);
      if (quantity === null) {
        return refuse({
          code: 'quantity-unknown',
          ...because('name-no-quantity/of-rule', {
            ...{ record, name: shown(name), segment: shown(segment) },
            options: [...quantities],
          }),
        });
      }
      const named = sensorOf(
        value?.sensor ?? rule.sensor,
        new Map([...parts, [devicePart, device]]),
        null,
      );
      return named.kind === 'refused' ? named : { kind: 'of', sensor: named.sensor, quantity };
    },
    now,
  );
}

const ownWord = (segment: string): Quantity | null => (isQuantity(segment) ? segment : null);
