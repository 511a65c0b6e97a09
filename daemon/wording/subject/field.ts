import type { Inner, Nothing } from '../phrase.ts';

/** What is wrong with a field, as the check of its form found it. */
export interface FieldSentences {
  'field-fault/missing': Nothing;
  /** `expected`: as JSON names kinds of values. */
  'field-fault/wrong-kind': { expected: string };
  'field-fault/not-among': { options: string[] };
  'field-fault/too-small': { minimum: number };
  'field-fault/not-above': { minimum: number };
  'field-fault/too-big': { maximum: number };
  'field-fault/not-below': { maximum: number };
  'field-fault/too-short': { minimum: number };
  'field-fault/too-long': { maximum: number };
  'field-fault/too-few': { minimum: number };
  'field-fault/too-many': { maximum: number };
  'field-fault/no-multiple': { divisor: number };
  'field-fault/no-moment': Nothing;
  'field-fault/no-day': Nothing;
  'field-fault/no-id': Nothing;
  'field-fault/wrong-form': Nothing;
  'field-fault/unknown-field': Nothing;
  'field-fault/does-not-fit': Nothing;
  'field-fault/no-part': Nothing;
  'field-fault/left-twice': Nothing;
  'field-fault/place-or-batch': Nothing;
  'field-fault/without-batch': Nothing;
  'field-fault/no-time-zone': Nothing;
  /** `names`: of settings, in the order in which their values must rise. */
  'field-fault/must-rise': { names: string[] };
  /** Where in a request its faults lie; `faults`: each a `field-at`. */
  'in-request/body': { faults: Inner[] };
  'in-request/query': { faults: Inner[] };
  'in-request/params': { faults: Inner[] };
  'in-request/headers': { faults: Inner[] };
  /** `pointer`: RFC 6901; empty for the whole. */
  'field-at': { pointer: string; fault: Inner };
}
