import type { RuleTimeFormat } from '../../contract/topic-rule.ts';
import type { Inner, Phrases } from '../phrase.ts';
import type { OtherThing, PayloadSentences } from '../subject/payload.ts';
import { quantityNames } from './detail.ts';

const otherThings: Readonly<Record<OtherThing, string>> = {
  voltage: 'a voltage',
  current: 'a current',
  power: 'power or energy',
  pressure: 'a pressure',
  light: 'light',
  time: 'a time',
  length: 'a length',
  'absolute-humidity': 'absolute humidity',
  signal: 'a signal level',
  temperature: 'a temperature',
  resistance: 'a resistance',
  'share-of-air': 'a share of the air',
  share: 'a percentage or share',
  milliohm: 'a thousandth of an ohm, hardly a million',
};

const times: Readonly<Record<RuleTimeFormat, string>> = {
  any: 'any',
  iso: 'ISO 8601',
  'epoch-s': 'seconds since 1970',
  'epoch-ms': 'milliseconds since 1970',
  'age-s': 'seconds before it was sent',
  'age-ms': 'milliseconds before it was sent',
};

const record = (number: number) => `record ${number} of the SenML pack`;
const Record = (number: number) => `Record ${number} of the SenML pack`;
/** “The unit "V" in the payload”. */
const unitAt = (unit: string, spot: Inner | null, say: (inner: Inner) => string) =>
  spot === null ? `The unit ${unit}` : `The unit ${unit} ${say(spot)}`;

export const payload: Phrases<PayloadSentences> = {
  'spot/payload': () => 'in the payload',
  'spot/object': () => 'in the JSON object',
  'spot/top': () => 'at the top',
  'spot/at': ({ pointer }) => `at ${pointer}`,
  'spot/value-top': () => 'in the value at the top',
  'spot/value-at': ({ pointer }) => `in the value at ${pointer}`,
  'spot/record': (told) => `in ${record(told.record)}`,
  'thing/payload': () => 'The payload',
  'thing/value-top': () => 'The value at the top',
  'thing/value-at': ({ pointer }) => `The value at ${pointer}`,
  'sent/array': () => 'an array',
  'sent/object': () => 'an object',
  'sent/nothing': () => 'nothing',

  'payload-large': ({ bytes, mostBytes }) =>
    `The payload has ${bytes} bytes, more than the ${mostBytes} that are looked at; send fewer records in one message.`,
  'payload-not-text': () =>
    'The payload is neither UTF-8 text nor an array in CBOR; send a number as text, JSON, or a SenML pack.',
  'payload-empty': () => 'The payload is empty; send a number as text, or JSON.',
  'payload-not-pack': ({ sent }, _speak, say) =>
    `The payload is ${say(sent)}; the rule expects a SenML pack, which is an array of records.`,
  'payload-is-cbor/json': () =>
    'The payload is CBOR, but the rule expects JSON; let the rule expect SenML.',
  'payload-is-cbor/text': () =>
    'The payload is CBOR, but the rule expects text; let the rule expect SenML.',
  'json-broken/not-finite': ({ options }) =>
    `The payload begins like JSON but cannot be read as JSON; JSON knows no ${options.join(' or ')}, so leave the value out when there is no reading.`,
  'json-broken/not-whole': () =>
    'The payload begins like JSON but cannot be read as JSON; check that it is whole, with its brackets and quotation marks closed.',
  'cbor-broken': ({ because }) =>
    `The payload begins like CBOR but cannot be read as CBOR: ${because}. Check that it is sent whole and as bytes.`,
  'cbor-broken/too-deep': () =>
    'The payload begins like CBOR but cannot be read as CBOR: nested too deep. Check that it is sent whole and as bytes.',
  'cbor-broken/fraction': () =>
    'The payload begins like CBOR but cannot be read as CBOR: a decimal fraction is not two whole numbers. Check that it is sent whole and as bytes.',
  'cbor-not-array': () => 'The CBOR payload is no array; a SenML pack is an array of records.',
  'quantity-not-said/text': ({ word }) =>
    `The payload ${word} does not say what was measured; add the quantity to the topic, or send a SenML pack.`,
  'quantity-not-said/object': () =>
    'The payload is one JSON object on a topic without a quantity; add the quantity to the topic, or send a SenML pack, which is an array of records.',
  'object-without-value': () =>
    'The JSON object has no value; send the number in a member named value.',
  'object-value-not-number': ({ sent }, _speak, say) =>
    `The value in the JSON object is ${say(sent)}; send the number itself.`,
  'object-value-not-number/quoted': ({ sent }, _speak, say) =>
    `The value in the JSON object is ${say(sent)}; send the number itself, without quotation marks.`,
  'nothing-at-pointers': ({ pointers, more }) =>
    `Nothing stands at ${pointers.join(', ')}${more > 0 ? ' and so on' : ''}, where the rule looks for values; correct the rule, or leave this topic out of it.`,
  'value-not-number': ({ spot, sent }, _speak, say) =>
    `The value ${say(spot)} is ${say(sent)}; let the rule point at a number, or at text that holds one.`,
  'value-not-finite': ({ spot, word }, _speak, say) =>
    `The value ${say(spot)} is ${word}, which is not a finite number; send nothing when the sensor gives no reading.`,
  'value-beyond': ({ spot, value, quantity, low, high }, speak, say) =>
    `The value ${say(spot)} is ${speak.quantity(value, quantity)}, but ${quantityNames[quantity]} lies between ${speak.bare.quantity(low, quantity)} and ${speak.quantity(high, quantity)}; check the sensor, its wiring and its unit.`,
  'value-beyond/share': ({ spot, value, quantity, low, high }, speak, say) =>
    `The value ${say(spot)} is ${speak.quantity(value, quantity)}, but ${quantityNames[quantity]} lies between ${speak.bare.quantity(low, quantity)} and ${speak.quantity(high, quantity)}; check the sensor, its wiring and its unit (in SenML, "/" and "%" are ratios from 0 to 1).`,
  'number-not-finite': ({ what, word }, _speak, say) =>
    `${say(what)} is ${word}, which is not a finite number; send nothing when the sensor gives no reading.`,
  'not-decimal/quoted': ({ what, word }, _speak, say) =>
    `${say(what)} ${word} is not a decimal number; send the number without quotation marks.`,
  'not-decimal/grouped': ({ what, word }, _speak, say) =>
    `${say(what)} ${word} is not a decimal number; send it with one decimal point and no mark between thousands.`,
  'not-decimal/trailing': ({ what, word }, _speak, say) =>
    `${say(what)} ${word} is not a decimal number alone; send the number without anything after it but its unit.`,
  'not-decimal/other': ({ what, word }, _speak, say) =>
    `${say(what)} ${word} is not a decimal number; send a number such as 21.5, or JSON such as {"value":21.5}.`,
  'number-ambiguous': ({ what, word, asPoint, asThousands }, _speak, say) =>
    `${say(what)} ${word} can mean ${asPoint} or ${asThousands}; send it with a decimal point, or without the comma.`,
  'unit-unfit': ({ unit, spot, quantity, options }, _speak, say) =>
    `${unitAt(unit, spot, say)} is not known here and does not fit ${quantityNames[quantity]}; use ${options.join(' or ')}.`,
  'unit-unfit/other': ({ unit, spot, quantity, options, measures }, _speak, say) =>
    `${unitAt(unit, spot, say)} means ${otherThings[measures]} and does not fit ${quantityNames[quantity]}; use ${options.join(' or ')}.`,

  'pack-empty': () => 'The SenML pack is an empty array; send at least one record.',
  'pack-large': ({ records, mostRecords }) =>
    `The SenML pack has ${records} records; send at most ${mostRecords} in one message.`,
  'pack-without-value': () =>
    'The SenML pack holds base fields only and no value; give the number as v.',
  'pack-version': ({ sent, version, ...told }, _speak, say) =>
    `The SenML version bver in record ${told.record} is ${say(sent)}, which is not understood here; send version ${version} or leave bver out.`,
  'pack-versions': ({ version, earlier, ...told }) =>
    `The SenML version bver in record ${told.record} is ${version}, but an earlier record says ${earlier}; give one version for the whole pack.`,
  'base-field': ({ field, fieldType, sent, ...told }, _speak, say) =>
    `The base field ${field} in ${record(told.record)} is ${say(sent)} instead of a ${fieldType}, so neither this record nor those that build on it can be read.`,
  'must-understand': ({ field, ...told }) =>
    `The field ${field} in ${record(told.record)} must be understood by whoever reads it, and is not known here; send the reading without it.`,
  'record-not-object': ({ sent, ...told }, _speak, say) =>
    `${Record(told.record)} is ${say(sent)}; each record is an object such as {"n":"air-temperature","u":"Cel","v":21.5}.`,
  'record-name': ({ sent, ...told }, _speak, say) =>
    `The name n in ${record(told.record)} is ${say(sent)}; it has to be text.`,
  'record-unit': ({ sent, ...told }, _speak, say) =>
    `The unit u in ${record(told.record)} is ${say(sent)}; it has to be text such as "Cel".`,
  'record-time': ({ sent, ...told }, _speak, say) =>
    `The time t in ${record(told.record)} is ${say(sent)}; in SenML a time is a number of seconds.`,
  'record-values': ({ fields, ...told }) =>
    `${Record(told.record)} has ${fields.join(' and ')}; one record holds one value.`,
  'record-without-value': (told) =>
    `${Record(told.record)} has no value; give the number as v, or leave the record out.`,
  'record-value': ({ sent, ...told }, _speak, say) =>
    `The value v in ${record(told.record)} is ${say(sent)}; send the number itself, without quotation marks.`,
  'record-without-number': ({ name, quantity, ...told }) =>
    `The record named ${name} in ${record(told.record)} has no number; give ${quantity} as v.`,
  'record-unit-unfit': ({ unit, quantity, options, keptUnit, ...told }) =>
    `The unit ${unit} in ${record(told.record)} does not fit ${quantity}; use ${options.join(' or ')}, or leave the unit out for ${keptUnit}.`,
  'name-not-allowed': ({ name, ...told }) =>
    `The name ${name} in ${record(told.record)} is not allowed; start with a letter or digit and use only A–Z a–z 0–9 - : . / _`,
  'name-no-quantity': ({ name, segment, options, ...told }) =>
    `The name ${name} in ${record(told.record)} ends in ${segment}, which is no quantity known here; end it, after / or : or ., in one of ${options.join(', ')}.`,
  'name-no-quantity/of-rule': ({ name, segment, options, ...told }) =>
    `The name ${name} in ${record(told.record)} ends in ${segment}, for which the rule has no quantity; add it to the rule, or end the name in one of ${options.join(', ')}.`,
  'name-other-quantity': ({ name, segment, quantity, ...told }) =>
    `The name ${name} in ${record(told.record)} says ${segment}, but the topic says ${quantity}; publish the pack to the topic without a quantity.`,

  'topic-levels': ({ topic, site }) =>
    `The topic ${topic} has the wrong number of parts; publish to boardcure/${site}/sensor/<sensor> or boardcure/${site}/sensor/<sensor>/<quantity>.`,
  'topic-sensor': ({ word }) =>
    `The sensor id ${word} in the topic is not allowed; use 1 to 64 of the characters A–Z a–z 0–9 . _ -`,
  'topic-quantity': ({ word, options }) =>
    `The topic ends in ${word}, which is no quantity known here; end it in one of ${options.join(', ')}.`,
  'sensor-name-missing': ({ pointer, sent }, _speak, say) =>
    `At ${pointer}, where the sensor’s name should stand, is ${say(sent)}; point at a text or number in the payload.`,
  'sensor-name': ({ word }) =>
    `The sensor’s name ${word} is not allowed; it may have 1 to 64 of the characters A–Z a–z 0–9 . _ - and needs a letter or digit.`,

  'time-unlike': ({ sent }, _speak, say) =>
    `The time is ${say(sent)}; send ISO 8601 text or epoch seconds.`,
  'time-unlike/iso': ({ sent }, _speak, say) =>
    `The time is ${say(sent)}; the rule expects ISO 8601 text.`,
  'time-unlike/number': ({ sent, format }, _speak, say) =>
    `The time is ${say(sent)}; the rule expects a number (${times[format]}).`,
  'time-no-zone': ({ word }) =>
    `The time ${word} does not say which hour of the world it means; give date and time, and add Z for UTC or an offset such as +02:00.`,
  'time-not-iso': ({ word }) =>
    `The time ${word} is not ISO 8601; write it like 2026-05-04T07:30:00Z, or send epoch seconds as a number.`,
  'time-no-such-day': ({ word }) => `The time ${word} names a date or hour that does not exist.`,
  'time-beyond': ({ word, spot }, _speak, say) =>
    `The time ${word} is beyond any calendar; send seconds since 1970 in UTC${spot === null ? '' : ` (${say(spot)})`}.`,
  'time-age': ({ word, mostAge, format }, speak) =>
    `The age is ${word}; it must be from 0 to ${speak.number(mostAge)} (${times[format]}). Is it a time since 1970?`,

  'forecast-not-array': ({ points }) =>
    `The forecast must be a JSON array of at most ${points} points like {"time":"2026-05-04T07:00:00Z","tempC":12.5}.`,
  'forecast-temperature': ({ point, sent, low, high }, speak, say) =>
    `tempC of point ${point} is ${say(sent)}; it must be a number from ${speak.number(low)} to ${speak.number(high)} °C.`,
  'forecast-figure': ({ point, field, sent, most }, speak, say) =>
    `${field} of point ${point} is ${say(sent)}; it must be a number from 0 to ${speak.number(most)}, or left out.`,

  'sensor-too-many': ({ sensor, sensors }) =>
    `Sensor ${sensor} is new, but ${sensors} sensors are known already, which is as many as are allowed; raise mqtt.maxSensors if they are yours.`,
  'message-cut': ({ keptBytes, bytes }) =>
    `Only the first ${keptBytes} of its ${bytes} bytes are remembered, so it cannot be tried; raise discovery.maxBytes in the settings.`,
  'topic-not-taken': () => 'The topic does not fit the pattern, or an earlier rule takes it.',
};
