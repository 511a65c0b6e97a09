import type { Quantity } from '../../contract/quantity.ts';
import type { RuleTimeFormat } from '../../contract/topic-rule.ts';
import type { Inner, Nothing } from '../phrase.ts';

/** What a unit that does not fit is a unit of. */
export type OtherThing =
  | 'voltage'
  | 'current'
  | 'power'
  | 'pressure'
  | 'light'
  | 'time'
  | 'length'
  | 'absolute-humidity'
  | 'signal'
  | 'temperature'
  | 'resistance'
  | 'share-of-air'
  | 'share'
  | 'milliohm';

/**
 * Why a message is no reading. `spot`: where it stood, a `spot`; `what`: the same as a noun, a
 * `thing`; `sent`: what stood there, a `sent` or as written. Words as they were sent come with their
 * quotation marks, names that are to be typed as they are.
 */
export interface PayloadSentences {
  'spot/payload': Nothing;
  'spot/object': Nothing;
  'spot/top': Nothing;
  'spot/at': { pointer: string };
  'spot/value-top': Nothing;
  'spot/value-at': { pointer: string };
  'spot/record': { record: number };
  'thing/payload': Nothing;
  'thing/value-top': Nothing;
  'thing/value-at': { pointer: string };
  'sent/array': Nothing;
  'sent/object': Nothing;
  'sent/nothing': Nothing;

  'payload-large': { bytes: number; mostBytes: number };
  'payload-not-text': Nothing;
  'payload-empty': Nothing;
  'payload-not-pack': { sent: Inner };
  'payload-is-cbor/json': Nothing;
  'payload-is-cbor/text': Nothing;
  /** `options`: the words that look like numbers and are none. */
  'json-broken/not-finite': { options: string[] };
  'json-broken/not-whole': Nothing;
  'cbor-broken': { because: string };
  'cbor-broken/too-deep': Nothing;
  'cbor-broken/fraction': Nothing;
  'cbor-not-array': Nothing;
  'quantity-not-said/text': { word: string };
  'quantity-not-said/object': Nothing;
  'object-without-value': Nothing;
  'object-value-not-number': { sent: Inner };
  'object-value-not-number/quoted': { sent: Inner };
  /** `more`: further ones that are not named. */
  'nothing-at-pointers': { pointers: string[]; more: number };
  'value-not-number': { spot: Inner; sent: Inner };
  'value-not-finite': { spot: Inner; word: string };
  'value-beyond': { spot: Inner; value: number; quantity: Quantity; low: number; high: number };
  /** The same, where SenML takes shares of one. */
  'value-beyond/share': {
    spot: Inner;
    value: number;
    quantity: Quantity;
    low: number;
    high: number;
  };
  'number-not-finite': { what: Inner; word: string };
  'not-decimal/quoted': { what: Inner; word: string };
  'not-decimal/grouped': { what: Inner; word: string };
  'not-decimal/trailing': { what: Inner; word: string };
  'not-decimal/other': { what: Inner; word: string };
  'number-ambiguous': { what: Inner; word: string; asPoint: string; asThousands: string };
  /** `spot`: null where the unit is that of a rule. */
  'unit-unfit': { unit: string; spot: Inner | null; quantity: Quantity; options: string[] };
  'unit-unfit/other': {
    unit: string;
    spot: Inner | null;
    quantity: Quantity;
    options: string[];
    measures: OtherThing;
  };

  'pack-empty': Nothing;
  'pack-large': { records: number; mostRecords: number };
  'pack-without-value': Nothing;
  'pack-version': { record: number; sent: Inner; version: number };
  'pack-versions': { record: number; version: number; earlier: number };
  'base-field': { record: number; field: string; fieldType: 'string' | 'number'; sent: Inner };
  'must-understand': { record: number; field: string };
  'record-not-object': { record: number; sent: Inner };
  'record-name': { record: number; sent: Inner };
  'record-unit': { record: number; sent: Inner };
  'record-time': { record: number; sent: Inner };
  'record-values': { record: number; fields: string[] };
  'record-without-value': { record: number };
  'record-value': { record: number; sent: Inner };
  'record-without-number': { record: number; name: string; quantity: Quantity };
  'record-unit-unfit': {
    record: number;
    unit: string;
    quantity: Quantity;
    options: string[];
    keptUnit: string;
  };
  'name-not-allowed': { record: number; name: string };
  'name-no-quantity': { record: number; name: string; segment: string; options: string[] };
  'name-no-quantity/of-rule': { record: number; name: string; segment: string; options: string[] };
  'name-other-quantity': { record: number; name: string; segment: string; quantity: Quantity };

  'topic-levels': { topic: string; site: string };
  'topic-sensor': { word: string };
  'topic-quantity': { word: string; options: string[] };
  'sensor-name-missing': { pointer: string; sent: Inner };
  'sensor-name': { word: string };

  'time-unlike': { sent: Inner };
  'time-unlike/iso': { sent: Inner };
  'time-unlike/number': { sent: Inner; format: RuleTimeFormat };
  'time-no-zone': { word: string };
  'time-not-iso': { word: string };
  'time-no-such-day': { word: string };
  /** `spot`: null where a message has one time alone. */
  'time-beyond': { word: string; spot: Inner | null };
  'time-age': { word: string; mostAge: number; format: RuleTimeFormat };

  'forecast-not-array': { points: number };
  'forecast-temperature': { point: number; sent: Inner; low: number; high: number };
  'forecast-figure': { point: number; field: string; sent: Inner; most: number };

  'sensor-too-many': { sensor: string; sensors: number };
  'message-cut': { keptBytes: number; bytes: number };
  'topic-not-taken': Nothing;
}
