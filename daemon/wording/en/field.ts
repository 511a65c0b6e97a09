import type { Inner, Phrases } from '../phrase.ts';
import type { Speaker } from '../speaker.ts';
import type { FieldSentences } from '../subject/field.ts';

/** Kinds of values as JSON names them; others stand as they are. */
const kinds: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'yes or no',
  array: 'a list',
  object: 'several fields',
  record: 'several fields',
  null: 'nothing',
};

const inRequest =
  (where: string) =>
  (
    { faults }: FieldSentences['in-request/body'],
    _speak: Speaker,
    say: (inner: Inner) => string,
  ): string =>
    `In the ${where}: ${faults.map(say).join('; ')}.`;

export const field: Phrases<FieldSentences> = {
  'field-fault/missing': () => 'must be given',
  'field-fault/wrong-kind': ({ expected }) => `must be ${kinds[expected] ?? expected}`,
  'field-fault/not-among': ({ options }, speak) => `must be one of ${speak.list(options)}`,
  'field-fault/too-small': ({ minimum }, speak) => `must be at least ${speak.number(minimum)}`,
  'field-fault/not-above': ({ minimum }, speak) => `must be more than ${speak.number(minimum)}`,
  'field-fault/too-big': ({ maximum }, speak) => `must be at most ${speak.number(maximum)}`,
  'field-fault/not-below': ({ maximum }, speak) => `must be less than ${speak.number(maximum)}`,
  'field-fault/too-short': ({ minimum }, speak) =>
    minimum === 1 ? 'must not be empty' : `must have at least ${speak.number(minimum)} characters`,
  'field-fault/too-long': ({ maximum }, speak) =>
    `must have at most ${speak.number(maximum)} characters`,
  'field-fault/too-few': ({ minimum }, speak) =>
    minimum === 1 ? 'must name at least one' : `must name at least ${speak.number(minimum)}`,
  'field-fault/too-many': ({ maximum }, speak) => `must name at most ${speak.number(maximum)}`,
  'field-fault/no-multiple': ({ divisor }, speak) =>
    `must be a multiple of ${speak.number(divisor)}`,
  'field-fault/no-moment': () => 'must be a moment with its time zone, as 2026-05-20T08:00:00Z',
  'field-fault/no-day': () => 'must be a day that there is, as 2026-05-20',
  'field-fault/no-id': () => 'must be an id (a UUID)',
  'field-fault/wrong-form': () => 'is not written as it has to be',
  'field-fault/unknown-field': () => 'there is no such field',
  'field-fault/does-not-fit': () => 'does not fit',
  'field-fault/no-part': () => 'at least one part must be more than 0',
  'field-fault/left-twice': () => 'give either lastLeftPercent or lastLeftCm',
  'field-fault/place-or-batch': () => 'give either placeId or batchId, not both and not neither',
  'field-fault/without-batch': () => 'must be given where no batch is named',
  'field-fault/no-time-zone': () => 'must be a time zone like Europe/Stockholm',
  'field-fault/must-rise': ({ names }, speak) =>
    `these must rise in this order: ${speak.list(names)}`,
  'in-request/body': inRequest('body'),
  'in-request/query': inRequest('query'),
  'in-request/params': inRequest('params'),
  'in-request/headers': inRequest('headers'),
  'field-at': ({ pointer, fault }, _speak, say) =>
    pointer === '' ? say(fault) : `${pointer}: ${say(fault)}`,
};
