import { type JsonObject, member, parsedJson } from './json.ts';
import { type DecodedPayload, type Measured, measured } from './measurement.ts';
import { ownTime } from './own-time.ts';
import { numberInText } from './plain-number.ts';
import {
  because,
  inObject,
  inPayload,
  type Refusal,
  type Refused,
  refuse,
  sent,
  shown,
  thePayload,
} from './refusal.ts';
import { looksLikeCbor, senmlCborPack } from './senml-cbor.ts';
import { byTopic, senmlReadings } from './senml-readings.ts';
import { type Address, readTopic } from './topic.ts';
import { inUnitOf } from './unit.ts';

/** A message as the broker hands it over; `text` is null when the bytes are not valid UTF-8. */
export type Message = {
  readonly topic: string;
  readonly text: string | null;
  readonly byteLength: number;
  /** The payload itself; needed for CBOR alone. */
  readonly bytes?: Uint8Array;
};

/** How messages are understood: the site that is ours, and the largest payload looked at. */
export type DecodeRule = { readonly site: string; readonly maxBytes?: number };

/**
 * What became of a message. `refused` speaks for the whole message. `readings` of a SenML pack
 * may hold both kinds, or refused records alone; every record is in one of the two lists.
 */
export type Decoded = { readonly kind: 'not-ours' } | DecodedPayload;

/** A thousand SenML records fit. Assumption. */
export const defaultMaxBytes = 65_536;

/**
 * Turns a message of the default topic layout into measurements. Never throws.
 * @param message `topic` any text; `text` the payload decoded from UTF-8; `byteLength` of the payload
 * @param rule `maxBytes` 65,536 by default
 * @param clock `now` epoch ms, the arrival; used for relative SenML times only
 */
export function decodeMessage(
  message: Message,
  rule: DecodeRule,
  clock: { readonly now: number },
): Decoded {
  const topic = readTopic(message.topic, rule.site);
  if (topic.kind !== 'address') return topic;
  return decodePayload(message, topic.address, rule, clock);
}

/**
 * The same, where the topic has been read already: a sensor’s topics stay the same.
 * @param address what the topic says
 */
export function decodePayload(
  message: Omit<Message, 'topic'>,
  address: Address,
  rule: Pick<DecodeRule, 'maxBytes'>,
  clock: { readonly now: number },
): DecodedPayload {
  const decoded = decodedPayload(message, address, rule.maxBytes ?? defaultMaxBytes, clock.now);
  if (decoded.kind === 'refused') {
    return { kind: 'refused', refusal: addressed(decoded.refusal, address) };
  }
  if (decoded.refused.length === 0) return decoded;
  return { ...decoded, refused: decoded.refused.map((refusal) => addressed(refusal, address)) };
}

const addressed = (refusal: Refusal, { sensor, quantity }: Address): Refusal => ({
  sensor,
  ...(quantity === null ? {} : { quantity }),
  ...refusal,
});

/** A payload as text without white space around it, or the records of a SenML pack in CBOR. */
export type ReadPayload =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'pack'; readonly pack: readonly unknown[] }
  | Refused;

/** What every payload must be before anything is looked for in it. */
export function readPayload(
  { text, byteLength, bytes }: Omit<Message, 'topic'>,
  maxBytes: number,
): ReadPayload {
  if (byteLength > maxBytes || (text?.length ?? 0) > maxBytes) {
    return refuse({
      code: 'payload-too-large',
      ...because('payload-large', { bytes: byteLength, mostBytes: maxBytes }),
    });
  }
  if (text === null) {
    if (bytes !== undefined && looksLikeCbor(bytes)) return senmlCborPack(bytes);
    return refuse({
      code: 'payload-not-text',
      ...because('payload-not-text', {}),
    });
  }
  const trimmed = text.trim();
  if (trimmed === '') {
    return refuse({ code: 'payload-empty', ...because('payload-empty', {}) });
  }
  return { kind: 'text', text: trimmed };
}

function decodedPayload(
  message: Omit<Message, 'topic'>,
  address: Address,
  maxBytes: number,
  now: number,
): DecodedPayload {
  const read = readPayload(message, maxBytes);
  if (read.kind === 'refused') return read;
  if (read.kind === 'pack') return senmlReadings(read.pack, byTopic(address), now);
  const trimmed = read.text;
  if (trimmed.startsWith('{') || trimmed.startsWith('[')) return decodedJson(trimmed, address, now);
  return single(bareNumber(trimmed, address));
}

function bareNumber(text: string, { sensor, quantity }: Address): Measured {
  if (quantity === null) {
    return refuse({
      code: 'payload-shape',
      ...because('quantity-not-said/text', { word: shown(text) }),
    });
  }
  const number = numberInText(text, quantity, thePayload);
  if (number.kind === 'refused') return number;
  return measured({ sensor, quantity, value: number.value, ownAt: null }, inPayload);
}

function decodedJson(text: string, address: Address, now: number): DecodedPayload {
  const parsed = parsedJson(text);
  if (parsed.kind === 'refused') return parsed;
  if (Array.isArray(parsed.json)) return senmlReadings(parsed.json, byTopic(address), now);
  // What begins with a brace and parses is an object.
  return single(valueObject(parsed.json as JsonObject, address));
}

/** Reads `{"value":…, "unit":…, "time":…}`; other members are the sender's own business. */
function valueObject(json: JsonObject, { sensor, quantity }: Address): Measured {
  if (quantity === null) {
    return refuse({
      code: 'payload-shape',
      ...because('quantity-not-said/object', {}),
    });
  }
  const value = member(json, 'value');
  const time = member(json, 'time');
  if (value === undefined) {
    return refuse({
      code: 'payload-shape',
      ...because('object-without-value', {}),
    });
  }
  if (typeof value !== 'number') {
    const code =
      typeof value === 'string' ? 'object-value-not-number/quoted' : 'object-value-not-number';
    return refuse({ code: 'payload-not-a-number', ...because(code, { sent: sent(value) }) });
  }
  const where = inObject;
  const unit = member(json, 'unit');
  // A number in a unit that went unread would be a wrong reading that looks like a right one.
  const kept = inUnitOf(
    quantity,
    value,
    typeof unit === 'string' ? unit.trim() || null : null,
    where,
  );
  if (kept.kind === 'refused') return kept;
  if (time === undefined) {
    return measured({ sensor, quantity, value: kept.value, ownAt: null }, where);
  }
  const read = ownTime(time);
  if (read.kind === 'refused') return read;
  return measured({ sensor, quantity, value: kept.value, ownAt: read.at }, where);
}

function single(result: Measured): DecodedPayload {
  return result.kind === 'refused'
    ? result
    : { kind: 'readings', readings: [result.measurement], refused: [] };
}
